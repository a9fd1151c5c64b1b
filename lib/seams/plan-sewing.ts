import type { Count, Mm } from "../plane/types.ts";
import type { Panel } from "../panels/types.ts";
import { listBanks, type Banks } from "./cloth-banks.ts";
import { closingChains } from "./closing-chains.ts";
import type { SeamRun } from "./find-seams.ts";
import { listStretches, rawLoops, type Stretch, type Unordered } from "./list-stretches.ts";
import { effort, priceStretch, spreadsFlat, standsUp } from "./price-stretch.ts";

/** A stretch in its place in the order. */
export interface Planned {
  readonly stretch: Stretch;
  /** Panels that hang together once it is sewn, by number. */
  readonly panels: readonly Count[];
  /** What it was sewn to, as places in the list, and from which the work had grown. */
  readonly needs: readonly Count[];
}

export interface SewingOrder {
  readonly passes: readonly Planned[];
  readonly banks: Banks;
}

interface State {
  readonly sewn: Uint8Array;
  readonly groups: readonly Count[];
  /** Groups that have been sewn round a corner. */
  readonly standing: ReadonlySet<Count>;
  readonly price: number;
  /** What the seams still to sew will cost at least, for all that hangs on them now. */
  readonly ahead: number;
  readonly done: readonly Stretch[];
}

/**
 * The order of sewing that costs least effort: a beam search over what can be sewn next, by the number
 * of seams sewn. Only stretches whose raw edges run on together are sewn in one go; a closing is put in
 * only while the cloth beside it still spreads flat; nothing is closed up with seams still to sew.
 *
 * Deterministic: ties go to the stretch that begins with the earlier seam.
 */
export function planSewing(
  seams: readonly Unordered[],
  panels: readonly Panel[],
  runs: readonly SeamRun[],
): SewingOrder {
  const banks = listBanks(panels, runs);
  const chains = closingChains(seams, banks);
  const toSew = seams.filter(({ state }) => state !== "open").length;
  const width = beamWidth(toSew);
  const longest = Math.max(1, ...banks.length);
  const levels: Map<string, State>[] = Array.from({ length: toSew + 1 }, () => new Map());
  const start: State = {
    sewn: new Uint8Array(seams.length),
    groups: panels.map((_, i) => i),
    standing: new Set(),
    price: 0,
    ahead: 0,
    done: [],
  };
  levels[0]!.set(keyOf(start.sewn), start);
  for (let level = 0; level < toSew; level++) {
    const kept = [...levels[level]!.values()]
      .sort((a, b) => a.price + a.ahead - (b.price + b.ahead))
      .slice(0, width);
    for (const state of kept) {
      for (const next of nextStates(state, seams, { banks, chains, longest, toSew })) {
        const reached = levels[level + next.done.at(-1)!.banks.length]!;
        const key = keyOf(next.sewn);
        const known = reached.get(key);
        if (known === undefined || next.price < known.price - 1e-9) reached.set(key, next);
      }
    }
  }
  const [best] = [...levels[toSew]!.values()].sort((a, b) => a.price - b.price);
  return { passes: nest(best!.done, banks, panels.length), banks };
}

/** Wide for small covers, narrow for large ones. @source our choice: bounds the work */
const beamWidth = (toSew: Count): Count => (toSew <= 16 ? 40 : toSew <= 40 ? 12 : 4);

const keyOf = (sewn: Uint8Array): string => sewn.join("");

