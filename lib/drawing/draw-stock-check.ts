import type { Mm, Ratio } from "../plane/types.ts";
import { formatLength, formatSizes } from "../units/index.ts";
import { drawHatch } from "./draw-hatch.ts";
import { drawPath, rectanglePoints } from "./draw-path.ts";
import { finishFigure } from "./finish-figure.ts";
import { fitScale } from "./fit-scale.ts";
import { flowPictures } from "./flow-pictures.ts";
import { wasteHatch } from "./hatch-styles.ts";
import { drawArrow } from "./mark-arrow.ts";
import { textLines } from "./text-lines.ts";
import type { DrawingInput, Figure, FigureLimits, Ink, Picture } from "./types.ts";

/** A kind of stock as it should be found. */
interface StockItem {
  readonly lines: readonly string[];
  readonly width: Mm;
  readonly height: Mm;
  /** Width of the selvedge of a cloth, which hangs over at its far end; null for what is not cloth. */
  readonly selvedge: Mm | null;
  readonly hasArrow: boolean;
}

/** The least height anything is drawn at on the paper, so that a board still shows. */
const THIN: Mm = 2;

/** Every kind of stock at one scale with the sizes it should have; null where there is none. */
export function drawStockCheck(input: DrawingInput, limits: FigureLimits): Figure | null {
  const items = listItems(input);
  if (items.length === 0) return null;
  const widest = Math.max(...items.map(({ width }) => width));
  const fitted = fitScale(
    (scale) => checkPicture(items, { scale, width: limits.width }),
    [widest, 1],
    limits,
  );
  return finishFigure(
    {
      id: "stock/check",
      title: "What to measure",
      alt: `At one scale: ${items.map(({ lines }) => lines.join(", ")).join("; ")}.`,
      scale: fitted.note,
    },
    fitted.picture,
    limits,
  );
}

function listItems({ project, slabs, sheets, boards, lays }: DrawingInput): StockItem[] {
  const labelOf = (id: string) => project.stock.find((one) => one.id === id)?.label ?? id;
  const cut = [...slabs, ...sheets, ...boards].flatMap((plan) => {
    const sizes = new Map(plan.used.map(({ size }) => [size.join(), size]));
    return [...sizes.entries()].map(([key, size]): StockItem => {
      const count = plan.used.filter((used) => used.size.join() === key).length;
      const stock = project.stock.find(({ id }) => id === plan.stock);
      const across = stock?.kind === "board" ? stock.section[0] : (size[1] ?? 0);
      return {
        lines: [`${count} × ${labelOf(plan.stock)}`, formatSizes(size, project)],
        width: size[0] ?? 0,
        height: across,
        selvedge: null,
        hasArrow: false,
      };
    });
  });
  const cloths = lays.map((lay): StockItem => {
    const stock = project.stock.find(({ id }) => id === lay.stock);
    const usable = formatLength(lay.width - 2 * lay.selvedge, project);
    return {
      lines: [labelOf(lay.stock), `${usable} between selvedges`],
      width: lay.width,
      height: Math.min(lay.length, lay.width / 2),
      selvedge: lay.selvedge,
      hasArrow: stock?.kind === "fabric" && stock.direction !== "any",
    };
  });
  return [...cut, ...cloths];
}

function checkPicture(
  items: readonly StockItem[],
  { scale, width }: { readonly scale: Ratio; readonly width: Mm },
): Picture {
  const pictures = items.map((item): Picture => ({ inks: itemInks(item, scale), collisions: [] }));
  return flowPictures(pictures, width, 5);
}

function itemInks({ lines, width, height, selvedge, hasArrow }: StockItem, scale: Ratio): Ink[] {
  const [wide, high] = [width * scale, Math.max(THIN, height * scale)];
  const edge = (selvedge ?? 0) * scale;
  const sides =
    edge > 0
      ? [0, wide - edge].map((left) =>
          drawHatch([rectanglePoints([left, 0], [edge, high])], wasteHatch),
        )
      : [];
  const arrow =
    hasArrow && high > 8 ? drawArrow([wide / 2, high - 1.5], [wide / 2, 1.5], "stock") : [];
  // A cloth runs on: its near end is a broken line.
  const outline =
    selvedge === null
      ? [drawPath("line edge", rectanglePoints([0, 0], [wide, high]), { isClosed: true })]
      : [
          drawPath("line edge", [
            [0, high],
            [0, 0],
            [wide, 0],
            [wide, high],
          ]),
          drawPath("line seam", [
            [0, high],
            [wide, high],
          ]),
        ];
  const words = textLines(lines, [0, high + 4.2 + (lines.length - 1) * 2.4], {
    style: "label",
    anchor: "start",
  });
  return [...sides, ...outline, ...arrow, ...words];
}
