import { checkDiagonals } from "../plane/check-diagonals.ts";
import { loopBounds } from "../plane/loop-bounds.ts";
import { mergeShortLegs } from "../plane/merge-short-legs.ts";
import type { Loop, Point } from "../plane/types.ts";
import type { Format } from "../units/make-format.ts";
import { edgesAlong } from "./edges-along.ts";
import type { WalkedEdge } from "./edges-along.ts";
import type { EdgeText, WalkRow, WalkText } from "./pages.ts";
import { walkOutline } from "./walk-outline.ts";
import type { Walk, WalkLeg } from "./walk-outline.ts";

const degree = Math.PI / 180;

/**
 * The walk round an outline in words, with where each leg ends: measured from the lower left corner of
 * the box round the piece, so that no figure is negative. Legs too short to lay off are left out. `id`
 * keeps its rows apart in print; `edges` are named beside the legs that lie along them.
 */
export function describeWalk(
  exact: Loop,
  id: string,
  format: Format,
  edges: readonly WalkedEdge[] = [],
): WalkText {
  const loop = mergeShortLegs(exact, format.step);
  const walk = walkOutline(loop);
  const circle = wholeCircle(walk);
  if (circle !== null) {
    return {
      intro: `Draw a circle of radius ${format.length(circle)}: pin a thread at the centre and swing the chalk once round.`,
      legs: [],
      checks: [`Straight across the middle it measures ${format.length(2 * circle)}.`],
    };
  }
  const corner = loopBounds(loop).min;
  const along = edgesAlong(walk, edges);
  const inset = walk.start[0] - corner[0];
  const start =
    inset < 1e-6
      ? "Start at the lower left corner"
      : `Start on the lower edge of the box round the piece, ${format.length(inset)} from its left end`;
  return {
    intro: `${start}, with the up arrow pointing away from you.`,
    legs: walk.legs.flatMap((leg, i) =>
      withEdges(describeLeg(leg, i, walk, { id, format, corner }), along[i] ?? []),
    ),
    checks: checkDiagonals(loop).map(
      ({ from, to, length }) =>
        `From ${placeName(from, walk, corner, format)} to ${placeName(to, walk, corner, format)}: ${format.length(length)}.`,
    ),
  };
}

/** Radius when every leg curves round one centre, else null. */
function wholeCircle({ legs }: Walk): number | null {
  const first = legs[0];
  if (first?.kind !== "curved") return null;
  const isRound = legs.every(
    (leg) =>
      leg.kind === "curved" &&
      Math.hypot(leg.centre[0] - first.centre[0], leg.centre[1] - first.centre[1]) < 1e-6,
  );
  return isRound ? first.radius : null;
}

function describeLeg(
  leg: WalkLeg,
  index: number,
  { heading, legs }: Walk,
  { id, format, corner }: { readonly id: string; readonly format: Format; readonly corner: Point },
): WalkRow {
  const facing = legs
    .slice(0, index + 1)
    .reduce(
      (angle, each, i) =>
        angle + each.turn + (i < index && each.kind === "curved" ? each.sweep : 0),
      heading,
    );
  const turn = index === 0 ? "" : turnWords(leg.turn, format);
  const isLast = index === legs.length - 1;
  return {
    id: `${id}-leg-${index + 1}`,
    leg: `${index + 1}`,
    words: `${turn}${goWords(leg, facing, format)}${isLast ? ", back to the start" : ""}.`,
    across: format.length(leg.to[0] - corner[0]),
    up: format.length(leg.to[1] - corner[1]),
    edge: null,
  };
}

/** The leg with its edge; each further edge along it has a row of its own. */
function withEdges(row: WalkRow, edges: readonly EdgeText[]): readonly WalkRow[] {
  const rest = edges.slice(1).map((edge, i): WalkRow => ({
    id: `${row.id}-${i + 2}`,
    leg: "",
    words: "",
    across: "",
    up: "",
    edge,
  }));
  return [{ ...row, edge: edges[0] ?? null }, ...rest];
}

function turnWords(turn: number, format: Format): string {
  const angle = Math.abs(turn / degree);
  if (angle < 0.05) return "Straight on: ";
  const side = turn > 0 ? "left" : "right";
  if (Math.abs(angle - 90) < 0.05) return `Turn ${side}. `;
  return `Turn ${side} by ${format.degrees(angle)}. `;
}

function goWords(leg: WalkLeg, facing: number, format: Format): string {
  if (leg.kind === "curved") {
    const side = leg.sweep > 0 ? "left" : "right";
    const angle = format.degrees(Math.abs(leg.sweep / degree));
    return `Follow a curve to the ${side} of radius ${format.length(leg.radius)} through ${angle}, ${format.length(leg.length)} along it`;
  }
  return `Go ${format.length(leg.length)}${compassWords(facing)}`;
}

/** " up", " down", " to the left" or " to the right" where the leg lies square, else nothing. */
function compassWords(facing: number): string {
  const quarters = facing / (Math.PI / 2);
  const nearest = Math.round(quarters);
  if (Math.abs(quarters - nearest) > 1e-3) return "";
  return [" to the right", " up", " to the left", " down"][((nearest % 4) + 4) % 4]!;
}

function placeName(point: Point, { start }: Walk, corner: Point, format: Format): string {
  if (Math.hypot(point[0] - start[0], point[1] - start[1]) < 1e-6) return "the start";
  const across = format.length(point[0] - corner[0]);
  return `the corner at ${across} across and ${format.length(point[1] - corner[1])} up`;
}
