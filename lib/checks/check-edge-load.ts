import { balanceOf } from "./balance-of.ts";
import { edgeLoadMargin } from "./edge-load-margin.ts";
import { cornersOf, findSeat } from "./find-seat.ts";
import { roughLength } from "./rough-length.ts";
import { rules } from "./rules.ts";
import { gravity } from "./sink-share.ts";
import { insideOf } from "./tip-sides.ts";
import type { Check } from "./types.ts";

const rule = rules["tips-at-edge"];

/** Seats that tip when somebody sits down at an edge that juts out beyond the base, on any side. */
export const checkEdgeLoad: Check = ({ solids, project, format }) =>
  solids.flatMap((solid) => {
    const inset = roughLength(rule.inset, { project, format });
    const seat = findSeat(solid);
    const balance = balanceOf(solid, project.audience);
    if (seat === null || balance === null || balance.alone.toEdge <= 0) return [];
    const corners = cornersOf(seat.face);
    const [worst] = balance.sides
      .map((side) => {
        const overhang = Math.max(...corners.map((corner) => -insideOf(side, corner)));
        const margin = edgeLoadMargin({
          down: rule.down,
          inside: rule.inset - overhang,
          push: rule.sideways,
          height: seat.height,
          weight: (solid.mass ?? 0) * gravity,
          toCentre: insideOf(side, solid.centreOfMass),
        });
        return { side, overhang, margin };
      })
      .toSorted((one, other) => one.margin - other.margin);
    if (worst === undefined || worst.overhang <= 0 || worst.margin >= 0) return [];
    return [
      {
        id: `tips-at-edge/${solid.id}`,
        severity: "warning",
        about: `solid/${solid.id}`,
        message:
          `The seat juts out ${format.length(worst.overhang)} beyond its base at the ${worst.side.name}. ` +
          `${rule.down} N at ${inset} from that edge, somebody sitting down there, can tip it over.`,
        remedy: `Bring the base out under the edge, to within ${inset} of it or nearer. Try it out with a grown-up beside it.`,
        source: rule.source,
      },
    ];
  });
