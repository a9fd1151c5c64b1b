import type { Count, Mm, Radians } from "../plane/types.ts";
import { wholeTurn } from "../plane/points.ts";
import type { HalfEdges } from "./half-edges.ts";
import { cross3, distance3, dot3, subtract3 } from "./points3.ts";
import {
  directionAt,
  isAcross,
  isTip,
  onLine,
  polarPlace,
  turnTo,
  type Round,
  type Span,
} from "./round-angles.ts";
import { axisPoint } from "./surfaces.ts";
import type { UnionMesh } from "./union-mesh.ts";
import type { Point3 } from "./types.ts";

/** A line along which a curved face could be slit. */
export interface Slit {
  readonly angle: Radians;
  /** Edges inside the face that run along it, both ways. */
  readonly halves: Count[];
  length: Mm;
}

/**
 * Lines to slit a curved face along, the best first: what costs least slit, between equals at the
 * back, then underneath. Straight lines that no triangle crosses come first. Where two surfaces all
 * but touch, putting corners on them can carry some across every line; then come the lines between
 * two facets of the kernel.
 */
export function listSlits(
  mesh: UnionMesh,
  edges: HalfEdges,
  members: readonly Count[],
  surface: Round,
  spans: readonly Span[],
): readonly Slit[] {
  const own = new Set(members);
  // An inner edge is met twice: once is enough, and puts both its ways on the same line.
  const inner = members
    .flatMap((triangle) => [0, 1, 2].map((i) => triangle * 3 + i))
    .filter((half) => own.has(edges.triangleOf(edges.twin(half))) && half < edges.twin(half));
  const corners = [...new Set(members.flatMap((triangle) => mesh.triangles[triangle]!.corners))];
  const straight = collectRulings(mesh, edges, corners, inner, surface).filter(
    ({ angle }) => !spans.some((span) => isAcross(span, angle)),
  );
  return [
    ...ranked(straight, surface),
    ...ranked(betweenFacets(mesh, edges, inner, surface), surface),
  ];
}

const ranked = (slits: readonly Slit[], surface: Round): Slit[] =>
  slits
    .map((slit) => ({ slit, direction: directionAt(surface, slit.angle) }))
    .sort(
      (a, b) =>
        Math.round((a.slit.length - b.slit.length) * 1e3) ||
        Math.round((b.direction[1] - a.direction[1]) * 1e6) ||
        Math.round((a.direction[2] - b.direction[2]) * 1e6),
    )
    .map(({ slit }) => slit);

/** Every straight line through a corner of the face, with the inner edges that run along it. */
function collectRulings(
  mesh: UnionMesh,
  edges: HalfEdges,
  corners: readonly Count[],
  inner: readonly Count[],
  surface: Round,
): Slit[] {
  const lines = new Map<Count, Slit[]>();
  const through = (point: Point3): Slit => {
    const { angle, reach } = polarPlace(surface, point);
    const key = Math.round(angle / keyStep);
    const near = [key - 1, key, key + 1].flatMap((one) => lines.get((one + keys) % keys) ?? []);
    const known = near.find((one) => Math.abs(turnTo(one.angle, angle)) < onLine / reach);
    if (known) return known;
    const made = { angle, halves: [], length: 0 };
    lines.set(key % keys, [...(lines.get(key % keys) ?? []), made]);
    return made;
  };
  for (const corner of corners) {
    if (!isTip(surface, mesh.points[corner]!)) through(mesh.points[corner]!);
  }
  for (const half of inner) {
    const [from, to] = [mesh.points[edges.from(half)]!, mesh.points[edges.to(half)]!];
    const line = through(isTip(surface, from) ? to : from);
    if (runsAlong(surface, line.angle, [from, to])) addEdge(line, mesh, edges, half);
  }
  return [...lines.values()].flat();
}

/** Lines are kept by whole steps of angle, finer than any facet. */
const keys: Count = 100_000;
const keyStep: Radians = (2 * Math.PI) / keys;

function addEdge(slit: Slit, mesh: UnionMesh, edges: HalfEdges, half: Count): void {
  slit.halves.push(half, edges.twin(half));
  slit.length += distance3(mesh.points[edges.from(half)]!, mesh.points[edges.to(half)]!);
}

function runsAlong(surface: Round, angle: Radians, ends: readonly Point3[]): boolean {
  const direction = directionAt(surface, angle);
  const across = cross3(surface.axis, direction);
  return ends.every((end) => {
    const out = subtract3(end, axisPoint(surface));
    return (
      Math.abs(dot3(out, across)) < onLine && (isTip(surface, end) || dot3(out, direction) > 0)
    );
  });
}

/** Lines of edges between two neighbouring facets of one block. */
function betweenFacets(
  mesh: UnionMesh,
  edges: HalfEdges,
  inner: readonly Count[],
  surface: Round,
): Slit[] {
  const lines = new Map<string, Slit>();
  for (const half of inner) {
    const pair = [half, edges.twin(half)].map((one) => {
      const { block, side, facet } = mesh.triangles[edges.triangleOf(one)]!;
      return `${block} ${side} ${facet}`;
    });
    if (pair[0] === pair[1]) continue;
    const key = pair.sort().join("|");
    const ends = [edges.from(half), edges.to(half)].map((i) => mesh.points[i]!);
    const { angle } = polarPlace(surface, isTip(surface, ends[0]!) ? ends[1]! : ends[0]!);
    const line = lines.get(key) ?? { angle: wholeTurn(angle), halves: [], length: 0 };
    lines.set(key, line);
    addEdge(line, mesh, edges, half);
  }
  return [...lines.values()];
}
