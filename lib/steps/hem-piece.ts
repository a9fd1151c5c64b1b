import type { Work } from "../estimate/types.ts";
import type { Mm } from "../plane/types.ts";
import { facingSide, pieceSides, type PieceSide } from "../project/facing-side.ts";
import type { PieceSpec } from "../project/types.ts";
import { foldedUnder, isDeepHem } from "../seams/hem-stitch.ts";
import { listWords } from "../units/list-words.ts";
import { makeStep } from "./make-step.ts";
import { partLabel } from "./part-label.ts";
import type { Step } from "./types.ts";

/** What hemming needs to know; `allowance` stands in where the piece states none of its own. */
export interface Hem {
  readonly group: string;
  readonly work: Work;
  readonly allowance: Mm;
}

/** Turn in the edges of a loose piece and sew round it. */
export function hemPiece(id: string, { group, work, allowance }: Hem): Step {
  const label = partLabel(id, work.project);
  const spec = work.project.pieces.find((one) => one.id === id);
  const turned = spec === undefined || spec.seamAllowance === 0 ? allowance : spec.seamAllowance;
  const hems = spec?.hem === undefined ? [] : groupHems(spec);
  const deep = hems.filter(({ by }) => isDeepHem(by));
  return makeStep({
    id: `make-${id}`,
    group,
    title: `Make up the ${label}`,
    actions: [
      ...(hems.length === 0
        ? [
            `Turn in ${work.format.length(turned)} along every edge of the ${label}, wrong sides together.`,
          ]
        : turnHems(hems, label, work)),
      ...(deep.length === 0
        ? []
        : [
            `Fold ${work.format.length(foldedUnder)} of the raw edge under along the ${edgesOf(deep)}.`,
          ]),
      "Press the folds with the iron.",
      ...sewHems(hems, deep),
    ],
    uses: [label, "iron", "sewing machine", "thread"],
    makes: [`finished ${label}`],
    check:
      spec === undefined
        ? null
        : `The finished piece should measure ${work.format.sizes(spec.size)}.`,
    remedy: "Unpick one edge and turn it in again.",
    figure: `hem/${id}`,
  });
}

interface SideHem {
  readonly by: Mm;
  readonly sides: readonly PieceSide[];
}

/** Sides of a piece that have straight edges, by what is turned in there, the deepest first. */
function groupHems({ outline, hem, seamAllowance }: PieceSpec): readonly SideHem[] {
  const there = new Set(outline.outer.map(facingSide));
  const sides = pieceSides.filter((side) => there.has(side));
  const turned = (side: PieceSide): Mm => hem?.[side] ?? seamAllowance;
  return [...new Set(sides.map(turned))]
    .toSorted((a, b) => b - a)
    .map((by) => ({ by, sides: sides.filter((side) => turned(side) === by) }));
}

/** The narrow ones first: the deep ones lie over their ends. */
function turnHems(hems: readonly SideHem[], label: string, { format }: Work): string[] {
  return hems
    .filter(({ by }) => by > 0)
    .toReversed()
    .map(
      (one, i) =>
        `Turn in ${format.length(one.by)} along the ${edgesOf([one])}${i === 0 ? ` of the ${label}, wrong sides together` : ""}.`,
    );
}

function sewHems(hems: readonly SideHem[], deep: readonly SideHem[]): string[] {
  const isRaw = hems.some(({ by }) => by === 0);
  const isAllDeep = hems.length > 0 && hems.every(({ by }) => by === 0 || isDeepHem(by));
  const narrow = `Sew ${isRaw || deep.length > 0 ? "along the narrow hems" : "round the edges"} with the sewing machine, a foot's width in.`;
  return [
    ...(isAllDeep ? [] : [narrow]),
    ...(deep.length === 0
      ? []
      : ["Sew each deep hem with the sewing machine, close to its inner fold."]),
  ];
}

/** "top and bottom edges", "left edge". */
function edgesOf(hems: readonly SideHem[]): string {
  const sides = hems.flatMap((one) => one.sides);
  return `${listWords(sides)} ${sides.length === 1 ? "edge" : "edges"}`;
}
