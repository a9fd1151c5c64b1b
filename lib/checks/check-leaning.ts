import { balanceOf } from "./balance-of.ts";
import { edgeLoadMargin } from "./edge-load-margin.ts";
import { findSeat } from "./find-seat.ts";
import { raisedFaces } from "./raised-faces.ts";
import { rules } from "./rules.ts";
import { gravity } from "./sink-share.ts";
import { sitterFor } from "./sitter-for.ts";
import type { Check } from "./types.ts";

const rule = rules["tips-back"];
const load = rules["tips-at-edge"];

/** Light seats whose back carries them over when somebody leans on it. */
export const checkLeaning: Check = ({ solids, project, format: { length } }) =>
  solids.flatMap((solid) => {
    const seat = findSeat(solid);
    const balance = balanceOf(solid, project.audience);
    if (seat === null || balance === null || balance.alone.toEdge <= 0) return [];
    const backs = raisedFaces(seat, solid).filter(
      ({ kind, isBehind }) => kind === "back" && isBehind,
    );
    const top = Math.max(0, ...backs.map(({ height }) => height));
    if (top === 0) return [];
    const { audience } = project;
    const down =
      audience === null ? load.down : Math.min(load.down, sitterFor(audience).heaviest * gravity);
    const height = Math.min(seat.height + rule.above, top);
    const push = (Math.max(0, rule.slope * (1000 - seat.height)) * down) / load.down;
    const baseBack = Math.max(...balance.base.map(([, y]) => y));
    const margin = edgeLoadMargin({
      down,
      inside: baseBack - (seat.max[1] - rule.forward),
      push,
      height,
      weight: (solid.mass ?? 0) * gravity,
      toCentre: baseBack - solid.centreOfMass[1],
    });
    if (margin >= 0) return [];
    return [
      {
        id: `tips-back/${solid.id}`,
        severity: "warning",
        about: `solid/${solid.id}`,
        message:
          `Somebody who leans back pushes with about ${Math.round(push)} N at ${length(height)} up. The base ends ` +
          `${length(Math.abs(baseBack - seat.max[1]))} ${baseBack < seat.max[1] ? "before" : "behind"} the end of the seat, and that tips ${solid.id} over backwards.`,
        remedy: "Bring the base further back, lower the back, or stand it against a wall.",
        source: rule.source,
      },
    ];
  });
