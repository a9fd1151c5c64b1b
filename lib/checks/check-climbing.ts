import type { Mm } from "../plane/types.ts";
import { balanceOf } from "./balance-of.ts";
import { edgeLoadMargin } from "./edge-load-margin.ts";
import { findSeat } from "./find-seat.ts";
import { raisedFaces, type RaisedFace } from "./raised-faces.ts";
import { rules } from "./rules.ts";
import { gravity } from "./sink-share.ts";
import { sitterFor } from "./sitter-for.ts";
import { insideOf, type TipSide } from "./tip-sides.ts";
import type { Check } from "./types.ts";

const rule = rules["tips-on-arm"];
const load = rules["tips-at-edge"];

/** Seats that tip when somebody climbs on an arm or a back that juts out beyond the base. */
export const checkClimbing: Check = ({ solids, project, format: { length } }) =>
  solids.flatMap((solid) => {
    const seat = findSeat(solid);
    const balance = balanceOf(solid, project.audience);
    if (seat === null || balance === null || balance.alone.toEdge <= 0) return [];
    const { audience } = project;
    const down =
      audience === null ? load.down : Math.min(load.down, sitterFor(audience).heaviest * gravity);
    const [worst] = raisedFaces(seat, solid)
      .flatMap((raised) =>
        balance.sides.map((side) => {
          const overhang = Math.max(...raised.corners.map((corner) => -insideOf(side, corner)));
          const margin = edgeLoadMargin({
            down,
            inside: Math.min(rule.inset, halfWidth(raised, side)) - overhang,
            push: (load.sideways * down) / load.down,
            height: raised.height,
            weight: (solid.mass ?? 0) * gravity,
            toCentre: insideOf(side, solid.centreOfMass),
          });
          return { raised, side, overhang, margin };
        }),
      )
      .toSorted((one, other) => one.margin - other.margin);
    if (worst === undefined || worst.margin >= 0) return [];
    const { raised, side, overhang } = worst;
    return [
      {
        id: `tips-on-arm/${solid.id}`,
        severity: "warning",
        about: `solid/${solid.id}`,
        message:
          `The top of the ${raised.kind} is ${length(raised.height)} up and juts out ${length(Math.max(0, overhang))} beyond the base at the ` +
          `${side.name}. ${Math.round(down)} N on it, somebody climbing up, can tip ${solid.id} over.`,
        remedy: `Set the ${raised.kind} back over the base, widen the base there, or stand it against a wall.`,
        source: rule.source,
      },
    ];
  });

/** Half of a face's width across an edge: nobody stands further in than its middle. */
function halfWidth({ corners }: RaisedFace, side: TipSide): Mm {
  const reaches = corners.map((corner) => insideOf(side, corner));
  return (Math.max(...reaches) - Math.min(...reaches)) / 2;
}
