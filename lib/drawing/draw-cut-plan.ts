import { groupAlike } from "../packing/group-alike.ts";
import type { CutPlan, UsedStock } from "../packing/types.ts";
import type { Mm, Ratio } from "../plane/types.ts";
import { formatLength, formatSizes } from "../units/index.ts";
import { listNumbers } from "../units/list-numbers.ts";
import { boxOfInks, shiftInks } from "./boxes.ts";
import { type CutView, describeCuts, drawCuts, viewRectangle } from "./draw-cuts.ts";
import { drawDimension } from "./draw-dimension.ts";
import { drawGrain } from "./draw-grain.ts";
import { drawStockParts } from "./draw-stock-parts.ts";
import { finishFigure } from "./finish-figure.ts";
import { firstClear } from "./first-clear.ts";
import { fitScale } from "./fit-scale.ts";
import type { Fitted } from "./fit-scale.ts";
import { flatView } from "./flat-view.ts";
import { partWords } from "./part-words.ts";
import { pathOf } from "./paper-path.ts";
import { placeRound } from "./place-round.ts";
import type { DrawingInput, Figure, FigureLimits, Ink, Picture } from "./types.ts";

/** One slab or sheet with its parts hatched, its cuts numbered in order and its offcuts named. */
export function drawCutPlan(
  input: DrawingInput,
  plan: CutPlan,
  { index, limits }: { readonly index: number; readonly limits: FigureLimits },
): Figure {
  const used = plan.used[index] ?? {
    stockIndex: 0,
    size: [1, 1],
    places: [],
    cuts: [],
    offcuts: [],
  };
  const label = input.project.stock.find(({ id }) => id === plan.stock)?.label ?? plan.stock;
  const [length = 1, width = 1] = used.size;
  const isBrief = limits.width < besideWords;
  const draw = (how: PlanLook): Fitted =>
    fitScale((scale) => planPicture(input, plan, { used, scale, ...how }), [length, width], limits);
  // The tables beside the figure have every size: where labels are in the way, they go.
  const fitted = firstClear(
    limits,
    () => draw({ isBrief, hasSides: true }),
    () => draw({ isBrief: true, hasSides: true }),
    () => draw({ isBrief: true, hasSides: false }),
  );
  const write = (sizes: readonly Mm[]) => formatSizes(sizes, input.project);
  return finishFigure(
    {
      id: `${plan.kind}/${plan.stock}/${index + 1}`,
      title: `Cut ${whichStock(plan, index)}: ${label}`,
      alt: describeCuts(plan, used, write),
      scale: fitted.note,
      // Half the stock: drawn shorter than twice what a part must be, its parts are specks.
      drawn: (fitted.scale * Math.max(length, width)) / 2,
    },
    fitted.picture,
    limits,
  );
}

/** "slab 2 of 3", or "each of slabs 1 and 2" where they are cut alike. */
function whichStock(plan: CutPlan, index: number): string {
  const alike = groupAlike(plan).find((group) => group.includes(plan.used[index]!)) ?? [];
  const numbers = alike.map((each) => plan.used.indexOf(each) + 1);
  return numbers.length < 2
    ? `${plan.kind} ${index + 1} of ${plan.used.length}`
    : `each of ${plan.kind}s ${listNumbers(numbers)}`;
}

/** In less room than this the figure stands beside the words of a step, which have the sizes. */
const besideWords: Mm = 110;

interface PlanLook {
  /** Names alone: no sizes, no offcuts. */
  readonly isBrief: boolean;
  /** Whether the strips that are sliced are shown from the side too. */
  readonly hasSides: boolean;
}

function planPicture(
  input: DrawingInput,
  plan: CutPlan,
  how: PlanLook & { readonly used: UsedStock; readonly scale: Ratio },
): Picture {
  const { used, scale, isBrief, hasSides } = how;
  const above: CutView = { across: 0, up: 1, toPaper: flatView(scale) };
  const top = stockPicture(input, used, { view: above, isBrief });
  const grain = drawGrain(input.project, plan.stock, boxOfInks(top.inks));
  const inks = [...top.inks, ...grain];
  const strips = hasSides ? slicedStrips(used) : [];
  return strips.reduce<Picture>(
    (above, strip) => addSideView(above, strip, { input, scale, isBrief }),
    { ...top, inks },
  );
}

