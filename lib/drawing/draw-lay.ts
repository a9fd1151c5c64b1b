import type { Lay } from "../packing/types.ts";
import type { Mm, Point, Polygon, Ratio } from "../plane/types.ts";
import type { FabricStock } from "../project/types.ts";
import { formatLength, formatSizes } from "../units/index.ts";
import { boxOfInks, growBox } from "./boxes.ts";
import { dotInk } from "./dot-ink.ts";
import { drawDimension } from "./draw-dimension.ts";
import { drawHatch } from "./draw-hatch.ts";
import { drawPrintArrow } from "./draw-print-arrow.ts";
import { drawRuler } from "./draw-ruler.ts";
import { findCollisions } from "./find-collisions.ts";
import { finishFigure } from "./finish-figure.ts";
import { firstClear } from "./first-clear.ts";
import { fitScale } from "./fit-scale.ts";
import type { Fitted } from "./fit-scale.ts";
import { wasteHatch } from "./hatch-styles.ts";
import { labelLay, placeMarks } from "./label-lay.ts";
import type { LayNaming } from "./label-lay.ts";
import { measureText } from "./measure-text.ts";
import { pathOf } from "./paper-path.ts";
import { placeBeside } from "./place-beside.ts";
import { labelSections } from "./label-sections.ts";
import { placeLabels } from "./place-labels.ts";
import { repeatLines } from "./repeat-lines.ts";
import { textBox } from "./text-box.ts";
import type { DrawingInput, Figure, FigureLimits, Ink, Picture, ToPaper } from "./types.ts";

/** Pieces on their cloth, to scale, with rulers, selvedges, print arrow and repeat grid. */
export function drawLay(input: DrawingInput, whole: Lay, limits: FigureLimits): Figure {
  const { project } = input;
  const lay = startOf(whole);
  const isPart = lay.length < whole.length;
  const stock = project.stock.find((item) => item.id === lay.stock && item.kind === "fabric");
  const cloth = stock?.kind === "fabric" ? stock : null;
  // A long lay lies on its side when that lets it be drawn larger.
  const size = [lay.width, Math.max(extentOf(lay), 1)] as const;
  const draw = (look: Omit<LayLook, "cloth" | "scale" | "isPart">): Fitted =>
    fitScale(
      (scale) => layPicture(input, lay, { cloth, scale, isPart, ...look }),
      look.isLevel ? [size[1], size[0]] : size,
      limits,
    );
  const turn = (naming: LayNaming): Fitted => {
    const upright = draw({ isLevel: false, naming });
    if (lay.length <= lay.width) return upright;
    const level = draw({ isLevel: true, naming });
    return level.scale > upright.scale * 1.4 ? level : upright;
  };
  // The table beside the figure has the whole names.
  const first = firstClear(
    limits,
    () => turn("whole"),
    () => turn("short"),
    () => turn("once"),
  );
  const fitted = first.scale * lay.width > limits.width / 3 ? first : largerOf(first, turn("once"));
  return finishFigure(
    {
      id: `lay/${lay.stock}`,
      title:
        `Lay the pieces on the ${cloth?.label ?? lay.stock}` +
        (isPart
          ? `: the first ${formatLength(lay.length, project)} of ${formatLength(whole.length, project)}`
          : ""),
      alt: describeLay(input, lay, cloth),
      scale: fitted.note,
      drawn: fitted.scale * Math.max(...size),
    },
    fitted.picture,
    limits,
  );
}

/** The drawing whose long columns of names leave the cloth small, or a clear one much larger. */
const largerOf = (first: Fitted, brief: Fitted): Fitted => {
  const isClear = brief.picture.collisions.length + findCollisions(brief.picture.inks).length === 0;
  return isClear && brief.scale > first.scale * 1.2 ? brief : first;
};

/** Below this scale lines as wide as cut lines run together. @source our choice */
const smallScale: Ratio = 1 / 60;

interface LayLook {
  readonly cloth: FabricStock | null;
  readonly scale: Ratio;
  readonly isLevel: boolean;
  /** Whether the lay goes on beyond the drawing. */
  readonly isPart: boolean;
  /** Names beside the cloth: whole, by number in one line each, or by number once for like pieces. */
  readonly naming: LayNaming;
}

function layPicture(
  input: DrawingInput,
  lay: Lay,
  { cloth, scale, isLevel, isPart, naming }: LayLook,
): Picture {
  const { project } = input;
  const toPaper: ToPaper = ([x, y]) => (isLevel ? [y * scale, x * scale] : [x * scale, -y * scale]);
  const length = lay.length;
  const rectangle = (x0: number, y0: number, x1: number, y1: number): Polygon =>
    (
      [
        [x0, y0],
        [x1, y0],
        [x1, y1],
        [x0, y1],
      ] as Point[]
    ).map(toPaper);
  const { selvedge, width } = lay;
  const selvedges =
    selvedge > 0
      ? [rectangle(0, 0, selvedge, length), rectangle(width - selvedge, 0, width, length)]
      : [];
  const base: Ink[] = [
    ...selvedges.map((region) => drawHatch([region], wasteHatch)),
    ...(length > 0 ? [outline(rectangle(0, 0, width, length), "line stock")] : []),
    ...drawSections(lay, toPaper),
    ...lay.places.map(({ outline: corners }) =>
      outline(corners.map(toPaper), scale < smallScale ? "line part" : "line cut"),
    ),
    ...rulers(lay, { toPaper, scale, isLevel, unit: project.units }),
  ];
  const { labels, callouts: pieces } = labelLay(input, lay, { toPaper, base, naming });
  const callouts = [...pieces, ...labelSections(lay, { toPaper, project })];
  const beside = placeBeside(callouts, boxOfInks(base));
  const placed = placeLabels(labels, [...base, ...beside]);
  const keepClear = placed.inks.flatMap((ink) =>
    ink.kind === "text" ? [growBox(textBox(ink), 0.8)] : [],
  );
  const grid = cloth ? repeatLines(cloth, lay, { toPaper, keepClear }) : [];
  const named = callouts.flatMap(({ to }) => [dotInk(to)]);
  // Figures of the rulers come last: a leader that passes under one ends short of it.
  const isFigure = (ink: Ink): boolean => ink.kind === "text" && ink.hasHalo === true;
  const [figures, lines] = [base.filter(isFigure), base.filter((ink) => !isFigure(ink))];
  const inks = [...grid, ...lines, ...placed.inks, ...beside, ...named, ...figures];
  const around = boxOfInks(inks);
  const arrows = drawPrintArrow(cloth, { box: around, isLevel });
  const box = boxOfInks([...inks, ...arrows]);
  const buy = isPart ? [] : buyLine(input, lay, { toPaper, isLevel, box });
  // The ruler and the words beside the figure say the length too.
  const whole = [...inks, ...arrows, ...buy];
  const isClear = findCollisions(whole).length === 0;
  return { inks: isClear ? whole : [...inks, ...arrows], collisions: placed.collisions };
}

