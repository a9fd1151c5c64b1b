import { type Balance, balanceOf, type Tilt } from "../checks/balance-of.ts";
import { findSeat, type Seat } from "../checks/find-seat.ts";
import { roughLength } from "../checks/rough-length.ts";
import { rules } from "../checks/rules.ts";
import type { Mm, Point, Ratio } from "../plane/types.ts";
import type { Point3, Solid } from "../solids/types.ts";
import { formatLength, makeFormat } from "../units/index.ts";
import { boxOfInks } from "./boxes.ts";
import { centreMark, silhouette, straightLine } from "./tipping-marks.ts";
import { breakLabel } from "./break-label.ts";
import { drawDimension } from "./draw-dimension.ts";
import { finishFigure } from "./finish-figure.ts";
import { firstClear } from "./first-clear.ts";
import { fitScale } from "./fit-scale.ts";
import type { Fitted } from "./fit-scale.ts";
import { flatView } from "./flat-view.ts";
import { drawArrow } from "./mark-arrow.ts";
import { pathOf } from "./paper-path.ts";
import { type Callout, placeBeside } from "./place-beside.ts";
import { placeLabels } from "./place-labels.ts";
import type {
  Candidate,
  DrawingInput,
  Figure,
  FigureLimits,
  Ink,
  Label,
  Picture,
  ToPaper,
} from "./types.ts";

/** A pad thinner than this lies on something else and does not tip. As in `checks`. */
const thinnest: Mm = 120;

/** Whether a solid is a seat that stands by itself, so that its balance is worth a drawing. */
export function hasBalance(solid: Solid): boolean {
  const seat = findSeat(solid);
  return seat !== null && seat.height >= thinnest && balanceOf(solid, null) !== null;
}

/** The thing from the side it tips to most easily: its base, its centre of mass, and how far it tilts. */
export function drawTipping(
  { project }: DrawingInput,
  solid: Solid,
  limits: FigureLimits,
): Figure | null {
  const balance = balanceOf(solid, project.audience);
  const seat = findSeat(solid);
  if (balance === null || seat === null) return null;
  const view = sideView(balance);
  const tilt = balance.seated ?? balance.alone;
  const write = (length: Mm) => formatLength(length, project);
  const inset = roughLength(rules["tips-at-edge"].inset, { project, format: makeFormat(project) });
  const from = view.axis === 1 ? "left" : "front";
  const draw = (isBroken: boolean): Fitted =>
    fitScale(
      (scale) => tippingPicture({ solid, seat, balance, view, write, inset, isBroken }, scale),
      [solid.size[view.axis], solid.size[2]],
      limits,
    );
  const fitted = firstClear(
    limits,
    () => draw(false),
    () => draw(true),
  );
  return finishFigure(
    {
      id: `tipping/${solid.id}`,
      title: `Base and centre of mass, seen from the ${from}`,
      alt:
        `The base is ${write(view.base[1] - view.base[0])} wide here. The centre of mass is ${write(balance.alone.height)} up` +
        `${balance.seated === null ? "" : `, and ${write(balance.seated.height)} with somebody on the seat`}. ` +
        `It tips over the ${tilt.side.name} once tilted by ${Math.round(degrees(tilt))}°.`,
      scale: fitted.note,
    },
    fitted.picture,
    limits,
  );
}

interface SideView {
  /** Axis that lies level on the paper: 0 seen from the front, 1 from the left. */
  readonly axis: 0 | 1;
  readonly base: readonly [low: Mm, high: Mm];
  /** Whether the weakest edge is at the high end. */
  readonly isHigh: boolean;
}

/** Look along the edge that is tipped over most easily. */
function sideView({ base, alone, seated }: Balance): SideView {
  const { normal } = (seated ?? alone).side;
  const axis = Math.abs(normal[0]) > Math.abs(normal[1]) ? 0 : 1;
  const along = base.map((point) => point[axis]);
  return {
    axis,
    base: [Math.min(...along), Math.max(...along)],
    isHigh: normal[axis] > 0,
  };
}

interface Scene {
  readonly solid: Solid;
  readonly seat: Seat;
  readonly balance: Balance;
  readonly view: SideView;
  readonly write: (length: Mm) => string;
  /** How far from the edge the load bears, in words. */
  readonly inset: string;
  /** Whether names stand in two lines, for want of width. */
  readonly isBroken: boolean;
}

