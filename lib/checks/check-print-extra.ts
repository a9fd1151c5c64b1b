import type { Check } from "./types.ts";

/** Cloth that centring motifs and matching seams takes beyond a plain lay. */
export const checkPrintExtra: Check = ({ lays, project, format: { length } }) =>
  lays.flatMap(({ stock, printExtra }) => {
    if (printExtra === undefined || printExtra < 1) return [];
    const label = project.stock.find(({ id }) => id === stock)?.label ?? stock;
    return [
      {
        id: `print-extra/${stock}`,
        severity: "note",
        about: `lay/${stock}`,
        message: `Centring and matching the print takes ${length(printExtra)} of ${label} more than a lay without.`,
        remedy: "Take pairs out of `print.match`, or faces out of `print.centre`, to save cloth.",
        source: "computed by laying the pieces both ways",
      },
    ];
  });
