import { listWords } from "../units/list-words.ts";
import type { Check } from "./types.ts";

/** Panels that are mirror images of each other on cloth that has a right side: one note for each cover. */
export const checkMirroredPanels: Check = ({ covers, project }) =>
  covers.flatMap((cover) => {
    const fabric = project.stock.find((one) => one.id === cover.fabric);
    if (fabric?.kind !== "fabric" || fabric.isTwoFaced) return [];
    const mirrored = cover.panels.filter((panel) => panel.mirrorOf !== null);
    if (mirrored.length === 0) return [];
    const pairs = mirrored.map(({ id, label, mirrorOf }) => {
      const twin = cover.panels.find((panel) => panel.id === mirrorOf);
      return `${id} (${label}) of ${mirrorOf} (${twin?.label ?? "its twin"})`;
    });
    return [
      {
        id: `mirrored/${cover.solid}`,
        severity: "note",
        about: `solid/${cover.solid}`,
        message:
          `Some panels are mirror images: ${listWords(pairs)}. ` +
          `${capital(fabric.label)} has a right side, so none can be cut by turning its twin over.`,
        remedy:
          "Draw each on the right side of the cloth from its own figure, and letter it before you cut.",
        source: "common practice, no source",
      },
    ];
  });

function capital(words: string): string {
  return words.charAt(0).toUpperCase() + words.slice(1);
}