/** A lay longer than so many widths of the cloth is drawn in part: so many of them. @source our choice */
const longLay = { from: 8, shown: 5 } as const;

/** What of a lay is drawn: of a very long one its start, where each piece can still be made out. */
function startOf(lay: Lay): Lay {
  const { width, sections } = lay;
  if (lay.length <= longLay.from * width || sections !== undefined) return lay;
  const most = longLay.shown * width;
  const topOf = ({ outline: corners }: Lay["places"][number]): Mm =>
    Math.max(...corners.map(([, y]) => y));
  const places = lay.places.filter((place) => topOf(place) <= most);
  return { ...lay, places, length: Math.max(...places.map(topOf)) };
}

/** How far the drawing goes: the lay, and the remnants beyond it. */
const extentOf = ({ length, sections = [] }: Lay): Mm =>
  Math.max(length, ...sections.map((section) => section.start + section.length));

/** Ends of lengths and outlines of remnants, flaws hatched, and the fold where the cloth is double. */
function drawSections({ sections = [], width, folded = 0 }: Lay, toPaper: ToPaper): Ink[] {
  const fold: Polygon = [
    [width / 2, 0],
    [width / 2, folded],
  ];
  return [
    ...sections.map((section) => outline(section.outline.map(toPaper), "line stock")),
    ...sections.flatMap(({ flaws }) =>
      flaws.flatMap((flaw) => [
        drawHatch([flaw.map(toPaper)], wasteHatch),
        outline(flaw.map(toPaper), "line stock"),
      ]),
    ),
    ...(folded > 0 ? [outline(fold.map(toPaper), "line fold")] : []),
  ];
}

function outline(corners: Polygon, className: string): Ink {
  return { kind: "path", className, paths: [pathOf(corners, true)], isObstacle: true };
}

function rulers(
  lay: Lay,
  {
    toPaper,
    scale,
    isLevel,
    unit,
  }: { toPaper: ToPaper; scale: Ratio; isLevel: boolean; unit: "in" | "cm" | "mm" },
): Ink[] {
  const from = toPaper([0, 0]);
  const x = { from, length: lay.width, scale, unit };
  const y = { from, length: lay.length, scale, unit };
  return isLevel
    ? [
        ...drawRuler({ ...x, along: [0, 1], out: [-1, 0] }),
        ...drawRuler({ ...y, along: [1, 0], out: [0, -1] }),
      ]
    : [
        ...drawRuler({ ...x, along: [1, 0], out: [0, 1] }),
        ...drawRuler({ ...y, along: [0, -1], out: [-1, 0] }),
      ];
}

/** What the arrows of a dimension line and the white round its figure take up. */
const arrowsTake: Mm = 9;

/** The length of cloth the lay takes, on a dimension line of its own. */
function buyLine(
  { project }: DrawingInput,
  lay: Lay,
  {
    toPaper,
    isLevel,
    box,
  }: { toPaper: ToPaper; isLevel: boolean; box: ReturnType<typeof boxOfInks> },
): Ink[] {
  const [from, to] = [toPaper([lay.width, 0]), toPaper([lay.width, lay.length])];
  const words = formatLength(lay.length, project);
  const full = `${words} of cloth`;
  // On a short lay upright words would stand out over the cloth.
  const isShort = !isLevel && from[1] - to[1] < measureText(full, "label") + arrowsTake;
  const text = isShort ? words : full;
  return isLevel
    ? drawDimension({ from, to, offset: [0, box.bottom - from[1] + 6], text })
    : drawDimension({ from, to, offset: [box.right - from[0] + 6, 0], text, isTurned: true });
}

function describeLay({ project }: DrawingInput, lay: Lay, cloth: FabricStock | null): string {
  const places = lay.places.map((place) => {
    const marks = placeMarks(place).join(", ");
    const at = formatSizes([place.x, place.y], project);
    return `${place.piece} copy ${place.copy} at ${at}${marks ? ` (${marks})` : ""}`;
  });
  const parts = [
    `Cloth ${formatLength(lay.width, project)} wide, ${formatLength(lay.length, project)} long.`,
    lay.buy > 0 ? `To buy: ${formatLength(lay.buy, project)}.` : "Enough is on hand.",
    cloth && cloth.direction === "one-way" ? "The print runs one way, up the drawing." : "",
    `Pieces, across from the left edge then along: ${places.join("; ")}.`,
  ];
  return parts.filter((part) => part !== "").join(" ");
}
