import type { Lay } from "../packing/types.ts";
import type { Mm, Point, Ratio } from "../plane/types.ts";
import { formatLength } from "../units/index.ts";
import { drawDimension } from "./draw-dimension.ts";
import { drawHatch } from "./draw-hatch.ts";
import { drawPath } from "./draw-path.ts";
import { finishFigure } from "./finish-figure.ts";
import { fitScale } from "./fit-scale.ts";
import { wasteHatch } from "./hatch-styles.ts";
import { insidePoints } from "./inside-point.ts";
import { drawArrow } from "./mark-arrow.ts";
import { placeLabels } from "./place-labels.ts";
import { roundPlaces } from "./round-places.ts";
import type { DrawingInput, Figure, FigureLimits, Ink, Picture, ToPaper } from "./types.ts";

/** The cloth spread on the table, its selvedges and the end of the lay marked. */
export function drawSpread(input: DrawingInput, lay: Lay, limits: FigureLimits): Figure {
  const size = [lay.width, Math.max(lay.length, 1)] as const;
  const fit = (isLevel: boolean) =>
    fitScale(
      (scale) => spreadPicture(input, lay, { scale, isLevel }),
      isLevel ? [size[1], size[0]] : size,
      limits,
    );
  const upright = fit(false);
  const level = lay.length > lay.width ? fit(true) : upright;
  const fitted = level.scale > upright.scale ? level : upright;
  const write = (length: Mm) => formatLength(length, input.project);
  const cloth = clothOf(input, lay);
  return finishFigure(
    {
      id: `spread/${lay.stock}`,
      title: `Spread the ${cloth?.label ?? lay.stock}, right side up`,
      alt: `The cloth lies flat, right side up, its left selvedge at the edge of the table. It is ${write(usable(lay))} wide between the selvedges. The lay is ${write(lay.length)} long; a chalk line marks its end.${cloth && cloth.direction !== "any" ? " An arrow shows the way the print runs." : ""}`,
      scale: fitted.note,
    },
    fitted.picture,
    limits,
  );
}

function spreadPicture(
  input: DrawingInput,
  lay: Lay,
  { scale, isLevel }: { readonly scale: Ratio; readonly isLevel: boolean },
): Picture {
  const toPaper: ToPaper = ([x, y]) => (isLevel ? [y * scale, x * scale] : [x * scale, -y * scale]);
  const { width, selvedge, length } = lay;
  const write = (value: Mm) => formatLength(value, input.project);
  // The cloth runs on past the end of the lay.
  const end = length + 6 / scale;
  const on = (x0: Mm, x1: Mm, y1: Mm): Point[] =>
    (
      [
        [x0, 0],
        [x1, 0],
        [x1, y1],
        [x0, y1],
      ] as Point[]
    ).map(toPaper);
  const table = drawPath("line heavy", [toPaper([0, 0]), toPaper([0, end])]);
  const chalk = drawPath("line cut", [toPaper([0, length]), toPaper([width, length])]);
  const base: Ink[] = [
    ...(selvedge > 0
      ? [
          drawHatch([on(0, selvedge, end)], wasteHatch),
          drawHatch([on(width - selvedge, width, end)], wasteHatch),
        ]
      : []),
    drawPath("line stock", on(0, width, end), { isClosed: true }),
    table,
    chalk,
    ...sizes(lay, toPaper, isLevel, write),
  ];
  const direction = clothOf(input, lay)?.direction ?? "any";
  const [foot, head] = [
    toPaper([width * 0.8, length * 0.15]),
    toPaper([width * 0.8, length * 0.8]),
  ];
  const arrows = [
    ...(direction === "any" ? [] : drawArrow(foot, head, "stock")),
    ...(direction === "two-way" ? drawArrow(head, foot, "stock") : []),
  ];
  const words = placeLabels(
    [
      {
        lines: ["right side up"],
        style: "name",
        candidates: [
          ...insidePoints([on(selvedge, width - selvedge, length)], 40).map(
            (at) => ({ at, anchor: "middle", leader: null }) as const,
          ),
          // A narrow cloth is named from beside it.
          ...roundPlaces(toPaper([width - selvedge, length * 0.35])),
        ],
      },
      ...(direction === "any"
        ? []
        : [
            {
              lines: [direction === "one-way" ? "print this way" : "print both ways"],
              style: "label" as const,
              candidates: roundPlaces(foot),
            },
          ]),
      {
        lines: ["chalk line"],
        style: "label",
        candidates: roundPlaces(toPaper([width * 0.7, length])),
      },
      {
        lines: ["left selvedge, on", "the table's edge"],
        style: "label",
        candidates: [0.5, 0.3, 0.7, 0.2, 0.8].flatMap((share) =>
          roundPlaces(toPaper([0, length * share])),
        ),
      },
    ],
    [...base, ...arrows],
  );
  return { inks: [...base, ...arrows, ...words.inks], collisions: words.collisions };
}

/** The length of the lay and the width between the selvedges, beside the cloth. */
function sizes(
  { width, selvedge, length }: Lay,
  toPaper: ToPaper,
  isLevel: boolean,
  write: (value: Mm) => string,
): Ink[] {
  const [a, b] = [toPaper([selvedge, 0]), toPaper([width - selvedge, 0])];
  const [c, d] = [toPaper([width, 0]), toPaper([width, length])];
  const [e, f] = [toPaper([0, 0]), toPaper([0, length])];
  const words = write(usable({ width, selvedge }));
  return isLevel
    ? [
        ...drawDimension({ from: b, to: a, offset: [-6, 0], text: words, isTurned: true }),
        ...drawDimension({ from: c, to: d, offset: [0, 6], text: write(length) }),
      ]
    : [
        ...drawDimension({ from: a, to: b, offset: [0, 6], text: words }),
        ...drawDimension({ from: e, to: f, offset: [-6, 0], text: write(length), isTurned: true }),
      ];
}

const usable = ({ width, selvedge }: Pick<Lay, "width" | "selvedge">): Mm => width - 2 * selvedge;

function clothOf({ project }: DrawingInput, lay: Lay) {
  const stock = project.stock.find(({ id }) => id === lay.stock);
  return stock?.kind === "fabric" ? stock : null;
}
