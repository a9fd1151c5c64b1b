import type { Count } from "../plane/types.ts";
import type { PanelRule } from "../project/types.ts";
import type { Candidate, Grower } from "./grow-candidates.ts";
import { weighCandidate, weightsOf, worstAlone, type ClothRules } from "./weigh-candidate.ts";

/** Up to this many faces every grouping is tried; beyond, panels are joined and parted step by step. */
export const exhaustiveUpTo: Count = 13;
/** Trees kept for each set of faces. */
const beam: Count = 2;
/** Sets of one size that are grown further: those that save most on their faces cut singly. */
const widestLayer: Count = 150;

/**
 * Share the faces out into panels so that the costs add up to least.
 *
 * For small solids every connected set of faces is unfolded along its best trees of folds, and the
 * cheapest way to cover all faces with disjoint sets is found exactly.
 */
export function searchWays(
  faces: readonly string[],
  grower: Grower,
  rule: PanelRule,
  cloth: ClothRules,
): readonly Candidate[] {
  const cost = costOf(grower, rule, cloth);
  const slack = ({ measures }: Candidate) => (measures.isLopsided ? weightsOf[rule].lopsided : 0);
  return faces.length <= exhaustiveUpTo
    ? coverExactly(faces, growSets(faces, grower, cost, slack), cost)
    : joinStepwise(faces, grower, cost);
}

export type Cost = (candidate: Candidate) => number;

/** What a candidate costs by one rule; each is weighed once. */
export function costOf(grower: Grower, rule: PanelRule, cloth: ClothRules): Cost {
  const known = new Map<Candidate, number>();
  return (candidate) => {
    const old = known.get(candidate);
    if (old !== undefined) return old;
    const singles = candidate.faces.map((face) => grower.single(face).measures);
    const price = weighCandidate(candidate.measures, rule, cloth, worstAlone(singles, cloth));
    known.set(candidate, price);
    return price;
  };
}

/** The cheapest trees of every connected set of faces that is worth having. */
function growSets(
  faces: readonly string[],
  grower: Grower,
  cost: Cost,
  slack: Cost,
): Map<number, Candidate[]> {
  const bit = new Map(faces.map((face, i) => [face, 1 << i]));
  const alone = new Map(faces.map((face) => [face, cost(grower.single(face))]));
  const maskOf = (candidate: Candidate) =>
    candidate.faces.reduce((mask, face) => mask | bit.get(face)!, 0);
  const kept = new Map<number, Candidate[]>();
  let layer = new Map<number, Candidate[]>(
    faces.map((face) => [bit.get(face)!, [grower.single(face)]]),
  );
  while (layer.size > 0) {
    layer.forEach((candidates, mask) => kept.set(mask, candidates));
    const next = new Map<number, Map<string, Candidate>>();
    for (const candidate of [...layer.values()].flat()) {
      for (const edge of grower.openEdges(candidate)) {
        const made = grower.extend(candidate, edge);
        // Worth growing only while it is cheaper than its faces cut singly; what is lopsided now may
        // yet be evened out.
        if (made === null || cost(made) - slack(made) > sumOf(made.faces, alone)) continue;
        const mask = maskOf(made);
        const same = next.get(mask) ?? new Map<string, Candidate>();
        next.set(mask, same.set(made.folded.join(" "), made));
      }
    }
    const saved = (set: readonly Candidate[]) => cost(set[0]!) - sumOf(set[0]!.faces, alone);
    layer = new Map(
      [...next]
        .map(([mask, same]) => [mask, cheapest([...same.values()], cost)] as const)
        .sort(([m, a], [n, b]) => saved(a) - saved(b) || m - n)
        .slice(0, widestLayer),
    );
  }
  return kept;
}

const sumOf = (faces: readonly string[], alone: ReadonlyMap<string, number>): number =>
  faces.reduce((sum, face) => sum + alone.get(face)!, 0);

const cheapest = (candidates: readonly Candidate[], cost: Cost): Candidate[] =>
  [...candidates]
    .sort((a, b) => cost(a) - cost(b) || (a.folded.join(" ") < b.folded.join(" ") ? -1 : 1))
    .slice(0, beam);

