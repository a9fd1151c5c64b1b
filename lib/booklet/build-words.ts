import { firstFigure } from "./figure-source.ts";
import type { FigureSource } from "./figure-source.ts";
import type { WordsPage, WordsPart } from "./pages.ts";
import type { Plan } from "./types.ts";

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
        const figure = firstFigure(figures, [part.figure]);
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
