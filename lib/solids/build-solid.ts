import type { Count } from "../plane/types.ts";
import type { BlockSpec, SolidSpec, UpDirection } from "../project/types.ts";
import { buildFaces } from "./build-faces.ts";
import { findJoints } from "./find-joints.ts";
import { findRegions } from "./find-regions.ts";
import { measureVolume } from "./measure-volume.ts";
import type { BlockMesh } from "./mesh-block.ts";
import { sharedVolume, uniteMeshes, type KernelMesh } from "./mesh-kernel.ts";
import { meshUnion } from "./mesh-union.ts";
import { nameRegions } from "./name-regions.ts";
import { add3, scale3, subtract3 } from "./points3.ts";
import { straightenSlits } from "./straighten-slits.ts";
import { traceLoops } from "./trace-loops.ts";
import type { Joint, Point3, Solid, SolidBlock, SolidMesh } from "./types.ts";

export interface SolidOptions {
  /** Density of each slab stock in kg/m³; null where unknown. */
  readonly densities?: Readonly<Record<string, number | null>>;
  /** Author's own up for named faces. */
  readonly ups?: Readonly<Record<string, UpDirection>>;
}

/**
 * Glue blocks up into one solid: its outside faces laid flat in true length, its edges, joints,
 * volume and mass. Blocks may overlap; what they share counts once and belongs to the earlier.
 */
export function buildSolid(
  spec: Pick<SolidSpec, "id" | "foam" | "blocks">,
  { densities = {}, ups = {} }: SolidOptions = {},
): Solid {
  const { meshes, union: rough } = meshUnion(spec.blocks);
  const { regions, edges: halfEdges, regionOf } = findRegions(rough);
  const mesh = straightenSlits(rough, halfEdges, regions);
  const { named, order } = nameRegions(mesh, regions, spec.blocks, meshes, ups);
  const loops = traceLoops(halfEdges, regions, regionOf);
  const { faces, edges } = buildFaces(mesh, halfEdges, named, loops);
  const { volume, centre } = measureVolume(
    mesh.triangles.map(({ corners, surface }) => ({
      corners: corners.map((i) => mesh.points[i]!) as unknown as readonly [Point3, Point3, Point3],
      surface: mesh.surfaces[surface]!,
    })),
  );
  const blocks = measureBlocks(spec.blocks, meshes, spec.foam);
  const joints = findJoints(
    spec.blocks.map(({ id }) => id),
    meshes,
  );
  const { min, size } = boxRound(mesh.points);
  return {
    id: spec.id,
    min,
    size,
    volume,
    area: faces.reduce((sum, face) => sum + face.area, 0),
    ...weigh(blocks, meshes, densities, centre),
    blocks,
    joints,
    faces: order.map((index) => faces[index]!),
    edges,
    mesh: {
      points: mesh.points,
      triangles: mesh.triangles.map(({ corners }) => corners),
      faces: mesh.triangles.map((_, i) => named[regionOf[i]!]!.id),
    },
    parts: groupParts(spec.blocks, joints, meshes),
  };
}

function measureBlocks(
  specs: readonly BlockSpec[],
  meshes: readonly BlockMesh[],
  foam: string | null,
): SolidBlock[] {
  return specs.map((spec, i): SolidBlock => {
    const block = meshes[i]!;
    const { volume } = measureVolume(surfaced(block));
    return {
      id: spec.id,
      ...boxRound(block.points),
      volume,
      foam: spec.foam ?? foam,
      buried: i === 0 ? 0 : buriedShare(meshes.slice(0, i), block),
      mesh: toSolidMesh(spec.id, block),
    };
  });
}

const surfaced = ({ points, triangles, sides }: BlockMesh) =>
  triangles.map(({ corners, side }) => ({
    corners: corners.map((i) => points[i]!) as unknown as readonly [Point3, Point3, Point3],
    surface: sides[side]!.surface,
  }));

const toSolidMesh = (id: string, { points, triangles, sides }: BlockMesh): SolidMesh => ({
  points,
  triangles: triangles.map(({ corners }) => corners),
  faces: triangles.map(({ side }) => `${id}/${sides[side]!.name}`),
});

