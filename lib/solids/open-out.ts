import type { Count, Radians } from "../plane/types.ts";
import type { HalfEdges } from "./half-edges.ts";
import { listSlits, type Slit } from "./list-slits.ts";
import { add3, scale3 } from "./points3.ts";
import {
  directionAt,
  isAcross,
  middleOfGap,
  polarPlace,
  spanOf,
  turnTo,
  type Round,
} from "./round-angles.ts";
import type { UnionMesh } from "./union-mesh.ts";
import type { Direction, Point3, Surface } from "./types.ts";

/** Where a curved face is cut to lie flat. */
export interface OpenedOut {
  /** Half-edges of the slit, both ways; empty where the face lies flat of itself. */
  readonly slit: ReadonlySet<Count>;
  /** For a curved face the direction from the axis at which it is opened out. */
  readonly opensAt: Direction | null;
  /** Whether the slit runs straight along the surface there. */
  readonly isStraight: boolean;
}

/**
 * Find the line along which a curved face is opened to lie flat. A face that does not go all the
 * way round is opened in the middle of its widest gap, where nothing is cut. A line that cuts no
 * island off the face comes before any that does.
 */
export function openOut(
  mesh: UnionMesh,
  edges: HalfEdges,
  members: readonly Count[],
  surface: Surface,
): OpenedOut {
  if (surface.kind === "plane") return { slit: new Set(), opensAt: null, isStraight: true };
  const spans = members.map((triangle) => spanOf(surface, cornersOf(mesh, triangle)));
  const gap = middleOfGap(spans);
  if (gap !== null) {
    return { slit: new Set(), opensAt: directionAt(surface, gap), isStraight: true };
  }
  const slits = listSlits(mesh, edges, members, surface, spans);
  const isWhole = ({ halves }: Slit) => splitAtSlit(members, new Set(halves), edges).length === 1;
  const opens = (slit: Slit) => unroll(mesh, edges, members, surface, slit) !== null;
  const best = slits.find((slit) => isWhole(slit) && opens(slit)) ?? slits.find(opens) ?? slits[0]!;
  const turns = unroll(mesh, edges, members, surface, best);
  const isStraight = !spans.some((span) => isAcross(span, best.angle));
  const angle = isStraight || turns === null ? best.angle : turns;
  return { slit: new Set(best.halves), opensAt: directionAt(surface, angle), isStraight };
}

/**
 * Go from triangle to triangle without crossing the slit and add up the turns between their
 * middles. Null where two ways to a triangle differ by a whole turn, or the turns add up to more
 * than one: then the slit does not open the face. Else an angle that lies between both ends.
 */
function unroll(
  mesh: UnionMesh,
  edges: HalfEdges,
  members: readonly Count[],
  surface: Round,
  { halves }: Slit,
): Radians | null {
  const slit = new Set(halves);
  const own = new Set(members);
  const middle = (triangle: Count): Radians =>
    polarPlace(surface, middleOf(cornersOf(mesh, triangle))).angle;
  const turns = new Map<Count, Radians>();
  let [low, high] = [Infinity, -Infinity];
  for (const start of members) {
    if (turns.has(start)) continue;
    const group = [start];
    turns.set(start, middle(start));
    for (const triangle of group) {
      const at = turns.get(triangle)!;
      for (let half = triangle * 3; half < triangle * 3 + 3; half++) {
        const other = edges.triangleOf(edges.twin(half));
        if (slit.has(half) || !own.has(other)) continue;
        const there = at + turnTo(at, middle(other));
        const known = turns.get(other);
        if (known !== undefined && Math.abs(known - there) > 1) return null;
        if (known !== undefined) continue;
        turns.set(other, there);
        group.push(other);
      }
    }
    const all = group.map((triangle) => turns.get(triangle)!);
    [low, high] = [Math.min(...all), Math.max(...all)];
    if (high - low >= 2 * Math.PI) return null;
  }
  return (low + high) / 2 + Math.PI;
}

/** Triangles that still hang together when the edges of a slit are cut, in groups. */
export function splitAtSlit(
  members: readonly Count[],
  slit: ReadonlySet<Count>,
  edges: HalfEdges,
): Count[][] {
  if (slit.size === 0) return [[...members]];
  const left = new Set(members);
  const groups: Count[][] = [];
  for (const start of members) {
    if (!left.delete(start)) continue;
    const group = [start];
    for (const triangle of group) {
      for (let half = triangle * 3; half < triangle * 3 + 3; half++) {
        if (slit.has(half)) continue;
        const other = edges.triangleOf(edges.twin(half));
        if (left.delete(other)) group.push(other);
      }
    }
    groups.push(group.sort((a, b) => a - b));
  }
  return groups;
}

const cornersOf = (mesh: UnionMesh, triangle: Count): Point3[] =>
  mesh.triangles[triangle]!.corners.map((i) => mesh.points[i]!);

const middleOf = ([a, b, c]: readonly Point3[]): Point3 => scale3(add3(a!, add3(b!, c!)), 1 / 3);
