import type { Figure } from "../drawing/types.ts";
import { evenRuns } from "../packing/even-runs.ts";
import { type AlikeStock, groupAlike } from "../packing/group-alike.ts";
import { boundsOf } from "../packing/list-cuts.ts";
import type { Cut, CutPlace, CutPlan, UsedStock } from "../packing/types.ts";
import type { Polygon } from "../plane/types.ts";
import { drawClear } from "./figure-source.ts";
import type { FigureRoom, FigureSource } from "./figure-source.ts";
import type { Format } from "../units/make-format.ts";
import { cutAnchor } from "./anchors.ts";
import { openHyphens, titleOf } from "./open-hyphens.ts";
import type { CutSheet } from "./pages.ts";
import { figures, makeTable, tableOrNull, words } from "./table.ts";

/** Room that leaves the cuts and the parts on the same page where they can be. */
const sheetRooms: readonly FigureRoom[] = [
  { width: 165, height: 50 },
  { width: 165, height: 60 },
  { width: 165, height: 80 },
  { width: 165, height: 100 },
];
const wideRooms: readonly FigureRoom[] = [
  { width: 165, height: 110 },
  { width: 165, height: 140 },
];

/** One sheet for each slab, sheet or board that is cut, those cut alike on one, with its cuts in order. */
export const buildCutSheets = (
  plan: CutPlan,
  drawings: FigureSource,
  { format, label, isDrawn = false }: SheetWords & { readonly isDrawn?: boolean },
): readonly CutSheet[] =>
  groupAlike(plan).map((alike) => buildCutSheet(plan, alike, { drawings, format, label, isDrawn }));

interface SheetWords {
  readonly format: Format;
  readonly label: string;
}

function buildCutSheet(
  plan: CutPlan,
  alike: AlikeStock,
  context: SheetWords & { readonly drawings: FigureSource; readonly isDrawn: boolean },
): CutSheet {
  const { drawings, format, label, isDrawn } = context;
  const [used] = alike;
  const numbers = alike.map((each) => plan.used.indexOf(each) + 1);
  const number = numbers[0]!;
  const id = cutAnchor(plan.kind, plan.stock, number);
  const family = plan.kind === "length" ? "board" : plan.kind;
  const own = plan.sizes?.find(({ size }) => `${size}` === `${used.size}`)?.label ?? null;
  const isOne = alike.length === 1;
  const isLinear = plan.kind === "board" || plan.kind === "length";
  return {
    id,
    title:
      `${titleOf(own ?? label)}, ${plan.kind}${isOne ? "" : "s"} ${listNumbers(numbers)} ` +
      `of ${plan.used.length}${isOne ? "" : ", each alike"}: ${format.sizes(used.size)}`,
    figure: isDrawn
      ? null
      : sheetFigure(`${family}/${plan.stock}/${number}`, drawings, used.cuts.length),
    cuts: isLinear
      ? tableOrNull(`${id}-cuts`, "Cuts straight across, from the left end", {
          columns: [words("Cut"), words("At")],
          rows: crossRows(used, format),
        })
      : tableOrNull(`${id}-cuts`, "Cuts, in this order", {
          columns: [figures("Cut"), words("How"), figures("At"), words("From")],
          rows: cutRows(used, format),
        }),
    parts: makeTable(`${id}-parts`, "Parts that come out", {
      columns: [words("Part"), words("Size as it lies"), words("Lowest corner at")],
      rows: partRows(used, { isLinear, isOne }, format),
    }),
    offcuts: tableOrNull(`${id}-offcuts`, isOne ? "Offcuts" : "Offcuts of each", {
      columns: [words("Size"), words("Lowest corner at"), words("Could still become")],
      rows: used.offcuts.map(({ size, at, use }) => [
        format.sizes(size),
        format.sizes(at),
        use ?? "–",
      ]),
    }),
  };
}

/** Free cuts of one kind that follow one another share a row. */
function cutRows(used: UsedStock, format: Format): string[][] {
  const runs = evenRuns(used.cuts, {
    kind: (cut) => (cut.kind === "free" ? cutWords(cut, used) : `straight ${cut.order}`),
    at: () => 0,
    fewest: 2,
  });
  return runs.map((run) => {
    const [cut] = run;
    return [
      listNumbers(run.map(({ order }) => order)),
      cutWords(cut, used),
      cut.kind === "free" ? "–" : format.length(cut.at),
      edgeWords(cut),
    ];
  });
}

/** So many even cuts along a board or a roll, or parts, share a row. @source our choice */
const fewestAlike = 3;

