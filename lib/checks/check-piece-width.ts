import type { Check } from "./types.ts";

/** Pieces that are wider than the cloth, for which nothing was placed. */
export const checkPieceWidth: Check = (work) => [...unplaced(work), ...inParts(work)];

const unplaced: Check = ({ lays, covers, pieces, format: { length, sizes } }) =>
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

/** Pieces laid in parts: where the seams are, and what else would do. */
const inParts: Check = ({ lays, covers, pieces, format: { length } }) =>
  lays.flatMap((lay) =>
    (lay.splits ?? []).map(({ piece: id, parts, at, allowance }) => {
      const all = [...covers.flatMap((cover) => cover.pieces), ...pieces];
      const label = all.find((one) => one.id === id)?.label ?? id;
      const usable = length(lay.width - 2 * lay.selvedge);
      return {
        id: `in-parts/${id}`,
        severity: "note" as const,
        about: `piece/${id}`,
        message:
          `${label} is wider than the ${usable} of usable cloth. It is laid in ${parts.length} parts, ` +
          `joined ${at.map((each) => length(each)).join(" and ")} from its left cut edge with ` +
          `${length(allowance)} of allowance on both sides.`,
        remedy:
          "Choose wider cloth or another way to cut the cover if you do not want a seam there.",
        source: "computed from the lay",
      };
    }),
  );
