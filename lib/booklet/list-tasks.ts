import { loopBounds } from "../plane/loop-bounds.ts";
import type { Mm } from "../plane/types.ts";
import { shrinkOf } from "../project/shrink-of.ts";
import type { Project } from "../project/types.ts";
import type { Cover, Piece } from "../seams/types.ts";
import type { Format } from "../units/make-format.ts";
import { openHyphens } from "./open-hyphens.ts";
import type { Task } from "./pages.ts";
import type { Plan } from "./types.ts";

/** A task before it has its number. */
type Draft = Pick<Task, "about" | "lines" | "ask" | "answer">;

/** Cut sizes to work out: enough practice, and the rest stands in the booklet. @source our choice */
const mostPieces = 6;

/**
 * Sizes a pupil can work out from what the handout gives, with the answers. Only sums that come out
 * right in the figures as printed are set: a size that was rounded would give another answer.
 */
export function listTasks(plan: Plan, format: Format): readonly Task[] {
  const drafts = [
    ...plan.covers.flatMap((cover) => coverTasks(cover, format)),
    ...cutTasks(plan, format),
    ...boardTasks(plan, format),
    ...classTasks(plan),
  ];
  return drafts.map((draft, i) => ({ ...draft, id: `task-${i + 1}`, number: i + 1 }));
}

const axes = ["long", "deep", "high"] as const;

/** How large the cover is: the foam, and what it is smaller or larger by. */
function coverTasks({ solid, foamSize, coverSize }: Cover, format: Format): readonly Draft[] {
  return axes.flatMap((axis, i): readonly Draft[] => {
    const ease = coverSize[i]! - foamSize[i]!;
    const isPlain = [foamSize[i]!, ease].every((size) => isShownWhole(size, format));
    if (!isPlain || Math.abs(ease) < 0.05) return [];
    return [
      {
        about: `Cover of the ${openHyphens(solid)}`,
        lines: [
          `The foam is ${format.length(foamSize[i]!)} ${axis}.`,
          `The cover is ${format.length(Math.abs(ease))} ${ease < 0 ? "smaller" : "larger"}.`,
        ],
        ask: `How ${axis} is the finished cover?`,
        answer: format.length(coverSize[i]!),
      },
    ];
  });
}

/** Cut size of a panel: its finished size and the allowance at both ends. */
function cutTasks({ covers, pieces, project }: Plan, format: Format): readonly Draft[] {
  const all = [
    ...covers.flatMap((cover) =>
      cover.pieces
        .filter((piece) => !hasTwin(piece, cover))
        .map((piece) => ({
          piece,
          name: piece.panel === null ? piece.label : `Panel ${piece.panel}, ${piece.label}`,
        })),
    ),
    ...pieces.map((piece) => ({ piece, name: piece.label })),
  ];
  const sums = all.flatMap(({ piece, name }) => cutTask(piece, name, { project, format }));
  return [...sums.slice(0, mostPieces), ...diagonalTask(all, format)];
}

const hasTwin = (piece: Piece, { panels }: Cover): boolean =>
  piece.mirrorOf !== null || panels.find(({ id }) => id === piece.panel)?.sameAs != null;

function cutTask(
  piece: Piece,
  name: string,
  { project, format }: { readonly project: Project; readonly format: Format },
): readonly Draft[] {
  const shrink = shrinkOf(piece.stock, project);
  const allowance = piece.edges[0]?.allowance ?? 0;
  const { min, max } = loopBounds(piece.finished.outer);
  const finished = [max[0] - min[0], max[1] - min[1]] as const;
  const isSum = finished.every(
    (size, i) => Math.abs((size + 2 * allowance) * (1 + shrink) - piece.cutSize[i]!) < 0.05,
  );
  const isEven = piece.edges.every((edge) => Math.abs(edge.allowance - allowance) < 0.01);
  const isPlain = [...finished, allowance].every((size) => isShownWhole(size, format));
  if (!isSum || !isEven || !isPlain || allowance === 0) return [];
  return [
    {
      about: name,
      lines: [
        `Finished size: ${format.sizes(finished)}.`,
        `Seam allowance on every side: ${format.length(allowance)}.`,
        ...(shrink > 0
          ? [`The cloth shrinks: cut ${format.percent(shrink)} larger than the sum.`]
          : []),
      ],
      ask: "What is the cut size, across and up?",
      answer: format.sizes(piece.cutSize),
    },
  ];
}

/** The check across a rectangle, for one piece. */
function diagonalTask(
  all: readonly { readonly piece: Piece; readonly name: string }[],
  format: Format,
): readonly Draft[] {
  const found = all.find(
    ({ piece }) =>
      piece.outline.outer.length === 4 &&
      Math.abs(piece.area - piece.cutSize[0] * piece.cutSize[1]) < 1 &&
      piece.cutSize.every((size) => isShownWhole(size, format)),
  );
  if (found === undefined) return [];
  const { piece, name } = found;
  return [
    {
      about: name,
      lines: [
        `It is cut as a rectangle of ${format.sizes(piece.cutSize)}.`,
        "Square both sides, add, and take the square root.",
      ],
      ask: "How long is it from corner to corner?",
      answer: format.length(Math.hypot(...piece.cutSize)),
    },
  ];
}

/** Length of all the boards of one kind, and the area of a sheet piece. */
function boardTasks({ project }: Plan, format: Format): readonly Draft[] {
  return project.pieces.flatMap((piece): readonly Draft[] => {
    const stock = project.stock.find(({ id }) => id === piece.stock);
    const length = piece.size[0];
    if (stock?.kind !== "board" || piece.cut < 2 || !isShownWhole(length, format)) return [];
    return [
      {
        about: piece.label,
        lines: [`Each is ${format.length(length)} long. One project takes ${piece.cut}.`],
        ask: "What length is that in all?",
        answer: format.length(length * piece.cut),
      },
    ];
  });
}

/** How many of each panel a class cuts. */
function classTasks({ covers, pieces, project }: Plan): readonly Draft[] {
  if (project.copies < 2) return [];
  const each = [...covers.flatMap((cover) => cover.pieces), ...pieces];
  const one = each.reduce((sum, { cut }) => sum + cut, 0);
  if (one === 0) return [];
  return [
    {
      about: "The whole class",
      lines: [`One takes ${one} pieces of cloth. The class makes ${project.copies}.`],
      ask: "How many pieces does the class cut?",
      answer: `${one * project.copies}`,
    },
  ];
}

/** Whether the booklet's figure is the true one, so that sums of such figures are true too. */
function isShownWhole(size: Mm, { step }: Format): boolean {
  return Math.abs(size - Math.round(size / step) * step) < 0.005;
}
