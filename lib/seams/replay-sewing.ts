import type { Mm, Radians } from "../plane/types.ts";
import type { Panel } from "../panels/types.ts";
import {
  banksOf,
  find,
  layOut,
  lengthOf,
  pieceOf,
  rawLoops,
  tie,
  type Cloth,
  type RawEdge,
} from "./replay-cloth.ts";
import type { SewingPass, SewingProof, SewnOn } from "./types.ts";

export interface Replayed {
  readonly panels: readonly Panel[];
  readonly passes: readonly SewingPass[];
  /** Loose pieces that are sewn on on the way. */
  readonly attached?: readonly SewnOn[];
  /** Edges of the solid that are never sewn: the opening. */
  readonly open: ReadonlySet<string>;
  /** Edges closed by a zip, tape or ties. */
  readonly closing: ReadonlySet<string>;
}

/** Cloth corners nearer than this to one angle lie on one another. @source our choice: 3 degrees */
const flat: Radians = (3 * Math.PI) / 180;
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
 * what stays raw in the end is the opening, no more; (6) a loose piece goes on while its panel is by
 * itself, or, across a seam, while its panels hang together and the work still opens out.
 */
export function replaySewing(given: Replayed): SewingProof {
  const cloth = layOut(given.panels);
  const faults = [
    ...given.passes.flatMap((pass, i) => [
      ...sewOn(i, cloth, given),
      ...replayPass(pass, cloth, given),
    ]),
    ...sewOn(given.passes.length, cloth, given),
    ...checkEnd(cloth, given),
  ];
  return { ok: faults.length === 0, faults };
}

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

/** What is sewn on once so many passes are done. */
function sewOn(done: number, cloth: Cloth, { attached = [] }: Replayed): string[] {
  return attached
    .filter(({ after }) => after === done)
    .flatMap(({ id, panels }): string[] => {
      const [first, ...others] = panels;
      if (first === undefined) return [`${id} lies on no panel`];
      const piece = pieceOf(cloth, first);
      if (others.some((panel) => !piece.has(panel)))
        return [`${id} is sewn across panels that do not hang together`];
      if (others.length === 0 && piece.size > 1)
        return [`${id} is sewn on when its panel no longer lies by itself`];
      const isOpen = rawLoops(cloth).some(([edge]) => piece.has(edge!.panel));
      return isOpen ? [] : [`${id} is sewn on when the work is closed up`];
    });
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
