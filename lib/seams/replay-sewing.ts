import type { Mm, Radians } from "../plane/types.ts";
import { flattenLoop } from "../plane/flatten-loop.ts";
import type { Panel, PanelSide } from "../panels/types.ts";
import type { SewingPass, SewingProof } from "./types.ts";

export interface Replayed {
  readonly panels: readonly Panel[];
  readonly passes: readonly SewingPass[];
  /** Edges of the solid that are never sewn: the opening. */
  readonly open: ReadonlySet<string>;
  /** Edges closed by a zip, tape or ties. */
  readonly closing: ReadonlySet<string>;
}

/** Cloth corners nearer than this to one angle lie on one another. @source our choice: 3 degrees */
const flat: Radians = (3 * Math.PI) / 180;
/** Chords stray no further than this from an arc, in mm, where its tangent is wanted. */
const fineChord: Mm = 1e-4;
/** Share of a closing that the mouth beside it must have, for the cloth to spread. @source our choice */
const mouthShare = 0.75;
/** A mouth this wide goes over the bed of any machine. @source our choice */
const enoughMouth: Mm = 500;

/**
 * Replay an order of sewing on the cloth itself, and say what stands in the way; no faults prove that
 * every seam can be reached flat under a machine.
 *
 * It knows nothing of the planner. Corners of panels are knots; sewing an edge ties the knots at its two
 * ends together. From knots alone it follows: (1) both edges of every seam are raw when it is sewn, so
 * that the needle runs one allowance inside two raw edges with all other cloth to one side; (2) a pass
 * runs on without a gap on both sides; (3) where the two edges do not lie on one another past a corner a
 * pivot is listed, and a clip unless a join ends there; (4) a closing goes in while the cloth beside it
 * still has a mouth to spread by; (5) nothing is closed up while anything is still to be sewn to it, and
 * what stays raw in the end is the opening, no more.
 */
export function replaySewing(given: Replayed): SewingProof {
  const cloth = layOut(given.panels);
  const faults = [
    ...given.passes.flatMap((pass) => replayPass(pass, cloth, given)),
    ...checkEnd(cloth, given),
  ];
  return { ok: faults.length === 0, faults };
}

interface RawEdge {
  readonly edge: string;
  readonly panel: string;
  /** Knots it runs from and to, in the order of its panel's outline. */
  readonly from: number;
  readonly to: number;
  readonly isForward: boolean;
  readonly length: Mm;
  isRaw: boolean;
}

interface Cloth {
  readonly edges: readonly RawEdge[];
  /** Each knot's representative. */
  readonly tied: number[];
  /** Cloth angle at each single corner, and the panel it is on. */
  readonly angles: readonly Radians[];
  readonly owner: readonly string[];
}

/** Every corner of every panel as a knot of its own. */
function layOut(panels: readonly Panel[]): Cloth {
  const angles: Radians[] = [];
  const owner: string[] = [];
  const edges = panels.flatMap(({ id, loops }) =>
    loops.flatMap((loop) => {
      const first = angles.length;
      loop.forEach((side, i) => {
        angles.push(cornerAngle(loop.at(i - 1)!, side));
        owner.push(id);
      });
      return loop.map((side, i): RawEdge => ({
        edge: side.edge,
        panel: id,
        from: first + i,
        to: first + ((i + 1) % loop.length),
        isForward: side.isForward,
        length: side.length,
        isRaw: true,
      }));
    }),
  );
  return { edges, tied: angles.map((_, i) => i), angles, owner };
}

/** Angle of cloth between two sides, from chords a hair long: arcs count by their tangents. */
function cornerAngle(before: PanelSide, after: PanelSide): Radians {
  const [into, out] = [chordAt(before, true), chordAt(after, false)];
  const turn = Math.atan2(into[0] * out[1] - into[1] * out[0], into[0] * out[0] + into[1] * out[1]);
  return Math.PI - turn;
}

function chordAt({ segments }: PanelSide, atEnd: boolean): readonly [number, number] {
  const segment = atEnd ? segments.at(-1)! : segments[0]!;
  const points = [...flattenLoop([segment], fineChord), segment.to];
  const [a, b] = atEnd ? [points.at(-2)!, points.at(-1)!] : [points[0]!, points[1]!];
  return [b[0] - a[0], b[1] - a[1]];
}

const find = ({ tied }: Cloth, knot: number): number => {
  let top = knot;
  while (tied[top] !== top) top = tied[top]!;
  return top;
};

const tie = (cloth: Cloth, a: number, b: number): void => {
  cloth.tied[find(cloth, a)] = find(cloth, b);
};

const banksOf = (cloth: Cloth, edge: string): readonly RawEdge[] =>
  cloth.edges.filter((one) => one.edge === edge);

function replayPass(pass: SewingPass, cloth: Cloth, given: Replayed): string[] {
  const name = `seam ${pass.seams.join(", ")}`;
  const pairs = pass.edges.map((edge) => banksOf(cloth, edge));
  const faults: string[] = [];
  if (pairs.some((pair) => pair.length !== 2 || pair.some(({ isRaw }) => !isRaw))) {
    return [`${name} needs an edge that is sewn already`];
  }
  const chain = alignPairs(pairs, cloth);
  if (chain === null) return [`${name} is not one unbroken run of raw edges`];
  faults.push(...checkCorners(pass, chain, cloth).map((fault) => `${name} ${fault}`));
  const isClosing = pass.edges.some((edge) => given.closing.has(edge));
  for (const [a, b] of chain) {
    a.isRaw = false;
    b.isRaw = false;
    tie(cloth, a.from, b.to);
    tie(cloth, a.to, b.from);
  }
  const piece = pieceOf(cloth, chain[0]![0].panel);
  const mouths = rawLoops(cloth).filter(([first]) => piece.has(first!.panel));
  if (isClosing) {
    const widest = Math.max(0, ...mouths.map(lengthOf));
    if (widest < Math.min(enoughMouth, mouthShare * lengthOf(chain.map(([a]) => a)))) {
      faults.push(`${name} is put in where the cloth no longer spreads flat`);
    }
  }
  const isLast = cloth.edges.every(({ isRaw, edge }) => !isRaw || given.open.has(edge));
  if (!isLast && mouths.length === 0)
    faults.push(`${name} closes the work with seams still to sew`);
  return faults;
}

