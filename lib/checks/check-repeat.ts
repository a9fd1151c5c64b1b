import type { Check } from "./types.ts";

/** Printed cloth for which no pattern repeat was given, so that the lay cannot place motifs. */
export const checkRepeat: Check = ({ lays, project }) =>
  lays.flatMap((lay) => {
    const fabric = project.stock.find((one) => one.id === lay.stock);
    if (fabric?.kind !== "fabric" || fabric.direction === "any" || fabric.repeat !== null)
      return [];
    return [
      {
        id: `repeat-unknown/${fabric.id}`,
        severity: "note",
        about: `stock/${fabric.id}`,
        message: `${fabric.label} has a direction but no repeat was given, so pieces are laid as if the print were plain.`,
        remedy:
          "Measure from a motif to the next like it, along and across, and enter it under `repeat`. " +
          "Until then buy one full repeat more than the lay takes.",
        source:
          "sew4home, fabric width conversion chart, https://sew4home.com/fabric-width-yardage-conversion-chart/",
      },
    ];
  });