function crossRows({ cuts }: UsedStock, format: Format): string[][] {
  const runs = evenRuns(cuts, {
    kind: ({ kind }) => kind,
    at: ({ at }) => at,
    fewest: fewestAlike,
  });
  return runs.map(([cut, next, ...more]) => {
    const at = format.length(cut.at);
    if (next === undefined) return [`${cut.order}`, at];
    const last = more.at(-1) ?? next;
    return [
      `${cut.order} to ${last.order}`,
      `${at}, then every ${format.length(next.at - cut.at)}`,
    ];
  });
}

function partRows(
  used: UsedStock,
  { isLinear, isOne }: { readonly isLinear: boolean; readonly isOne: boolean },
  format: Format,
): string[][] {
  const runs = isLinear
    ? evenRuns(used.places, {
        kind: ({ part, size }) => `${part} ${size}`,
        at: ({ at: [along = 0] }) => along,
        fewest: fewestAlike,
      })
    : used.places.map((place) => [place] as const);
  return runs.map((run) => {
    const [place, next] = run;
    const name = isOne && run.length === 1 ? partName(place) : kindName(place);
    return [
      run.length > 1 ? `${run.length} of ${name}` : name,
      format.sizes(place.size),
      next === undefined
        ? format.sizes(place.at)
        : `${format.sizes(place.at)}, then every ${format.length(next.at[0]! - place.at[0]!)}`,
    ];
  });
}

/** "2", "4 and 5", "7 to 13", "1, 3 and 6". */
export function listNumbers(numbers: readonly number[]): string {
  const [first = 0, ...rest] = numbers;
  const last = rest.at(-1) ?? first;
  if (rest.length === 0) return `${first}`;
  if (rest.length > 1 && last - first === rest.length) return `${first} to ${last}`;
  return `${numbers.slice(0, -1).join(", ")} and ${last}`;
}

/** More cuts than this want more room, so that their numbers do not hide the parts. @source our choice */
const fewCuts = 8;

/** In the least room in which its labels keep clear, else in all there is. */
function sheetFigure(id: string, drawings: FigureSource, cuts: number): Figure | null {
  if (!drawings.ids.includes(id)) return null;
  const rooms = cuts > fewCuts ? wideRooms : sheetRooms;
  return drawClear(drawings, id, rooms) ?? drawings.draw(id, rooms.at(-1));
}

export function partName({ part, copy, layer, twin, hasSpare }: CutPlace): string {
  const [which, of] = layer;
  const layers = of > 1 ? `, layer ${which} of ${of}` : "";
  if (twin === part) {
    const copies =
      hasSpare === true
        ? `copy ${2 * copy - 1} and a spare`
        : `copies ${2 * copy - 1} and ${2 * copy}`;
    return `${ownerFirst(part)} (${copies}), cut aslant${layers}`;
  }
  const aslant =
    twin === undefined ? "" : ` and ${openHyphens(twin.split("/").at(-1)!)}, cut aslant`;
  return `${ownerFirst(part)}${aslant}${copy > 1 ? ` (copy ${copy})` : ""}${layers}`;
}

/** "pouf: drum" for the block of a piece; a loose part has only its own name. */
const ownerFirst = (part: string): string => openHyphens(part).replace("/", ": ");

/** What comes out of each of several pieces that are cut alike, whichever copy or layer it becomes. */
function kindName(place: CutPlace): string {
  const { part, twin } = place;
  const [, of] = place.layer;
  const whole =
    twin === part
      ? `two of ${ownerFirst(part)}, cut aslant`
      : partName({ ...place, copy: 1, layer: [1, 1] });
  return of > 1 ? `${whole}, one of ${of} layers` : whole;
}

function cutWords(cut: Cut, used: UsedStock): string {
  switch (cut.kind) {
    case "rip":
      return "rip along the length";
    case "cross":
      return "cut straight across";
    case "slice":
      return "slice to thickness";
    case "free":
      return freeWords(cut, used);
  }
}

/** Which outline or hole a free cut goes round. */
function freeWords({ of }: Cut, { places }: UsedStock): string {
  const isHere = (ring: Polygon): boolean => {
    const box = boundsOf(ring);
    return [...box.at, ...box.size].every(
      (value, i) => Math.abs(value - [...of.at, ...of.size][i]!) < 0.5,
    );
  };
  const holed = places.find(({ holes = [] }) => holes.some(isHere));
  if (holed !== undefined) return `cut out a hole in ${openHyphens(holed.part)}`;
  const outlined = places.find(({ outline }) => outline !== null && isHere(outline));
  return outlined === undefined
    ? "cut round the outline"
    : `cut round ${openHyphens(outlined.part)}`;
}

function edgeWords({ axis, kind }: Cut): string {
  if (kind === "free") return "the drawn line";
  return ["the left end", "the near edge", "the underside"][axis] ?? "the lowest corner";
}