type Pair = readonly [a: RawEdge, b: RawEdge];

/** The pairs turned so that all first edges run on from one another, and all second ones back. */
function alignPairs(pairs: readonly (readonly RawEdge[])[], cloth: Cloth): Pair[] | null {
  const meets = (one: number, other: number): boolean => find(cloth, one) === find(cloth, other);
  const starts = [pairs[0]!, [...pairs[0]!].reverse()];
  for (const start of starts) {
    const chain: Pair[] = [[start[0]!, start[1]!]];
    for (const pair of pairs.slice(1)) {
      const [a, b] = chain.at(-1)!;
      const next = [pair, [...pair].reverse()].find(
        ([c, d]) => meets(a.to, c!.from) && meets(b.from, d!.to),
      );
      if (next === undefined) break;
      chain.push([next[0]!, next[1]!]);
    }
    if (chain.length === pairs.length) return chain;
  }
  return null;
}

/** Angle of cloth gathered in one knot, and how many panel corners lie in it. */
function gather(
  cloth: Cloth,
  knot: number,
): { readonly angle: Radians; readonly owners: string[] } {
  const top = find(cloth, knot);
  const members = cloth.angles.flatMap((_, i) => (find(cloth, i) === top ? [i] : []));
  return {
    angle: members.reduce((sum, i) => sum + cloth.angles[i]!, 0),
    owners: members.map((i) => cloth.owner[i]!),
  };
}

function checkCorners(pass: SewingPass, chain: readonly Pair[], cloth: Cloth): string[] {
  let along: Mm = 0;
  return chain.flatMap(([a, b], i) => {
    along += a.length;
    const isEnd = i === chain.length - 1;
    const meets = find(cloth, chain[0]![0].from) === find(cloth, a.to);
    const closes = meets && find(cloth, chain[0]![1].to) === find(cloth, b.from);
    if (isEnd && !(pass.isRing && closes)) return pass.isRing ? ["is no ring"] : [];
    const [own, other] = [gather(cloth, a.to), gather(cloth, b.from)];
    const isStraight = [own, other].every(({ angle }) => Math.abs(angle - Math.PI) < flat);
    if (isStraight) return [];
    // The end of a ring is its start.
    const corner = pass.corners.find(
      (one) => Math.abs(one.along - along) < 0.5 || (isEnd && one.along < 0.5),
    );
    if (corner === undefined) return ["turns a corner that is not listed"];
    if (Math.abs(own.angle - other.angle) < flat) return [];
    const tight = own.angle > other.angle ? own : other;
    const opens = tight.owners.length > 1 || corner.clip === tight.owners[0];
    return opens ? [] : ["turns a corner where the cloth cannot open"];
  });
}

/** Panels that hang together with one. */
function pieceOf(cloth: Cloth, panel: string): ReadonlySet<string> {
  const reached = new Set([panel]);
  for (let size = 0; size !== reached.size;) {
    size = reached.size;
    const knots = new Set(
      cloth.owner.flatMap((owner, i) => (reached.has(owner) ? [find(cloth, i)] : [])),
    );
    cloth.owner.forEach((owner, i) => knots.has(find(cloth, i)) && reached.add(owner));
  }
  return reached;
}

/** Raw edges strung together knot by knot. */
function rawLoops(cloth: Cloth): RawEdge[][] {
  const raw = cloth.edges.filter(({ isRaw }) => isRaw);
  const from = new Map(raw.map((edge) => [find(cloth, edge.from), edge]));
  const left = new Set(raw);
  const loops: RawEdge[][] = [];
  for (const start of raw) {
    const loop: RawEdge[] = [];
    for (let edge: RawEdge | undefined = start; edge !== undefined && left.delete(edge);) {
      loop.push(edge);
      edge = from.get(find(cloth, edge.to));
    }
    if (loop.length > 0) loops.push(loop);
  }
  return loops;
}

const lengthOf = (edges: readonly RawEdge[]): Mm =>
  edges.reduce((sum, { length }) => sum + length, 0);

/** In the end all hangs together, and only the opening is raw. */
function checkEnd(cloth: Cloth, { panels, open, closing }: Replayed): string[] {
  const raw = cloth.edges.filter(({ isRaw, edge }) => isRaw && !open.has(edge));
  const faults = [...new Set(raw.map(({ edge }) => edge))].map(
    (edge) => `edge ${edge} is never sewn`,
  );
  const whole = cloth.edges.length === 0 ? 0 : pieceOf(cloth, panels[0]!.id).size;
  const hangs = panels.length === 0 || whole === panels.length || open.size > 0;
  return [
    ...faults,
    ...(hangs ? [] : ["the panels do not all hang together"]),
    ...(open.size + closing.size > 0 ? [] : ["nothing is left to turn the cover through"]),
  ];
}