/** Cheapest disjoint sets that cover all faces, by the lowest face not yet covered. */
function coverExactly(
  faces: readonly string[],
  sets: ReadonlyMap<number, Candidate[]>,
  cost: Cost,
): Candidate[] {
  const whole = (1 << faces.length) - 1;
  const byLowest = faces.map((_, i) =>
    [...sets]
      .filter(([mask]) => (mask & -mask) === 1 << i)
      .map(([mask, [best]]) => ({ mask, best: best!, price: cost(best!) })),
  );
  const least = new Map<number, { price: number; pick: { mask: number; best: Candidate } | null }>([
    [whole, { price: 0, pick: null }],
  ]);
  const solve = (covered: number): number => {
    const known = least.get(covered);
    if (known) return known.price;
    const lowest = 31 - Math.clz32(~covered & -~covered);
    let found = { price: Infinity, pick: null as { mask: number; best: Candidate } | null };
    for (const { mask, best, price } of byLowest[lowest]!) {
      if ((mask & covered) !== 0) continue;
      const total = price + solve(covered | mask);
      if (total < found.price - 1e-6) found = { price: total, pick: { mask, best } };
    }
    least.set(covered, found);
    return found.price;
  };
  solve(0);
  const chosen: Candidate[] = [];
  for (let covered = 0; covered !== whole;) {
    const { pick } = least.get(covered)!;
    chosen.push(pick!.best);
    covered |= pick!.mask;
  }
  return chosen;
}

/** How often a large solid's panels are taken apart again, one at a time, and joined anew. */
const retries: Count = 2;

/** Join the two panels whose joining saves most, until none saves; then try each fold undone. */
function joinStepwise(faces: readonly string[], grower: Grower, cost: Cost): Candidate[] {
  const join = rememberJoins(grower);
  let best = greedy(faces.map(grower.single), join, { grower, cost });
  for (let round = 0; round < retries; round++) {
    const joined = best.filter((candidate) => candidate.faces.length > 1);
    const worst = joined.map((candidate) =>
      greedy(
        [...best.filter((other) => other !== candidate), ...candidate.faces.map(grower.single)],
        join,
        { grower, cost },
      ),
    );
    const better = worst.sort((a, b) => total(a, cost) - total(b, cost))[0];
    if (!better || total(better, cost) >= total(best, cost) - 1e-6) break;
    best = better;
  }
  return best;
}

const total = (candidates: readonly Candidate[], cost: Cost): number =>
  candidates.reduce((sum, candidate) => sum + cost(candidate), 0);

function greedy(
  start: readonly Candidate[],
  join: Join,
  { grower, cost }: { readonly grower: Grower; readonly cost: Cost },
): Candidate[] {
  let panels = [...start];
  for (;;) {
    const owner = new Map(panels.flatMap((panel) => panel.faces.map((face) => [face, panel])));
    const joins = panels.flatMap((panel) =>
      grower.openEdges(panel).flatMap((edge) => {
        const other = owner.get(grower.beyond(panel, edge))!;
        const joined = join(panel, other, edge);
        return joined === null
          ? []
          : [{ panel, other, joined, saves: cost(panel) + cost(other) - cost(joined) }];
      }),
    );
    const best = joins.sort(
      (a, b) => b.saves - a.saves || (a.joined.folded.join() < b.joined.folded.join() ? -1 : 1),
    )[0];
    if (!best || best.saves <= 1e-6) return panels;
    panels = [
      ...panels.filter((panel) => panel !== best.panel && panel !== best.other),
      best.joined,
    ];
  }
}

type Join = (panel: Candidate, other: Candidate, edge: string) => Candidate | null;

/** Two panels meet again in every round until one of them is joined: each join is made once. */
function rememberJoins(grower: Grower): Join {
  const known = new Map<Candidate, Map<Candidate, Map<string, Candidate | null>>>();
  return (panel, other, edge) => {
    const others = known.get(panel) ?? new Map<Candidate, Map<string, Candidate | null>>();
    const edges = others.get(other) ?? new Map<string, Candidate | null>();
    known.set(panel, others.set(other, edges));
    const old = edges.get(edge);
    if (old !== undefined) return old;
    const made = joinAcross(panel, other, edge, grower);
    edges.set(edge, made);
    return made;
  };
}

/** Add all the faces of the panel across an edge, fold by fold. */
function joinAcross(
  panel: Candidate,
  other: Candidate,
  edge: string,
  grower: Grower,
): Candidate | null {
  let joined = grower.extend(panel, edge);
  const waiting = new Set(other.folded);
  while (joined !== null && waiting.size > 0) {
    const open = grower.openEdges(joined).find((one) => waiting.has(one));
    if (open === undefined) return null;
    waiting.delete(open);
    joined = grower.extend(joined, open);
  }
  return joined;
}