function tippingPicture(
  { solid, seat, balance, view, write, inset, isBroken }: Scene,
  scale: Ratio,
): Picture {
  const { axis, base, isHigh } = view;
  const floor = solid.min[2];
  const toPaper = flatView(scale);
  const flat = (point: Point3): Point => toPaper([point[axis], point[2]]);
  const edge: Point = toPaper([isHigh ? base[1] : base[0], floor]);
  const { alone, seated } = balance;
  const tilt = seated ?? alone;
  const [left, right] = [solid.min[axis], solid.min[axis] + solid.size[axis]];
  const load = seatLoad(seat, view, toPaper);
  const inks: Ink[] = [
    ...solid.blocks.flatMap((block) => silhouette(block, axis, toPaper)),
    straightLine("line ghost", [toPaper([left, floor]), toPaper([right, floor])], 8),
    {
      kind: "path",
      className: "line cut",
      paths: [pathOf([toPaper([base[0], floor]), toPaper([base[1], floor])])],
      isObstacle: true,
    },
    straightLine("line fold", [edge, flat(tilt.centre)]),
    straightLine("line fold", [edge, [edge[0], flat(tilt.centre)[1]]]),
    ...centreMark(flat(alone.centre)),
    ...(seated === null ? [] : centreMark(flat(seated.centre))),
    ...drawArrow([load[0], load[1] - 9], [load[0], load[1] - 0.6], "motion"),
  ];
  const around = boxOfInks(inks);
  const below = around.bottom - toPaper([0, floor])[1] + 7;
  const sizes = [
    ...drawDimension({
      from: toPaper([base[0], floor]),
      to: toPaper([base[1], floor]),
      offset: [0, below],
      text: write(base[1] - base[0]),
    }),
    ...drawDimension({
      from: [around.left, toPaper([0, floor])[1]],
      to: [around.left, flat(tilt.centre)[1]],
      offset: [-7, 0],
      text: write(tilt.height),
      isTurned: true,
    }),
  ];
  const callouts: Callout[] = [
    {
      lines: isBroken ? breakLabel("centre of mass") : ["centre of mass"],
      style: "label",
      to: flat(alone.centre),
    },
    ...(seated === null
      ? []
      : [
          {
            lines: isBroken ? breakLabel(withSitter) : [withSitter],
            style: "label" as const,
            to: flat(seated.centre),
          },
        ]),
  ];
  const drawn = [...inks, ...sizes];
  const loadLabel: Label = {
    lines: [`test load ${rules["tips-at-edge"].down} N,`, `${inset} from the edge`],
    style: "label",
    candidates: roundArrow([load[0], load[1] - 9]),
  };
  const angleLabel: Label = {
    lines: [`tips at ${Math.round(degrees(tilt))}°`],
    style: "label",
    candidates: besideEdge(edge, isHigh),
  };
  const placed = placeLabels([loadLabel, angleLabel], drawn);
  const all = [...drawn, ...placed.inks];
  // The height stands on the left: names go to the right, clear of it.
  const box = { ...boxOfInks(all), left: -1e6 };
  return { inks: [...all, ...placeBeside(callouts, box)], collisions: placed.collisions };
}

const withSitter = "centre with a sitter";

/** Places for the angle: outside the edge that is tipped over, low down. */
function besideEdge([x, y]: Point, isHigh: boolean): Candidate[] {
  const side = isHigh ? 1 : -1;
  return [4, 8, 13, 19, 26].flatMap((by) =>
    [6, 10, 15, 22].map((up): Candidate => ({
      at: [x + side * by, y - up],
      anchor: isHigh ? "start" : "end",
      leader: [x + side * 0.5, y - 2],
    })),
  );
}

/** Places for the words of an arrow, above and beside its tail. */
function roundArrow([x, y]: Point): Candidate[] {
  return [3, 6, 10, 15, 21].flatMap((up): Candidate[] => [
    { at: [x, y - up], anchor: "middle", leader: null },
    { at: [x + 3, y - up + 4], anchor: "start", leader: null },
    { at: [x - 3, y - up + 4], anchor: "end", leader: null },
  ]);
}

/** Where the test load bears: a little in from the edge of the seat on the weak side. */
function seatLoad(seat: Seat, { axis, isHigh }: SideView, toPaper: ToPaper): Point {
  const from = rules["tips-at-edge"].inset;
  const at = isHigh ? seat.max[axis] - from : seat.min[axis] + from;
  return toPaper([at, seat.max[2]]);
}

function degrees({ angle }: Tilt): number {
  return (angle * 180) / Math.PI;
}
