import type { Mm } from "../plane/types.ts";
import { findSeat } from "./find-seat.ts";
import { raisedFaces } from "./raised-faces.ts";
import { roughLength } from "./rough-length.ts";
import { rules } from "./rules.ts";
import { seatUnderLoad } from "./seat-under-load.ts";
import { sitterFor } from "./sitter-for.ts";
import type { Check } from "./types.ts";

const rule = rules["arm-height"];

/** Arms too high or too low for the elbows, measured from the seat as it sinks. */
export const checkArmHeight: Check = ({ project, solids, format }) =>
  solids.flatMap((solid) => {
    const rough = (size: Mm) => roughLength(size, { project, format });
    const { audience } = project;
    const seat = findSeat(solid);
    if (audience === null || seat === null) return [];
    const sitter = sitterFor(audience);
    const loaded = seatUnderLoad(seat, { solid, project, sitter });
    const sitsAt = loaded === null ? seat.height : (loaded.height[0] + loaded.height[1]) / 2;
    const elbow = rule.share * sitter.stature;
    const off = raisedFaces(seat, solid)
      .filter(({ kind }) => kind === "arm")
      .map(({ height }) => height - sitsAt)
      .filter((above) => Math.abs(above - elbow) > rule.most);
    const [above] = off.toSorted((one, other) => Math.abs(other - elbow) - Math.abs(one - elbow));
    if (above === undefined) return [];
    return [
      {
        id: `arm-height/${solid.id}`,
        severity: "note",
        about: `solid/${solid.id}`,
        message:
          `An arm is ${rough(above)} above the seat${loaded === null ? "" : " as it sinks under the sitter"}. ` +
          `The elbows of the sitter are about ${rough(elbow)} above it.`,
        remedy: `Make the arm ${rough(Math.abs(above - elbow))} ${above > elbow ? "lower" : "higher"}, if elbows are to rest on it.`,
        source: rule.source,
      },
    ];
  });
