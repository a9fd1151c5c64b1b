import type { Check } from "./types.ts";

/** Panels that are mirror images of each other on cloth that has a right side. */
export const checkMirroredPanels: Check = ({ covers, project }) =>
  covers.flatMap((cover) => {
    const fabric = project.stock.find((one) => one.id === cover.fabric);
    if (fabric?.kind !== "fabric" || fabric.isTwoFaced) return [];
    return cover.panels
      .filter((panel) => panel.mirrorOf !== null)
      .map((panel) => {
        const twin = cover.panels.find(({ id }) => id === panel.mirrorOf);
        return {
          id: `mirrored/${cover.solid}/${panel.id}`,
          severity: "note",
          about: `panel/${panel.id}`,
          message:
            `Panel ${panel.id} (${panel.label}) is the mirror image of ${panel.mirrorOf} (${twin?.label ?? "its twin"}). ` +
            `${capital(fabric.label)} has a right side, so neither can be cut by turning the other over.`,
          remedy:
            "Draw both on the right side of the cloth, one from each figure, and letter them before you cut.",
          source: "common practice, no source",
        };
      });
  });

function capital(words: string): string {
  return words.charAt(0).toUpperCase() + words.slice(1);
}
