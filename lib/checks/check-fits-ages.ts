import { listWords } from "../units/list-words.ts";
import { thinnestSeat } from "./check-seat-height.ts";
import type { Mm } from "../plane/types.ts";
import { findSeat } from "./find-seat.ts";
import { agesFor } from "./fits-ages.ts";
import { roughLength } from "./rough-length.ts";
import { roughMass } from "./rough-mass.ts";
import { rules } from "./rules.ts";
import { seatUnderLoad } from "./seat-under-load.ts";
import { sitterFor } from "./sitter-for.ts";
import type { Check } from "./types.ts";

/** For which ages a child's seat is, when it is outgrown, and how it can grow along. */
export const checkFitsAges: Check = ({ project, solids, format }) =>
  solids.flatMap((solid) => {
    const { length } = format;
    const rough = (size: Mm) => roughLength(size, { project, format });
    const { audience } = project;
    const seat = findSeat(solid);
    if (audience === null || seat === null || seat.height < thinnestSeat) return [];
    const sitter = sitterFor(audience);
    if (sitter.years === null) return [];
    const loaded = seatUnderLoad(seat, { solid, project, sitter });
    const [highest, lowest] = [seat.height, loaded?.height[1] ?? seat.height];
    const fits = agesFor(lowest, highest);
    if (fits === null) return [];
    const sunk =
      loaded === null
        ? ""
        : ` and ${rough(lowest)} to ${rough(loaded.height[0])} under a sitter of ${roughMass(sitter.mass, { project, format })}`;
    const many = fits.marks.length > 1;
    return [
      {
        id: `fits-ages/${solid.id}`,
        severity: "note",
        about: `solid/${solid.id}`,
        message:
          `The seat is ${length(seat.height)} high${sunk}. Nearest ${many ? "are marks" : "is mark"} ` +
          `${listWords(fits.marks.map(String))} of EN 1729-1: it fits ages ${fits.from} to ${fits.to}, and is outgrown at about ${fits.to + 1}.`,
        remedy:
          fits.next === null
            ? "It is the height of grown-up chairs, so nobody outgrows it."
            : `To let it grow along, lay a firm slab ${rough(Math.max(10, fits.next.seat - highest))} thick under it then, ` +
              `for mark ${fits.next.mark} (${length(fits.next.seat)}), or give the larger sizes under \`variants\`.`,
        source: rules["fits-ages"].source,
      },
    ];
  });
