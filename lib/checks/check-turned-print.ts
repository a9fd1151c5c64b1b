import type { Work } from "../estimate/types.ts";
import type { Panel, PanelFace } from "../panels/types.ts";
import type { PrintDirection } from "../project/types.ts";
import type { Cover } from "../seams/types.ts";
import type { Check, Finding } from "./types.ts";

/** Print may stand this far from upright before anyone sees it, in degrees. */
const unnoticed = 1;

/** Visible faces on which the print runs sideways or upside down once the panels lie as placed. */
export const checkTurnedPrint: Check = (work) =>
  work.covers.flatMap((cover) => {
    const fabric = work.project.stock.find((one) => one.id === cover.fabric);
    if (fabric?.kind !== "fabric" || fabric.direction === "any") return [];
    return cover.panels.flatMap((panel) =>
      panel.faces.flatMap((face) =>
        findingFor({ cover, panel, face, direction: fabric.direction }, work),
      ),
    );
  });

interface Turned {
  readonly cover: Cover;
  readonly panel: Panel;
  readonly face: PanelFace;
  readonly direction: PrintDirection;
}

function findingFor({ cover, panel, face, direction }: Turned, { lays, solids }: Work): Finding[] {
  const seen = solids
    .find((one) => one.id === cover.solid)
    ?.faces.find(({ id }) => id === face.face);
  if (seen === undefined || !seen.isVisible) return [];
  const piece = cover.pieces.find((one) => one.panel === panel.id);
  const place = lays.flatMap((lay) => lay.places).find((one) => one.piece === piece?.id);
  const turn = fromUpright((face.turn * 180) / Math.PI + (place?.turn ?? 0));
  // Does a print without an up read the same upside down?
  const shown = direction === "two-way" ? Math.min(turn, 180 - turn) : turn;
  if (shown <= unnoticed) return [];
  return [
    {
      id: `print-turned/${cover.solid}/${face.face}`,
      severity: "note",
      about: `panel/${panel.id}`,
      message: `On ${seen.label} the print stands ${wayOf(turn)}: panel ${panel.id} (${panel.label}) turns it there.`,
      remedy:
        panel.faces.length > 1
          ? "Cut the panel apart at the fold next to that face (`panels: upright`), or choose cloth without a direction."
          : "Let the piece lie upright on the cloth, or choose cloth without a direction.",
      source: "computed from the panels and the lay",
    },
  ];
}

/** 0 to 180 degrees away from upright. */
function fromUpright(degrees: number): number {
  const turned = ((degrees % 360) + 360) % 360;
  return Math.min(turned, 360 - turned);
}

function wayOf(turn: number): string {
  if (turn > 180 - unnoticed) return "upside down";
  if (Math.abs(turn - 90) <= unnoticed) return "sideways";
  return `${Math.round(turn)}° from upright`;
}
