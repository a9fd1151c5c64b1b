import type { Count, Mm, Radians } from "../plane/types.ts";
import { wholeTurn } from "../plane/points.ts";
import type { HalfEdges } from "./half-edges.ts";
import {
  add3,
  cross3,
  distance3,
  dot3,
  flatten3,
  length3,
  scale3,
  subtract3,
  unit3,
} from "./points3.ts";
import { axisPoint } from "./surfaces.ts";
import type { UnionMesh } from "./union-mesh.ts";
import type { Direction, Point3, Surface } from "./types.ts";

/** Where a curved face is cut to lie flat. */
export interface OpenedOut {
  /** Half-edges of the slit, both ways; empty where the face lies flat of itself. */
  readonly slit: ReadonlySet<Count>;
  /** For a curved face the direction from the axis at which it is opened out. */
  readonly opensAt: Direction | null;
}

/** Points this near a line lie on it: the kernel is good to about 1e-4 mm. */
const onLine: Mm = 2e-4;

type Round = Surface & { kind: "cylinder" | "cone" };

/** A straight line along a round surface, by its angle about the axis. */
interface Ruling {
  readonly angle: Radians;
  /** Edges inside the face that run along it, both ways. */
  readonly halves: Count[];
  length: Mm;
}

/**
 * Find the line along which a curved face is opened to lie flat. A face that does not go all the
 * way round is opened in the middle of its widest gap, where nothing is cut.
 */
export function openOut(
  mesh: UnionMesh,
  edges: HalfEdges,
  members: readonly Count[],
  surface: Surface,
): OpenedOut {
  if (surface.kind === "plane") return { slit: new Set(), opensAt: null };
  const spans = members.map((triangle) => spanOf(cornersOf(mesh, triangle), surface));
  const gap = widestGap(spans);
  if (gap !== null) {
    return { slit: new Set(), opensAt: directionAt(surface, gap.start + gap.width / 2) };
  }
  const rulings = collectRulings(mesh, edges, members, surface);
  const best = chooseRuling(surface, members, edges, rulings, spans);
  return { slit: new Set(best.halves), opensAt: directionAt(surface, best.angle) };
}

/**
 * The line that no triangle crosses and that costs least slit. Between equals the back is slit,
 * then the underside. A line that cuts no island off the face comes before any that does.
 */
function chooseRuling(
  surface: Round,
  members: readonly Count[],
  edges: HalfEdges,
  rulings: readonly Ruling[],
  spans: readonly Span[],
): Ruling {
  const ranked = rulings
    .filter(({ angle }) => !spans.some((span) => isAcross(span, angle)))
    .map((ruling) => ({ ruling, direction: directionAt(surface, ruling.angle) }))
    .sort(
      (a, b) =>
        Math.round((a.ruling.length - b.ruling.length) * 1e3) ||
        Math.round((b.direction[1] - a.direction[1]) * 1e6) ||
        Math.round((a.direction[2] - b.direction[2]) * 1e6),
    )
    .map(({ ruling }) => ruling);
  const isWhole = ({ halves }: Ruling) => splitAtSlit(members, new Set(halves), edges).length === 1;
  return ranked.find(isWhole) ?? ranked[0]!;
}

/** The widest part of the turn that no triangle covers; null where they go all the way round. */
function widestGap(spans: readonly Span[]): Span | null {
  const ordered = [...spans].sort((a, b) => a.start - b.start);
  const first = ordered[0]!.start;
  // A triangle that runs on past the whole turn covers the beginning too.
  let covered = Math.max(first, ...spans.map(({ start, width }) => start + width - 2 * Math.PI));
  let widest: Span = { start: 0, width: 0, hair: 0 };
  for (const { start, width } of [...ordered, { start: first + 2 * Math.PI, width: 0 }]) {
    if (start - covered > widest.width + 1e-6)
      widest = { start: covered, width: start - covered, hair: 0 };
    covered = Math.max(covered, start + width);
  }
  return widest.width > leastGap ? widest : null;
}