const kernelMesh = ({ points, triangles }: BlockMesh): KernelMesh => ({
  points,
  triangles: triangles.map(({ corners }) => ({ corners, tag: 0 })),
});

/** Share of a block that earlier blocks already fill. */
function buriedShare(earlier: readonly BlockMesh[], block: BlockMesh): number {
  if (!earlier.some((other) => boxesMeet(other.points, block.points))) return 0;
  const { points, triangles } = uniteMeshes(earlier.map(kernelMesh));
  const together: KernelMesh = {
    points,
    triangles: triangles.map((corners) => ({ corners, tag: 0 })),
  };
  const shared = sharedVolume(together, kernelMesh(block));
  const own = sharedVolume(kernelMesh(block), kernelMesh(block));
  const share = shared / own;
  return share < 1e-6 ? 0 : share > 1 - 1e-6 ? 1 : share;
}

/** Whether the boxes round two blocks share more than a face. */
function boxesMeet(a: readonly Point3[], b: readonly Point3[]): boolean {
  const [p, q] = [boxRound(a), boxRound(b)];
  return [0, 1, 2].every(
    (axis) =>
      p.min[axis]! + p.size[axis]! > q.min[axis]! + 1e-6 &&
      q.min[axis]! + q.size[axis]! > p.min[axis]! + 1e-6,
  );
}

function boxRound(points: readonly Point3[]): { min: Point3; size: Point3 } {
  const min = [0, 1, 2].map((axis) =>
    Math.min(...points.map((point) => point[axis]!)),
  ) as unknown as Point3;
  const max = [0, 1, 2].map((axis) =>
    Math.max(...points.map((point) => point[axis]!)),
  ) as unknown as Point3;
  return { min, size: subtract3(max, min) };
}

/** Mass by each block's own foam; the centre of mass where foams differ, else of the volume. */
function weigh(
  blocks: readonly SolidBlock[],
  meshes: readonly BlockMesh[],
  densities: Readonly<Record<string, number | null>>,
  centre: Point3,
): Pick<Solid, "mass" | "centreOfMass"> {
  const masses = blocks.map(({ foam, volume, buried }) => {
    const density = foam === null ? null : (densities[foam] ?? null);
    return density === null ? null : (volume * (1 - buried) * density) / 1e9;
  });
  if (masses.some((mass) => mass === null)) return { mass: null, centreOfMass: centre };
  const mass = masses.reduce<number>((sum, one) => sum + one!, 0);
  const isOneFoam = new Set(blocks.map(({ foam }) => densities[foam!])).size <= 1;
  if (isOneFoam) return { mass, centreOfMass: centre };
  const moment = meshes.reduce<Point3>(
    (sum, mesh, i) => add3(sum, scale3(measureVolume(surfaced(mesh)).centre, masses[i]!)),
    [0, 0, 0],
  );
  return { mass, centreOfMass: scale3(moment, 1 / mass) };
}

/** Blocks held together by glued faces or by cutting into one another. */
function groupParts(
  specs: readonly BlockSpec[],
  joints: readonly Joint[],
  meshes: readonly BlockMesh[],
): string[][] {
  const group = specs.map((_, i): Count => i);
  const join = (a: Count, b: Count) => {
    const [keep, drop] = [group[a]!, group[b]!];
    group.forEach((one, i) => (group[i] = one === drop ? keep : one));
  };
  const index = new Map(specs.map(({ id }, i) => [id, i]));
  joints.forEach(({ blocks: [a, b] }) => join(index.get(a)!, index.get(b)!));
  specs.forEach((_, a) =>
    specs.forEach((__, b) => {
      if (b <= a || group[a] === group[b] || !boxesMeet(meshes[a]!.points, meshes[b]!.points))
        return;
      if (sharedVolume(kernelMesh(meshes[a]!), kernelMesh(meshes[b]!)) > 1) join(a, b);
    }),
  );
  return [...new Set(group)].map((one) =>
    specs.filter((_, i) => group[i] === one).map(({ id }) => id),
  );
}
