import { evenRuns } from "../packing/even-runs.ts";
import { groupAlike } from "../packing/group-alike.ts";
import type { Cut, CutPlan, UsedStock } from "../packing/types.ts";
import type { Mm, Point, Ratio } from "../plane/types.ts";
import { formatLength, formatSizes } from "../units/index.ts";
import { listNumbers } from "../units/list-numbers.ts";
import { boxOfInks, shiftInks } from "./boxes.ts";
import { dotInk, ringInk } from "./dot-ink.ts";
import { describeCuts, viewRectangle, type CutView } from "./draw-cuts.ts";
import { drawDimension } from "./draw-dimension.ts";
import { drawStockParts } from "./draw-stock-parts.ts";
import { finishFigure } from "./finish-figure.ts";
import { fitScale } from "./fit-scale.ts";
import { pathOf } from "./paper-path.ts";
import type { Callout } from "./place-beside.ts";
import { placeLabels } from "./place-labels.ts";
import type {
  Candidate,
  DrawingInput,
  Figure,
  FigureLimits,
  Ink,
  Label,
  Picture,
} from "./types.ts";

/** Boards cut alike are drawn once. */
interface BoardGroup {
  readonly used: UsedStock;
  readonly numbers: readonly number[];
}

/** Height a board is drawn at: to scale its face would be too thin to write on. */
const BAR: Mm = 13;

/**
 * Boards of one stock with their cuts in order, all of them or those cut like one of them; only their
 * length is to scale.
 */
export function drawBoards(
  input: DrawingInput,
  plan: CutPlan,
  { limits, number = null }: { readonly limits: FigureLimits; readonly number?: number | null },
): Figure {
  const groups = boardGroups(plan).filter(
    ({ numbers }) => number === null || numbers.includes(number),
  );
  const longest = Math.max(1, ...groups.map(({ used }) => used.size[0] ?? 0));
  const label = input.project.stock.find(({ id }) => id === plan.stock)?.label ?? plan.stock;
  const fitted = fitScale(
    (scale) =>
      boardsPicture(
        input,
        { kind: plan.kind, groups },
        { scale, isBrief: limits.width < besideWords },
      ),
    [longest, 1],
    limits,
  );
  const write = (sizes: readonly Mm[]) => formatSizes(sizes, input.project);
  return finishFigure(
    {
      id: `board/${plan.stock}${number === null ? "" : `/${number}`}`,
      title: `Cut the ${label} to length`,
      alt: groups
        .map(
          ({ used, numbers }) =>
            `${boardTitle(plan.kind, numbers)}: ${describeCuts(plan, used, write)}`,
        )
        .join(" "),
      scale: `${fitted.note} along the board; its width is not to scale`,
    },
    fitted.picture,
    limits,
  );
}

const boardGroups = (plan: CutPlan): readonly BoardGroup[] =>
  groupAlike(plan).map((alike) => ({
    used: alike[0],
    numbers: alike.map((each) => plan.used.indexOf(each) + 1),
  }));

function boardTitle(kind: CutPlan["kind"], numbers: readonly number[]): string {
  const [first, ...more] = numbers;
  return more.length === 0 ? `${kind} ${first}` : `${kind}s ${listNumbers(numbers)}, each alike`;
}

/** In less room than this the figure stands beside the words of a step, which have the sizes. */
const besideWords: Mm = 110;

interface BoardLook {
  readonly scale: Ratio;
  readonly isBrief: boolean;
}

function boardsPicture(
  input: DrawingInput,
  { kind, groups }: { readonly kind: CutPlan["kind"]; readonly groups: readonly BoardGroup[] },
  look: BoardLook,
): Picture {
  let inks: Ink[] = [];
  const collisions: string[] = [];
  let down = 0;
  for (const { used, numbers } of groups) {
    const board = boardPicture(input, used, look);
    const box = boxOfInks(board.inks);
    const title: Ink = {
      kind: "text",
      style: "name",
      text: boardTitle(kind, numbers),
      at: [0, down + 2],
      anchor: "start",
      isUpright: false,
    };
    inks = [...inks, title, ...shiftInks(board.inks, [0, down + 8 - box.top])];
    down += 8 + box.bottom - box.top + 6;
    collisions.push(...board.collisions);
  }
  return { inks, collisions };
}

