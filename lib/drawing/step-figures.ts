import { drawAnchor } from "./draw-anchor.ts";
import { drawAttach } from "./draw-attach.ts";
import { drawBoards } from "./draw-boards.ts";
import { drawCare } from "./draw-care.ts";
import { drawClose } from "./draw-close.ts";
import { drawClosing } from "./draw-closing.ts";
import { drawCutOut } from "./draw-cut-out.ts";
import { drawHem } from "./draw-hem.ts";
import { drawLayers } from "./draw-layers.ts";
import { drawMarking } from "./draw-marking.ts";
import { drawMethod } from "./draw-method.ts";
import { drawNeatening } from "./draw-neatening.ts";
import { drawParts } from "./draw-parts.ts";
import { drawPiped } from "./draw-piped.ts";
import { drawPiping } from "./draw-piping.ts";
import { drawSeam } from "./draw-seam.ts";
import { drawSeamRun, isLongRun } from "./draw-seam-run.ts";
import { drawSpread } from "./draw-spread.ts";
import { drawStockCheck } from "./draw-stock-check.ts";
import { drawWrap } from "./draw-wrap.ts";
import { clothPieces } from "./cloth-pieces.ts";
import type { DrawingInput, Drawer } from "./types.ts";

/** Add what the steps show that no page of its own shows: what one step adds, the rest pale. */
export function addStepFigures(drawers: Map<string, Drawer>, input: DrawingInput): void {
  for (const { figure } of input.steps) {
    if (figure === null || drawers.has(figure)) continue;
    const drawer = stepDrawer(input, figure);
    if (drawer !== null) drawers.set(figure, drawer);
  }
}

type Finder = (input: DrawingInput, words: readonly string[]) => Drawer | null;

/** The drawer for an id such as `cut-out/print/P1+P2`; null where the plan has no such thing. */
function stepDrawer(input: DrawingInput, id: string): Drawer | null {
  const [kind = "", ...words] = id.split("/");
  return finders[kind]?.(input, words) ?? null;
}

const finders: Readonly<Record<string, Finder>> = {
  stock: (input, [what]) => (what === "check" ? (limits) => drawStockCheck(input, limits) : null),
  spread: withLay((input, lay) => (limits) => drawSpread(input, lay, limits)),
  "cut-out": withLay((input, lay, pieces = "") => {
    const ids = pieces.split("+");
    return (limits) => drawCutOut(input, { lay, pieces: ids }, limits);
  }),
  mark: (input, [id]) => {
    const piece = clothPieces(input).find((one) => one.piece.id === id)?.piece;
    return piece ? (limits) => drawMarking(input, piece, limits) : null;
  },
  hem: (input, [id]) => {
    const piece = clothPieces(input).find((one) => one.piece.id === id)?.piece;
    return piece ? (limits) => drawHem(input, piece, limits) : null;
  },
  parts: (input, [what]) => {
    const id = (["parts/sand", "parts/join", "parts/finish"] as const).find(
      (each) => each === `parts/${what}`,
    );
    return id ? (limits) => drawParts(input, { id, limits }) : null;
  },
  board: (input, [stock, number]) => {
    const plan = input.boards.find((one) => one.stock === stock);
    return plan ? (limits) => drawBoards(input, plan, { number: Number(number), limits }) : null;
  },
  method: (input, [what]) => {
    if (what === "neaten") return drawNeatening;
    const id = what === "clip" ? "method/clip" : "method/seam";
    return (limits) => drawMethod(input, id, limits);
  },
  layers: (input, [id, block]) => {
    const solid = input.solids.find((one) => one.id === id);
    const found = solid?.blocks.find((one) => one.id === block);
    return solid && found ? (limits) => drawLayers(input, solid, { block: found, limits }) : null;
  },
  seam: withCover((input, cover, letters = "") => {
    const ids = letters.split("+");
    const seams = cover.seams.filter(({ id }) => ids.includes(id));
    const solid = input.solids.find(({ id }) => id === cover.solid);
    return solid && isLongRun(seams)
      ? (limits) => drawSeamRun(input, cover, { solid, seams, limits })
      : (limits) => drawSeam(input, cover, { seams, limits });
  }),
  piping: withCover((input, cover) => (limits) => drawPiping(input, cover, limits)),
  piped: withCover((input, cover) => (limits) => drawPiped(input, cover, limits)),
  closing: withCover((input, cover) => (limits) => drawClosing(input, cover, limits)),
  attach: withCover((input, cover, id) => {
    const spec = input.project.solids.find((one) => one.id === cover.solid)?.cover;
    const attachment = spec?.attach.find((one) => one.id === id);
    return attachment ? (limits) => drawAttach(input, cover, { attachment, limits }) : null;
  }),
  close: withForm((input, cover, solid) => (limits) => drawClose(input, cover, { solid, limits })),
  care: withForm((_, cover, solid) => (limits) => drawCare(cover, { solid, limits })),
  wrap: withForm((input, _, solid) => (limits) => drawWrap(input, { solid, limits })),
  anchor: withForm((input, _, solid) => (limits) => drawAnchor(input, { solid, limits })),
};

type Lay = DrawingInput["lays"][number];
type Cover = DrawingInput["covers"][number];
type Solid = DrawingInput["solids"][number];

/** The figure of a lay, named by its stock. */
function withLay(find: (input: DrawingInput, lay: Lay, rest?: string) => Drawer | null): Finder {
  return (input, [stock, rest]) => {
    const lay = input.lays.find((one) => one.stock === stock);
    return lay ? find(input, lay, rest) : null;
  };
}

/** The figure of a cover, named by its solid. */
function withCover(
  find: (input: DrawingInput, cover: Cover, rest?: string) => Drawer | null,
): Finder {
  return (input, [id, rest]) => {
    const cover = input.covers.find((one) => one.solid === id);
    return cover ? find(input, cover, rest) : null;
  };
}

/** The figure of a cover on its solid. */
function withForm(
  find: (input: DrawingInput, cover: Cover, solid: Solid) => Drawer | null,
): Finder {
  return withCover((input, cover) => {
    const solid = input.solids.find((one) => one.id === cover.solid);
    return solid ? find(input, cover, solid) : null;
  });
}
