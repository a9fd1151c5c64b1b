import type { Check } from "./types.ts";

/** Pieces that are wider than the cloth, for which nothing was placed. */
export const checkPieceWidth: Check = ({ lays, covers, pieces, format: { length, sizes } }) =>
  lays.flatMap((lay) =>
    lay.unplaced.map((id) => {
      const all = [...covers.flatMap((cover) => cover.pieces), ...pieces];
      const piece = all.find((one) => one.id === id);
      const size = piece === undefined ? "" : `, ${sizes(piece.cutSize)} as cut,`;
      return {
        id: `too-wide/${id}`,
        severity: "note",
        about: `piece/${id}`,
        message:
          `${piece?.label ?? id}${size} does not fit on the ${length(lay.width - 2 * lay.selvedge)} ` +
          `of usable cloth in any way the print allows.`,
        remedy:
          "Divide the panel with one more seam, choose wider cloth, or let the print run another way.",
        source: "computed from the lay",
      };
    }),
  );
