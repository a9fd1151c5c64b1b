import Module from "manifold-3d";
import type { Count, Mm3, Point } from "../plane/types.ts";
import type { Point3 } from "./types.ts";

const kernel = await Module();
kernel.setup();
const { Manifold, Mesh } = kernel;

/** Triangles tagged with a whole number each, corners counter-clockwise seen from outside. */
export interface TaggedMesh {
  readonly points: readonly Point3[];
  readonly triangles: readonly (readonly [Count, Count, Count])[];
  readonly tags: readonly Count[];
  /** Which of the meshes put in each triangle came from. */
  readonly owners: readonly Count[];
}

/** Triangles of a simple polygon, counter-clockwise, as indices of its corners. */
export function triangulate(corners: readonly Point[]): (readonly [Count, Count, Count])[] {
  const triangles = kernel.triangulate(
    [corners.map(([x, y]): [number, number] => [x, y])],
    -1,
    true,
  );
  return triangles.map(([a, b, c]) => [a!, b!, c!] as const);
}

export interface KernelMesh {
  readonly points: readonly Point3[];
  readonly triangles: readonly {
    readonly corners: readonly [Count, Count, Count];
    readonly tag: Count;
  }[];
}

/**
 * Join closed meshes into one. Coordinates come back to single precision only: `polish-points.ts`
 * puts them on their true surfaces again.
 */
export function uniteMeshes(meshes: readonly KernelMesh[]): TaggedMesh {
  const { solids, firstId } = load(meshes);
  const union = Manifold.union(solids);
  const result = unload(union, firstId);
  [union, ...solids].forEach((solid) => solid.delete());
  return result;
}

/** Volume that two closed meshes share. */
export function sharedVolume(a: KernelMesh, b: KernelMesh): Mm3 {
  const { solids } = load([a, b]);
  const shared = Manifold.intersection(solids);
  const volume = shared.volume();
  [shared, ...solids].forEach((solid) => solid.delete());
  return volume;
}

function load(meshes: readonly KernelMesh[]) {
  const firstId = Manifold.reserveIDs(meshes.length);
  const solids = meshes.map(({ points, triangles }, i) => {
    const mesh = new Mesh({
      numProp: 3,
      vertProperties: new Float32Array(points.flat()),
      triVerts: new Uint32Array(triangles.flatMap(({ corners }) => [...corners])),
      runIndex: new Uint32Array([0, triangles.length * 3]),
      runOriginalID: new Uint32Array([firstId + i]),
      faceID: new Uint32Array(triangles.map(({ tag }) => tag)),
    });
    // The mesh takes single precision; put the full figures back so that flush faces stay flush.
    const exact = new Map(points.map((point) => [rounded(point), point]));
    const single = Manifold.ofMesh(mesh);
    const solid = single.warp((place) => {
      const known = exact.get(rounded([place[0], place[1], place[2]]));
      if (known) [place[0], place[1], place[2]] = known;
    });
    single.delete();
    return solid;
  });
  return { solids, firstId };
}

const rounded = (point: Point3): string => point.map((part) => Math.fround(part)).join(" ");

function unload(solid: InstanceType<typeof Manifold>, firstId: Count): TaggedMesh {
  const mesh = solid.getMesh();
  // Points that lie in one place but belong to two originals are given twice: make them one.
  const merged = Array.from({ length: mesh.numVert }, (_, i) => i);
  mesh.mergeFromVert.forEach((from, i) => {
    merged[from] = mesh.mergeToVert[i]!;
  });
  const points = Array.from({ length: mesh.numVert }, (_, i): Point3 => {
    const [x, y, z] = mesh.position(i);
    return [x!, y!, z!];
  });
  const triangles = Array.from({ length: mesh.numTri }, (_, i) => {
    const [a, b, c] = mesh.verts(i);
    return [merged[a!]!, merged[b!]!, merged[c!]!] as const;
  });
  const owners = triangles.map((_, i) => {
    const run = mesh.runIndex.findIndex((start) => start > i * 3) - 1;
    return mesh.runOriginalID[run]! - firstId;
  });
  return { points, triangles, tags: [...mesh.faceID], owners };
}
