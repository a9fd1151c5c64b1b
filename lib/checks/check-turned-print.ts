import { theFace } from "../solids/the-face.ts";
import type { Work } from "../estimate/types.ts";
import type { Panel } from "../panels/types.ts";
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
      findingsFor({ cover, panel, direction: fabric.direction }, work),
    );
  });

interface Shown {
  readonly cover: Cover;
  readonly panel: Panel;
  readonly direction: PrintDirection;
}

/** One finding for each way the print stands turned on the panel. */
function findingsFor({ cover, panel, direction }: Shown, { lays, solids }: Work): Finding[] {
  const solid = solids.find((one) => one.id === cover.solid);
  const piece = cover.pieces.find((one) => one.panel === panel.id);
  const laid = lays.flatMap((lay) => lay.places).find((one) => one.piece === piece?.id)?.turn ?? 0;
  const turned = panel.faces.flatMap((face) => {
    const seen = solid?.faces.find(({ id }) => id === face.face);
    const turn = fromUpright((face.turn * 180) / Math.PI + laid);
    // Does a print without an up read the same upside down?
    const shown = direction === "two-way" ? Math.min(turn, 180 - turn) : turn;
    return seen?.isVisible === true && shown > unnoticed
      ? [{ label: seen.label, way: wayOf(turn) }]
      : [];
  });
  return [...new Set(turned.map(({ way }) => way))].map((way) => ({
    id: `print-turned/${cover.solid}/${panel.id}/${way.replaceAll(/[^a-z0-9]+/g, "-")}`,
    severity: "note",
    about: `panel/${panel.id}`,
    message:
      `The print stands ${way} on ${nameAll(turned.filter((one) => one.way === way).map(({ label }) => label))}: ` +
      `panel ${panel.id} (${panel.label}) turns it there.`,
    remedy:
      panel.faces.length > 1
        ? "Cut the panel apart at the folds next to it (`panels: upright`), or choose cloth without a direction."
        : "Let the piece lie upright on the cloth, or choose cloth without a direction.",
    source: "computed from the panels and the lay",
  }));
}

/** "the front", "the front and the top", "the front, the top and the back". */
function nameAll(labels: readonly string[]): string {
  const names = labels.map(theFace);
  const last = names.at(-1) ?? "";
  return names.length < 2 ? last : `${names.slice(0, -1).join(", ")} and ${last}`;
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
