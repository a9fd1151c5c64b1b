import type { Count } from "../plane/types.ts";
import { overlapArea, unite, type Region as FlatRegion } from "../plane/clip-polygons.ts";
import type { BlockSpec, UpDirection } from "../project/types.ts";
import type { NamedRegion } from "./build-faces.ts";
import type { Region } from "./find-regions.ts";
import { flattenPoint } from "./lift-point.ts";
import type { BlockMesh } from "./mesh-block.ts";
import type { UnionMesh } from "./union-mesh.ts";
import { distanceFrom, isSameSurface, normalOf } from "./surfaces.ts";

/** A side answers for a face when it covers at least this much of it, in mm². */
const leastCover = 1;

/**
 * Give every face its names, its id (the first name, numbered where a side shows in several
 * places) and its words.
 */
export function nameRegions(
  mesh: UnionMesh,
  regions: readonly Region[],
  specs: readonly BlockSpec[],
  blocks: readonly BlockMesh[],
  ups: Readonly<Record<string, UpDirection>>,
): { named: NamedRegion[]; order: Count[] } {
  const sides = specs.flatMap((spec, block) =>
    blocks[block]!.sides.map((side, index) => ({
      name: `${spec.id}/${side.name}`,
      block,
      side: index,
      surface: side.surface,
    })),
  );
  const namesOf = regions.map((region) => {
    const own = new Set(
      region.triangles.map((t) => `${mesh.triangles[t]!.block} ${mesh.triangles[t]!.side}`),
    );
    const flat = region.surface.kind === "plane" ? regionFlat(mesh, region) : null;
    return sides
      .filter(({ block, side, surface }) => {
        if (own.has(`${block} ${side}`)) return true;
        if (flat === null || !isSameSurface(surface, region.surface)) return false;
        return overlapArea(flat, sideFlat(blocks[block]!, side, region)) > leastCover;
      })
      .map(({ name }) => name);
  });
  const rank = (names: readonly string[]): Count =>
    sides.findIndex(({ name }) => name === names[0]);
  const order = regions
    .map((_, i) => i)
    .sort((a, b) => rank(namesOf[a]!) - rank(namesOf[b]!) || a - b);
  const used = new Map<string, Count>();
  const ids = new Map<Count, string>();
  for (const index of order) {
    const first = namesOf[index]![0]!;
    const times = (used.get(first) ?? 0) + 1;
    used.set(first, times);
    ids.set(index, times === 1 ? first : `${first}#${times}`);
  }
  const labels = wordFaces(
    namesOf,
    regions.map((region) => isOutermost(mesh, region)),
  );
  const named = regions.map((region, i): NamedRegion => {
    const names = [...new Set(namesOf[i]!)];
    const wanted = [ids.get(i)!, ...names].find((name) => ups[name] !== undefined);
    return {
      ...region,
      id: ids.get(i)!,
      names,
      label: labels[i]!,
      wantedUp: wanted ? ups[wanted]! : null,
    };
  });
  return { named, order };
}

function regionFlat(mesh: UnionMesh, region: Region): FlatRegion {
  return unite(
    region.triangles.map((t) =>
      mesh.triangles[t]!.corners.map((i) => flattenPoint(region.surface, mesh.points[i]!)),
    ),
  );
}

function sideFlat(block: BlockMesh, side: Count, region: Region): FlatRegion {
  return unite(
    block.triangles
      .filter((triangle) => triangle.side === side)
      .map(({ corners }) => corners.map((i) => flattenPoint(region.surface, block.points[i]!))),
  );
}

const words: Readonly<Record<string, string>> = {
  top: "top",
  underside: "underside",
  front: "front",
  back: "back",
  left: "left side",
  right: "right side",
  slope: "slope",
  around: "round side",
};

/** Whether a face lies on the box round the whole solid: the left side, not a left side further in. */
function isOutermost(mesh: UnionMesh, region: Region): boolean {
  if (region.surface.kind !== "plane") return false;
  const normal = normalOf(region.surface, region.surface.origin);
  const farthest = Math.max(...mesh.points.map((point) => distanceFrom(region.surface, point)));
  return farthest < 1e-6 && Math.max(...normal.map(Math.abs)) > 1 - 1e-9 && normal[2] <= 0;
}

/** A block in words. One that is called after a side is told apart from the side: "the left block". */
function blockWords(block: string): string {
  const name = block.replaceAll("-", " ");
  return sideNames.has(name) ? `${name} block` : name;
}

const sideNames: ReadonlySet<string> = new Set([
  "top",
  "bottom",
  "underside",
  "front",
  "back",
  "left",
  "right",
  "side",
]);

/** "left side" for the outermost; "front of the back" where several blocks have a front. */
function wordFaces(namesOf: readonly (readonly string[])[], isOuter: readonly boolean[]): string[] {
  const plain = namesOf.map((names) => {
    const side = names[0]!.split("/")[1]!;
    return words[side] ?? side.replace("-", " ");
  });
  const full = plain.map((word, i) => {
    const isOnly = plain.filter((other) => other === word).length === 1;
    if (isOnly || isOuter[i]) return word;
    return `${word} of the ${blockWords(namesOf[i]![0]!.split("/")[0]!)}`;
  });
  return full.map((word, i) => {
    const same = full.map((other, at) => (other === word ? at : -1)).filter((at) => at >= 0);
    return same.length === 1 ? word : `${word} ${same.indexOf(i) + 1}`;
  });
}