function boardPicture(
  { project }: DrawingInput,
  used: UsedStock,
  { scale, isBrief }: BoardLook,
): Picture {
  const length = used.size[0] ?? 0;
  // One length only: the board's face has a height of its own on the paper.
  const face = ({ at, size }: { at: readonly Mm[]; size: readonly Mm[] }) => ({
    at: [at[0] ?? 0, 0],
    size: [size[0] ?? 0, 1],
  });
  const flat: UsedStock = {
    ...used,
    places: used.places.map((place) => ({ ...place, ...face(place) })),
    offcuts: used.offcuts.map((offcut) => ({ ...offcut, ...face(offcut) })),
  };
  const view: CutView = { across: 0, up: 1, toPaper: ([x, y]) => [x * scale, -y * BAR] };
  const whole = viewRectangle([0, 0], [length, 1], view);
  const stock: Ink = {
    kind: "path",
    className: "line stock",
    paths: [pathOf(whole, true)],
    isObstacle: true,
  };
  const numbered = drawBoardCuts(used.cuts, scale);
  const parts = drawStockParts(project, flat, {
    view,
    others: [stock, ...numbered],
    sizes: 1,
    isBrief,
  });
  const inks = [...parts.under, stock, ...numbered, ...parts.over];
  const size = isBrief
    ? []
    : drawDimension({
        from: [0, 0],
        to: [length * scale, 0],
        offset: [0, parts.small.length > 0 ? 13.5 : 6.5],
        text: formatLength(length, project),
      });
  const small = placeLabels(parts.small.map(underBar), [...inks, ...size]);
  return {
    inks: [...inks, ...size, ...small.inks, ...parts.small.map(({ to }) => dotInk(to))],
    collisions: [...parts.collisions, ...small.collisions],
  };
}

/** A part too short to write on is named under the bar. */
function underBar({ lines, style, to }: Callout): Label {
  const shifts = [0, 4, -4, 8, -8, 14, -14, 20, -20, 28, -28, 36, -36];
  const candidates = shifts.map((shift): Candidate => ({
    at: [to[0] + shift, 6],
    anchor: "middle",
    leader: to,
  }));
  return { lines, style, candidates };
}

/** Of so many even cuts only the first and the last are numbered. Our choice. */
const fewestEven = 5;

/**
 * Cuts across a board, their numbers above it; numbers too close together step up a lane. Even cuts
 * between two numbers bear none.
 */
function drawBoardCuts(cuts: readonly Cut[], scale: Ratio): Ink[] {
  const lanes: Mm[] = [];
  const runs = evenRuns(
    cuts.toSorted((a, b) => a.at - b.at),
    { kind: ({ kind }) => kind, at: ({ at }) => at, fewest: fewestEven },
  );
  return runs.flatMap((run) =>
    run.flatMap((cut, i): Ink[] => {
      const x = cut.at * scale;
      if (i > 0 && i < run.length - 1) {
        const short = pathOf([
          [x, 2],
          [x, -BAR - 2],
        ]);
        return [{ kind: "path", className: "line cut", paths: [short], isObstacle: true }];
      }
      const found = lanes.findIndex((last) => x - last >= 7);
      const lane = found < 0 ? lanes.length : found;
      lanes[lane] = x;
      const at: Point = [x, -BAR - 5 - lane * 7];
      const line = pathOf([
        [x, 2],
        [x, at[1] + 3],
      ]);
      return [
        { kind: "path", className: "line cut", paths: [line], isObstacle: true },
        ringInk(at, 3),
        {
          kind: "text",
          style: "name",
          text: String(cut.order),
          at,
          anchor: "middle",
          isUpright: false,
          isGrounded: true,
        },
      ];
    }),
  );
}
