import type { Figure } from "../drawing/types.ts";
import { drawClear, firstFigure } from "./figure-source.ts";
import type { FigureRoom, FigureSource } from "./figure-source.ts";
import type { WordsPage, WordsPart } from "./pages.ts";
import type { Plan } from "./types.ts";

/** A figure among words takes no more room than its labels need. @source our choice */
const amongWords: readonly FigureRoom[] = [55, 70, 85, 100, 125].map((height) => ({
  width: 165,
  height,
}));

/** The author's own text, figures placed; null when there is none beside the notes to steps. */
export function buildWords({ project }: Plan, figures: FigureSource): WordsPage | null {
  const parts = project.words.flatMap((part): readonly WordsPart[] => {
    switch (part.kind) {
      case "prose":
        return part.markdown.trim() === "" ? [] : [{ kind: "prose", markdown: part.markdown }];
      case "caution":
      case "tip":
        return [{ kind: part.kind, markdown: part.markdown }];
      case "figure": {
        const figure = figureAmongWords(part.figure, figures);
        return figure === null ? [] : [{ kind: "figure", figure, caption: part.caption }];
      }
      case "step":
      case "before":
        return []; // They stand in the steps.
    }
  });
  if (parts.length === 0) return null;
  return { kind: "words", id: "from-the-author", title: "From the author", parts };
}

function figureAmongWords(id: string, figures: FigureSource): Figure | null {
  if (!figures.ids.includes(id)) return null;
  return drawClear(figures, id, amongWords) ?? firstFigure(figures, [id]);
}