/** What is sliced, strip by strip: the parts, cuts and offcuts of one range across the width. */
function slicedStrips(used: UsedStock): UsedStock[] {
  const strips = new Map<string, [from: Mm, to: Mm]>();
  for (const { axis, of } of used.cuts) {
    const [from, size] = [of.at[1] ?? 0, of.size[1] ?? 0];
    if (axis === 2) strips.set(`${Math.round(from)} ${Math.round(size)}`, [from, from + size]);
  }
  return [...strips.values()].map(([from, to]) => {
    const isIn = ({ at, size }: { at: readonly Mm[]; size: readonly Mm[] }) =>
      (at[1] ?? 0) >= from - 0.5 && (at[1] ?? 0) + (size[1] ?? 0) <= to + 0.5;
    return {
      ...used,
      places: used.places.filter(isIn),
      offcuts: used.offcuts.filter(isIn),
      cuts: used.cuts.filter(({ of }) => isIn(of)),
    };
  });
}

/** Below the plan, a strip seen from the near edge with its cuts to thickness. */
function addSideView(
  above: Picture,
  strip: UsedStock,
  how: { readonly input: DrawingInput; readonly scale: Ratio; readonly isBrief: boolean },
): Picture {
  const { input, scale, isBrief } = how;
  const view: CutView = { across: 0, up: 2, toPaper: flatView(scale) };
  const below = stockPicture(input, strip, { view, isBrief });
  const [upper, lower] = [boxOfInks(above.inks), boxOfInks(below.inks)];
  const names = [...new Set(strip.places.map(({ part }) => partWords(part)))].join(", ");
  const title: Ink = {
    kind: "text",
    style: "label",
    text: `${names} seen from the near edge`,
    at: [0, upper.bottom + 9],
    anchor: "start",
    isUpright: false,
  };
  const moved = shiftInks(below.inks, [0, upper.bottom + 15 - lower.top]);
  return {
    inks: [...above.inks, title, ...moved],
    collisions: [...above.collisions, ...below.collisions],
  };
}

/** One view of one stock. */
function stockPicture(
  input: DrawingInput,
  used: UsedStock,
  { view, isBrief }: { readonly view: CutView; readonly isBrief: boolean },
): Picture {
  const { project } = input;
  const isSide = view.up === 2;
  const cuts = used.cuts.filter(({ axis }) => (axis === 2) === isSide);
  const whole = viewRectangle([0, 0, 0], used.size, view);
  const stock: Ink = {
    kind: "path",
    className: "line stock",
    paths: [pathOf(whole, true)],
    isObstacle: true,
  };
  const numbered = drawCuts(used, cuts, view);
  const parts = drawStockParts(project, used, { view, others: [stock, ...numbered.inks], isBrief });
  const [across = 0, up = 0] = [used.size[view.across], used.size[view.up]];
  const inks = [...parts.under, stock, ...numbered.inks, ...parts.over];
  const box = boxOfInks([stock, ...numbered.inks]);
  const [left, , right] = whole;
  const sizes =
    left && right && !isBrief
      ? [
          ...drawDimension({
            from: [left[0], box.bottom],
            to: [right[0], box.bottom],
            offset: [0, 7],
            text: formatLength(across, project),
          }),
          ...drawDimension({
            from: [box.left, left[1]],
            to: [box.left, right[1]],
            offset: [-7, 0],
            text: formatLength(up, project),
            isTurned: true,
          }),
        ]
      : [];
  const margin = placeRound(parts.small, [...inks, ...sizes]);
  return {
    inks: [...inks, ...sizes, ...margin.inks],
    collisions: [...numbered.collisions, ...parts.collisions, ...margin.collisions],
  };
}
