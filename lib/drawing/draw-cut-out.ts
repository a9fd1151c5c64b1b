import { rectangleAt } from "../plane/rectangle.ts";
import type { Lay, LayPlace } from "../packing/types.ts";
import type { Mm, Point, Ratio } from "../plane/types.ts";
import { formatLength } from "../units/index.ts";
import { growBox } from "./boxes.ts";
import { clothPieces } from "./cloth-pieces.ts";
import { drawHatch } from "./draw-hatch.ts";
import { drawPath } from "./draw-path.ts";
import { finishFigure } from "./finish-figure.ts";
import { firstClear } from "./first-clear.ts";
import { fitScale } from "./fit-scale.ts";
import type { Fitted } from "./fit-scale.ts";
import { stockHatch } from "./hatch-styles.ts";
import { insidePoints } from "./inside-point.ts";
import { drawArrow } from "./mark-arrow.ts";
import type { Callout } from "./place-beside.ts";
import { placeLabels } from "./place-labels.ts";
import { placeRound } from "./place-round.ts";
import { shortName } from "./short-name.ts";
import { textBox } from "./text-box.ts";
import type { DrawingInput, Figure, FigureLimits, Ink, Label, Picture, ToPaper } from "./types.ts";

/** What one step cuts from a lay. */
interface CutOut {
  readonly lay: Lay;
  readonly pieces: readonly string[];
}

interface CutOutLook {
  readonly scale: Ratio;
  /** Whether the lay lies on its side. */
  readonly isLevel: boolean;
  /** Whether a name stands over its corner. */
  readonly isTall: boolean;
}

/** The lay with the pieces of one step heavy and hatched, the rest pale, and where their corners lie. */
export function drawCutOut(
  input: DrawingInput,
  { lay, pieces }: CutOut,
  limits: FigureLimits,
): Figure {
  const size = [lay.width, Math.max(lay.length, 1)] as const;
  const fit = (isLevel: boolean, isTall: boolean) =>
    fitScale(
      (scale) => cutOutPicture(input, { lay, pieces }, { scale, isLevel, isTall }),
      isLevel ? [size[1], size[0]] : size,
      limits,
    );
  // A long lay lies on its side when that lets it be drawn larger.
  const turn = (isTall: boolean): Fitted => {
    const upright = fit(false, isTall);
    const level = lay.length > lay.width ? fit(true, isTall) : upright;
    return level.scale > upright.scale ? level : upright;
  };
  const fitted = firstClear(
    limits,
    () => turn(false),
    () => turn(true),
  );
  const names = pieces.map((id) => nameOf(input, id));
  return finishFigure(
    {
      id: `cut-out/${lay.stock}/${pieces.join("+")}`,
      title: `Where ${names.join(", ")} ${names.length > 1 ? "lie" : "lies"} on the cloth`,
      alt: describe(input, { lay, pieces }),
      scale: fitted.note,
      // Half the lay: drawn shorter than twice what a piece must be, its pieces are specks.
      drawn: (fitted.scale * Math.max(lay.length, lay.width)) / 2,
    },
    fitted.picture,
    limits,
  );
}