/** Narrower gaps are the kernel's rounding. */
const leastGap: Radians = 1e-3;

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

/** Every ruling through a corner of the face, with the inner edges that run along it. */
function collectRulings(
  mesh: UnionMesh,
  edges: HalfEdges,
  members: readonly Count[],
  surface: Round,
): Ruling[] {
  const own = new Set(members);
  const rulings = new Map<Count, Ruling[]>();
  const through = (point: Point3): Ruling => {
    const { angle, reach } = polar(surface, point);
    const key = Math.round(angle / keyStep);
    const near = [key - 1, key, key + 1].flatMap((one) => rulings.get((one + keys) % keys) ?? []);
    const known = near.find((one) => angleBetween(one.angle, angle) < onLine / reach);
    if (known) return known;
    const made = { angle, halves: [], length: 0 };
    rulings.set(key % keys, [...(rulings.get(key % keys) ?? []), made]);
    return made;
  };
  for (const half of members.flatMap((triangle) => [0, 1, 2].map((i) => triangle * 3 + i))) {
    const [from, to] = [mesh.points[edges.from(half)]!, mesh.points[edges.to(half)]!];
    const twin = edges.twin(half);
    const isInner = own.has(edges.triangleOf(twin));
    // An inner edge is met twice: once is enough, and puts both its ways on the same line.
    if (isInner && twin < half) continue;
    const ruling = through(isTip(surface, from) ? to : from);
    if (!isInner || !runsAlong(surface, ruling.angle, [from, to])) continue;
    ruling.halves.push(half, twin);
    ruling.length += distance3(from, to);
  }
  return [...rulings.values()].flat();
}

/** Rulings are kept by whole steps of angle, finer than any facet. */
const keys: Count = 100_000;
const keyStep: Radians = (2 * Math.PI) / keys;

const angleBetween = (a: Radians, b: Radians): Radians =>
  Math.min(wholeTurn(a - b), wholeTurn(b - a));

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

/** The angles a triangle covers. */
interface Span {
  readonly start: Radians;
  readonly width: Radians;
  /** An angle this near one of its ends is not across it. */
  readonly hair: Radians;
}

function spanOf(corners: readonly Point3[], surface: Round): Span {
  const places = corners.filter((corner) => !isTip(surface, corner)).map((p) => polar(surface, p));
  const hair: Radians = onLine / Math.min(...places.map(({ reach }) => reach));
  // From which corner do the others lie within half a turn ahead?
  const spans = places.map(({ angle }) => ({
    start: angle,
    width: Math.max(...places.map((other) => wholeTurn(other.angle - angle))),
  }));
  const { start, width } = spans.reduce((a, b) => (b.width < a.width ? b : a));
  return { start, width, hair };
}

const isAcross = ({ start, width, hair }: Span, angle: Radians): boolean => {
  const ahead = wholeTurn(angle - start);
  return ahead > hair && ahead < width - hair;
};

const cornersOf = (mesh: UnionMesh, triangle: Count): Point3[] =>
  mesh.triangles[triangle]!.corners.map((i) => mesh.points[i]!);

/** Angle about the axis from the surface's own zero, and distance from the axis. */
function polar(surface: Round, point: Point3): { angle: Radians; reach: Mm } {
  const out = flatten3(subtract3(point, axisPoint(surface)), surface.axis);
  const side = cross3(surface.axis, surface.zero);
  return {
    angle: wholeTurn(Math.atan2(dot3(out, side), dot3(out, surface.zero))),
    reach: length3(out),
  };
}

function directionAt(surface: Round, angle: Radians): Direction {
  const side = cross3(surface.axis, surface.zero);
  return unit3(add3(scale3(surface.zero, Math.cos(angle)), scale3(side, Math.sin(angle))));
}

const isTip = (surface: Surface, point: Point3): boolean =>
  surface.kind === "cone" && distance3(point, surface.tip) < 1e-6;
