import { evenRuns } from "../packing/even-runs.ts";
import { type AlikeStock, groupAlike } from "../packing/group-alike.ts";
import { findFreeCut } from "../packing/find-free-cut.ts";
import type { Cut, CutPlace, CutPlan, UsedStock } from "../packing/types.ts";
import type { FigureSource } from "./figure-source.ts";
import type { Format } from "../units/make-format.ts";
import { listNumbers } from "../units/list-numbers.ts";
import { cutAnchor } from "./anchors.ts";
import { openHyphens, titleOf } from "./open-hyphens.ts";
import type { CutSheet } from "./pages.ts";
import { roomsFor, sheetFigure } from "./sheet-figure.ts";
import { figures, makeTable, tableOrNull, words } from "./table.ts";

/** One sheet for each slab, sheet or board that is cut, those cut alike on one, with its cuts in order. */
export const buildCutSheets = (
  plan: CutPlan,
  drawings: FigureSource,
  { format, label, isDrawn = false, isAlone = false }: SheetWords & SheetPlace,
): readonly CutSheet[] => {
  const all = groupAlike(plan);
  const isSole = isAlone && all.length === 1;
  return all.map((alike) =>
    buildCutSheet(plan, alike, { drawings, format, label, isDrawn, isSole }),
  );
};

interface SheetPlace {
  /** Whether one drawing above shows them all. */
  readonly isDrawn?: boolean;
  /** Whether nothing else stands on their page. */
  readonly isAlone?: boolean;
}

interface SheetWords {
  readonly format: Format;
  readonly label: string;
}

function buildCutSheet(
  plan: CutPlan,
  alike: AlikeStock,
  context: SheetWords & {
    readonly drawings: FigureSource;
    readonly isDrawn: boolean;
    readonly isSole: boolean;
  },
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
      : sheetFigure(
          `${family}/${plan.stock}/${number}`,
          drawings,
          roomsFor(used, { isSole: context.isSole }),
        ),
    cuts: isLinear
      ? tableOrNull(`${id}-cuts`, "Cuts straight across, from the left end", {
          columns: [words("Cut"), words("At")],
          rows: crossRows(used, format),
        })
      : tableOrNull(`${id}-cuts`, "Cuts, in this order", cutColumns(used, format)),
    parts: makeTable(`${id}-parts`, "Parts that come out", {
      columns: [
        words("Part"),
        ...(isLinear
          ? [words("Length"), words("Starts at")]
          : [words("Size as it lies"), words("Lowest corner at")]),
      ],
      rows: partRows(used, { isLinear, isOne }, format),
    }),
    offcuts: tableOrNull(`${id}-offcuts`, isOne ? "Offcuts" : "Offcuts of each", {
      columns: [
        ...(isLinear
          ? [words("Length"), words("Starts at")]
          : [words("Size"), words("Lowest corner at")]),
        words("Could still become"),
      ],
      rows: used.offcuts.map(({ size, at, use }) => [
        format.sizes(size),
        format.sizes(at),
        use ?? "–",
      ]),
    }),
  };
}

/** Where every cut goes round a drawn line there is nothing to measure. */
function cutColumns(used: UsedStock, format: Format): Parameters<typeof makeTable>[2] {
  const rows = cutRows(used, format);
  return used.cuts.every(({ kind }) => kind === "free")
    ? {
        columns: [figures("Cut"), words("Along the drawn line")],
        rows: rows.map(([number = "", how = ""]) => [number, how]),
      }
    : { columns: [figures("Cut"), words("How"), figures("At"), words("From")], rows };
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
    const within =
      place.inHoleOf === undefined ? "" : `, in a hole of ${openHyphens(place.inHoleOf)}`;
    return [
      `${run.length > 1 ? `${run.length} of ` : ""}${name}${within}`,
      format.sizes(place.size),
      next === undefined
        ? format.sizes(place.at)
        : `${format.sizes(place.at)}, then every ${format.length(next.at[0]! - place.at[0]!)}`,
    ];
  });
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
function freeWords(cut: Cut, used: UsedStock): string {
  const found = findFreeCut(cut, used);
  if (found === null) return "cut round the outline";
  const part = openHyphens(found.part);
  return found.isHole ? `cut out a hole in ${part}` : `cut round ${part}`;
}

function edgeWords({ axis, kind }: Cut): string {
  if (kind === "free") return "the drawn line";
  return ["the left end", "the near edge", "the underside"][axis] ?? "the lowest corner";
}
