import type { Attachment, PieceSpec } from "../project/types.ts";
import type { Mm, Point, Ratio } from "../plane/types.ts";
import type { Cover, Mark, Piece } from "../seams/types.ts";
import { formatLength } from "../units/index.ts";
import { drawHatch } from "./draw-hatch.ts";
import { drawPath, rectanglePoints } from "./draw-path.ts";
import { drawUpArrow } from "./draw-up-arrow.ts";
import { finishFigure } from "./finish-figure.ts";
import { fitScale } from "./fit-scale.ts";
import { flatView } from "./flat-view.ts";
import { stockHatch } from "./hatch-styles.ts";
import { markShape } from "./mark-outline.ts";
import { flattenPath, pathOfLoop } from "./paper-path.ts";
import { nameInside } from "./name-inside.ts";
import { placeLabels } from "./place-labels.ts";
import { roundPlaces } from "./round-places.ts";
import { shortName } from "./short-name.ts";
import type { DrawingInput, Figure, FigureLimits, Ink, Picture } from "./types.ts";

/** A loose piece in its place. */
interface Attached {
  readonly attachment: Attachment;
  readonly onto: Piece;
  readonly mark: Mark;
  readonly spec: PieceSpec | null;
}

/** A panel, pale, with the loose piece that is sewn onto it in its place; null where it has none. */
export function drawAttach(
  input: DrawingInput,
  cover: Cover,
  { attachment, limits }: { readonly attachment: Attachment; readonly limits: FigureLimits },
): Figure | null {
  const label = attachment.id.replaceAll("-", " ");
  const found = cover.pieces.flatMap((onto) =>
    onto.marks.filter((mark) => mark.label === label).map((mark) => ({ onto, mark })),
  )[0];
  if (found === undefined) return null;
  const spec = input.project.pieces.find(({ id }) => id === attachment.piece) ?? null;
  const attached: Attached = { attachment, spec, ...found };
  const fitted = fitScale(
    (scale) => attachPicture(input, attached, scale),
    found.onto.cutSize,
    limits,
  );
  return finishFigure(
    {
      id: `attach/${cover.solid}/${attachment.id}`,
      title: `Where the ${label} goes on ${shortName(found.onto)}`,
      alt: `${shortName(found.onto)}, pale, right side facing you. The ${label} is drawn heavy, its middle ${placeWords(input, attachment).join(", ")} from the seam lines, with a square and a cross sewn at each end.`,
      scale: fitted.note,
      drawn: fitted.scale * Math.max(...found.onto.cutSize),
    },
    fitted.picture,
    limits,
  );
}

function placeWords({ project }: DrawingInput, { at }: Attachment): string[] {
  const [across, up] = at.map((value) =>
    value === "centre" ? "half way" : formatLength(value, project),
  );
  return [`${across} across`, `${up} up`];
}

function attachPicture(input: DrawingInput, attached: Attached, scale: Ratio): Picture {
  const { onto, mark, spec, attachment } = attached;
  const toPaper = flatView(scale);
  const rings = [onto.finished.outer, ...onto.finished.holes].map((loop) =>
    flattenPath(pathOfLoop(loop, toPaper), 0.1),
  );
  const [width, height] = (spec?.size ?? [60, 20]).map((size) => size * scale) as [Mm, Mm];
  const [x, y] = toPaper(mark.at);
  const piece = rectanglePoints([x - width / 2, y - height / 2], [width, height]);
  const end = Math.min(width / 3, height);
  const crossed = [x - width / 2, x + width / 2 - end].flatMap((left): Ink[] => [
    drawPath("line seam", rectanglePoints([left, y - height / 2], [end, height]), {
      isClosed: true,
    }),
    drawPath("line stock", [
      [left, y - height / 2],
      [left + end, y + height / 2],
    ]),
    drawPath("line stock", [
      [left, y + height / 2],
      [left + end, y - height / 2],
    ]),
  ]);
  const pale: Ink[] = [
    ...markShape(onto.outline, "ghost")(toPaper),
    ...markShape(onto.finished, "ghost")(toPaper),
  ].map((ink) => (ink.kind === "path" ? { ...ink, isObstacle: true } : ink));
  const base: Ink[] = [
    ...pale,
    drawHatch([piece], stockHatch),
    drawPath("line cut", piece, { isClosed: true }),
    ...crossed,
  ];
  const inks = [...base, ...drawUpArrow(rings, base)];
  const words = placeWords(input, attachment);
  const middle: Point = [x, y];
  const placed = placeLabels(
    [
      {
        lines: [`${mark.label}: middle`, words.join(", ")],
        style: "label",
        candidates: roundPlaces(middle),
      },
    ],
    inks,
  );
  const named = nameInside(onto, rings, [...inks, ...placed.inks]);
  return { inks: [...inks, ...placed.inks, ...named], collisions: placed.collisions };
}