function cutOutPicture(
  input: DrawingInput,
  { lay, pieces }: CutOut,
  { scale, isLevel, isTall }: CutOutLook,
): Picture {
  const toPaper: ToPaper = ([x, y]) => (isLevel ? [y * scale, x * scale] : [x * scale, -y * scale]);
  const cloth = rectangleAt(0, 0, lay.width, lay.length).map(toPaper);
  const selvedges = [lay.selvedge, lay.width - lay.selvedge].map((x) =>
    drawPath("line ghost", [toPaper([x, 0]), toPaper([x, lay.length])]),
  );
  const isOwn = ({ piece }: LayPlace) => pieces.includes(piece);
  const own = lay.places.filter(isOwn);
  const others = lay.places.filter((place) => !isOwn(place));
  const pale = others.map(({ outline }) =>
    drawPath("line ghost", outline.map(toPaper), { isClosed: true }),
  );
  const heavy = own.map(({ outline }) =>
    drawPath("line cut", outline.map(toPaper), { isClosed: true }),
  );
  const base = [
    ...selvedges,
    ...pale,
    drawPath("line stock", cloth, { isClosed: true }),
    ...heavy,
    ...originArrows(lay, toPaper),
  ];
  // The name stands on the piece where there is room for it, or else with its corner.
  const onPiece = own.map((place): Label => ({
    lines: [nameOf(input, place.piece)],
    style: "name",
    candidates: insidePoints([place.outline.map(toPaper)], 60).map((at) => ({
      at,
      anchor: "middle",
      leader: null,
    })),
  }));
  const fits = onPiece.map((label) => placeLabels([label], base).collisions.length === 0);
  const named = placeLabels(
    onPiece.filter((_, index) => fits[index]),
    base,
  );
  const white = named.inks.flatMap((ink) =>
    ink.kind === "text" ? [growBox(textBox(ink), 0.8)] : [],
  );
  const hatches = own.map(({ outline }) => drawHatch([outline.map(toPaper)], stockHatch, white));
  const firsts = own.filter(
    (place, index) => own.findIndex(({ piece }) => piece === place.piece) === index,
  );
  const corners = firsts.map((place): Callout => ({
    lines: cornerLines(input, place, {
      isNamed: own.length > 1 || fits[0] !== true,
      isTall,
    }),
    style: "label",
    to: toPaper([place.x, place.y]),
  }));
  const inks: Ink[] = [...hatches, ...base, ...named.inks];
  const told = placeRound(corners, inks, { isInward: true });
  return { inks: [...inks, ...told.inks], collisions: told.collisions };
}

/** From the corner that both sizes are measured from: which way is across and which is up. */
function originArrows(lay: Lay, toPaper: ToPaper): Ink[] {
  const [corner, right, top] = [toPaper([0, 0]), toPaper([lay.width, 0]), toPaper([0, lay.length])];
  const across = unit(corner, right);
  const up = unit(corner, top);
  const off: Mm = 3;
  const long: Mm = 9;
  const along = (way: Point, out: Point): [Point, Point] => {
    const from: Point = [corner[0] - out[0] * off, corner[1] - out[1] * off];
    return [from, [from[0] + way[0] * long, from[1] + way[1] * long]];
  };
  return [
    { way: across, out: up, text: "across" },
    { way: up, out: across, text: "up" },
  ].flatMap(({ way, out, text }): Ink[] => {
    const [from, to] = along(way, out);
    const isLevel = Math.abs(way[0]) > 0.5;
    return [
      ...drawArrow(from, to, "measure"),
      {
        kind: "text",
        style: "label",
        text,
        at: isLevel ? [to[0] + 1.5, to[1]] : [to[0] - 2.5, to[1] + (way[1] > 0 ? -1 : 2)],
        anchor: isLevel ? "start" : "end",
        isUpright: false,
      },
    ];
  });
}

function unit(from: Point, to: Point): Point {
  const length = Math.hypot(to[0] - from[0], to[1] - from[1]) || 1;
  return [(to[0] - from[0]) / length, (to[1] - from[1]) / length];
}

function nameOf(input: DrawingInput, id: string): string {
  const found = clothPieces(input).find(({ piece }) => piece.id === id)?.piece;
  return found === undefined ? id : shortName(found);
}

/** Name and corner in one line, or in two where they stand in a narrow column. */
function cornerLines(
  input: DrawingInput,
  place: LayPlace,
  { isNamed, isTall }: { readonly isNamed: boolean; readonly isTall: boolean },
): readonly string[] {
  const words = cornerWords(input, place);
  if (!isNamed) return [words];
  const name = `${nameOf(input, place.piece)}:`;
  return isTall ? [name, words] : [`${name} ${words}`];
}

function cornerWords({ project }: DrawingInput, { x, y }: LayPlace): string {
  return `${formatLength(x, project)} across, ${formatLength(y, project)} up`;
}

function describe(input: DrawingInput, { lay, pieces }: CutOut): string {
  const own = lay.places.filter(({ piece }) => pieces.includes(piece));
  const places = own.map(
    (place) => `${nameOf(input, place.piece)} copy ${place.copy} at ${cornerWords(input, place)}`,
  );
  return `The cloth with the pieces of this step drawn heavy and hatched, the others pale. Lower left corners: ${places.join("; ")}.`;
}