function nextStates(
  state: State,
  seams: readonly Unordered[],
  {
    banks,
    chains,
    longest,
    toSew,
  }: { banks: Banks; chains: readonly Count[][]; longest: Mm; toSew: Count },
): State[] {
  const stretches = listStretches(banks, seams, state.sewn);
  const groupOf = (bank: number): Count => state.groups[banks.panelOf[bank]!]!;
  return stretches.map((stretch): State => {
    const [a, b] = [groupOf(stretch.banks[0]!), groupOf(stretch.banks[0]! ^ 1)];
    const count = (group: Count): Count => state.groups.filter((one) => one === group).length;
    const sewn = Uint8Array.from(state.sewn);
    stretch.banks.forEach((bank) => (sewn[bank >> 1] = 1));
    const groups = state.groups.map((group) => (group === b ? a : group));
    const isClosing = seams[stretch.banks[0]! >> 1]!.state === "closing";
    const isPart = stretch.banks.length < chains[stretch.banks[0]! >> 1]!.length;
    const isLast = sewn.reduce((sum, one) => sum + one, 0) === toSew;
    const isHard =
      (isClosing && !spreadsFlat(stretch, banks, { sewn: state.sewn, groupOf })) ||
      (!isLast && isShutUp(groups, a, { banks, sewn }));
    const stood = [a, b].map((group) => state.standing.has(group));
    const hanging = {
      panels: [count(a), count(b)] as const,
      joins: a !== b,
      standing: (Number(stood[0]) + Number(stood[1])) as 0 | 1 | 2,
      isLast,
      longest,
    };
    const stands = stood.some(Boolean) || standsUp(stretch, seams);
    const standing = stands ? new Set([...state.standing, a]) : state.standing;
    const price =
      state.price +
      priceStretch(stretch, seams, banks, hanging) +
      (isHard ? effort.outOfReach : 0) +
      (isPart ? effort.partClosing : 0);
    const ahead = priceAhead(seams, banks, { sewn, groups, longest });
    return { sewn, groups, standing, price, ahead, done: [...state.done, stretch] };
  });
}

/** Work only grows: what hangs on a seam now will hang on it when it is sewn. */
function priceAhead(
  seams: readonly Unordered[],
  banks: Banks,
  { sewn, groups, longest }: { sewn: Uint8Array; groups: readonly Count[]; longest: Mm },
): number {
  const sizes = new Map<Count, Count>();
  for (const group of groups) sizes.set(group, (sizes.get(group) ?? 0) + 1);
  return seams.reduce((sum, seam, i) => {
    if (sewn[i] === 1 || seam.state === "open") return sum;
    const [a, b] = [2 * i, 2 * i + 1].map((bank) => groups[banks.panelOf[bank]!]!) as [
      Count,
      Count,
    ];
    const panels = a === b ? sizes.get(a)! : sizes.get(a)! + sizes.get(b)!;
    const share = banks.length[2 * i]! / longest;
    const closing = seam.state === "closing" ? effort.closingBulk * panels : 0;
    return sum + closing + effort.bulk * (panels - 1) * share;
  }, 0);
}

/** Has a group no raw edge left, though other panels are still to be sewn on? */
const isShutUp = (
  groups: readonly Count[],
  group: Count,
  { banks, sewn }: { banks: Banks; sewn: Uint8Array },
): boolean => !rawLoops(banks, sewn).some((loop) => groups[banks.panelOf[loop[0]!]!] === group);

/**
 * The same work with each sub-assembly made in one go: a stretch comes straight after those it builds
 * on, the larger of two sub-assemblies first.
 */
function nest(done: readonly Stretch[], banks: Banks, count: Count): Planned[] {
  const made: { needs: Count[]; panels: Count[]; size: Count }[] = [];
  const latest = new Map<Count, Count>();
  let groups = Array.from({ length: count }, (_, i) => i);
  done.forEach((stretch, i) => {
    const sides = [stretch.banks[0]!, stretch.banks[0]! ^ 1].map(
      (bank) => groups[banks.panelOf[bank]!]!,
    );
    const [a, b] = [sides[0]!, sides[1]!];
    const needs = [...new Set(sides)].flatMap((group) => latest.get(group) ?? []);
    groups = groups.map((group) => (group === b ? a : group));
    latest.set(a, i);
    const panels = groups.flatMap((group, panel) => (group === a ? [panel] : []));
    made.push({ needs, panels, size: 1 + needs.reduce((sum, one) => sum + made[one]!.size, 0) });
  });
  const order: Count[] = [];
  const visit = (i: Count): void => {
    made[i]!.needs.toSorted((a, b) => made[b]!.size - made[a]!.size || a - b).forEach(visit);
    order.push(i);
  };
  // The last stretch on each group stands for all of it: more than one only if the form falls apart.
  [...new Set(groups)].flatMap((group) => latest.get(group) ?? []).forEach(visit);
  const placeOf = new Map(order.map((i, place) => [i, place]));
  return order.map((i) => ({
    stretch: done[i]!,
    panels: made[i]!.panels,
    needs: made[i]!.needs.map((one) => placeOf.get(one)!),
  }));
}
