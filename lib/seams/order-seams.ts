import type { Mm } from "../plane/types.ts";
import type { Panel } from "../panels/types.ts";
import type { Banks } from "./cloth-banks.ts";
import { runLength, type SeamRun } from "./find-seams.ts";
import type { Stretch, Unordered } from "./list-stretches.ts";
import { nameAssembly } from "./name-assembly.ts";
import { planSewing, type Planned } from "./plan-sewing.ts";
import { pivotTurn } from "./price-stretch.ts";
import type { Seam, SeamCorner, SewingPass } from "./types.ts";

/**
 * The seams in the order they are sewn, and the passes of the needle that sew them. What is left open
 * for the foam comes at the end and has no pass.
 *
 * @param boxing panels that are strips of walls, for the names of what is sewn together
 */
export function orderSeams(
  seams: readonly Unordered[],
  panels: readonly Panel[],
  runs: readonly SeamRun[],
  boxing: ReadonlySet<string> = new Set(),
): { readonly seams: readonly Seam[]; readonly passes: readonly SewingPass[] } {
  const { passes: planned, banks } = planSewing(seams, panels, runs);
  const names = planned.map((one) =>
    nameAssembly(
      one.panels.map((i) => panels[i]!),
      panels,
      boxing,
    ),
  );
  const passes = planned.map((one, i): SewingPass => {
    const members = one.stretch.banks.map((bank) => seams[bank >> 1]!);
    const before = (bank: number): string => {
      const panel = banks.panelOf[bank]!;
      const need = one.needs.find((place) => planned[place]!.panels.includes(panel));
      return need === undefined ? nameAssembly([panels[panel]!], panels, boxing) : names[need]!;
    };
    const [bank] = one.stretch.banks as [number];
    return {
      number: i + 1,
      seams: members.map(({ id }) => id),
      edges: edgesOf(one.stretch, runs),
      state: members[0]!.state === "closing" ? "closing" : "sewn",
      isRing: one.stretch.isRing,
      corners: listCorners(one, seams, { panels, banks, runs }),
      length: one.stretch.banks.reduce((sum, each) => sum + banks.length[each]!, 0),
      joins: [before(bank), before(bank ^ 1)],
      makes: names[i]!,
      panels: one.panels.map((panel) => panels[panel]!.id),
    };
  });
  const order = new Map(passes.flatMap((pass) => pass.seams.map((id) => [id, pass] as const)));
  const sequence = passes.flatMap((pass) => pass.seams);
  const open = seams.filter(({ id }) => !order.has(id)).map(({ id }) => id);
  return {
    passes,
    seams: [...sequence, ...open].map((id, i): Seam => ({
      ...seams.find((seam) => seam.id === id)!,
      order: i + 1,
      makes: order.get(id)?.makes ?? "the whole cover",
    })),
  };
}

/** Edges of the solid from the start of a stretch to its end. */
const edgesOf = ({ banks }: Stretch, runs: readonly SeamRun[]): string[] =>
  banks.flatMap((bank) => {
    const edges = runs[bank >> 1]!.first.map(({ edge }) => edge);
    return bank % 2 === 0 ? edges : edges.reverse();
  });

/** Corners within its seams and where one runs into the next, from the start of the stretch. */
function listCorners(
  { stretch }: Planned,
  seams: readonly Unordered[],
  {
    panels,
    banks,
    runs,
  }: {
    readonly panels: readonly Panel[];
    readonly banks: Banks;
    readonly runs: readonly SeamRun[];
  },
): SeamCorner[] {
  let start: Mm = 0;
  return stretch.banks.flatMap((bank, i) => {
    const { corners } = seams[bank >> 1]!;
    const own = runLength(runs[bank >> 1]!.first);
    const along = (at: Mm): Mm => start + (bank % 2 === 0 ? at : own - at);
    const within = corners.map((one) => ({ ...one, along: along(one.along) }));
    start += banks.length[bank]!;
    const joint = stretch.joints[i];
    const next = stretch.banks[(i + 1) % stretch.banks.length]!;
    // A single ring has its corners already, the closing one too.
    const isCounted = stretch.banks.length === 1 && stretch.isRing;
    const met =
      joint === undefined || isCounted
        ? []
        : cornerAtJoint(joint, [bank, next], { start, banks, panels });
    const sorted = within.toSorted((a, b) => a.along - b.along);
    return [...sorted, ...met];
  });
}

function cornerAtJoint(
  [own, other]: readonly [number, number],
  [bank, next]: readonly [number, number],
  {
    start,
    banks,
    panels,
  }: { readonly start: Mm; readonly banks: Banks; readonly panels: readonly Panel[] },
): SeamCorner[] {
  const [turn, across] = [Math.PI - own, Math.PI - other];
  if (Math.max(Math.abs(turn), Math.abs(across)) < pivotTurn) return [];
  const isSame = Math.abs(own - other) < pivotTurn && turn > 0;
  // The side with more cloth in the corner has to open: at a join it does so by itself.
  const [tight, follows] = own > other ? [bank, next] : [next ^ 1, bank ^ 1];
  const isJoin = banks.after[tight] !== follows;
  const clip = isSame || isJoin ? null : panels[banks.panelOf[tight]!]!.id;
  return [{ along: start, clip, turn: Math.abs(turn) > Math.abs(across) ? turn : across }];
}
