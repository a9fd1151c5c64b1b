import { clothClass, heaviestCloth, stitchFor } from "../estimate/cloth-class.ts";
import { seamStrength } from "../estimate/seam-strength.ts";
import { rules } from "./rules.ts";
import { gravity } from "./sink-share.ts";
import type { Check } from "./types.ts";

const rule = rules["handle-weak"];
/** Cloth of unknown weight is sewn with all-purpose thread: the medium class. */
const usualWeight = 200;

/** Handles whose seams may give when the whole piece is swung by one of them. */
export const checkHandles: Check = (work) =>
  work.project.solids.flatMap(({ id, cover }) => {
    const mass = work.solids.find((solid) => solid.id === id)?.mass ?? null;
    const kind = clothClass(heaviestCloth(work)?.weight ?? usualWeight);
    if (mass === null || cover === null || kind === null) return [];
    const perInch = seamStrength(stitchFor(work), kind.threadStrength);
    const load = rule.factor * mass * gravity;
    return cover.attach.flatMap((attachment) => {
      const piece = work.project.pieces.find((one) => one.id === attachment.piece);
      if (piece === undefined || !/handle|strap|loop|grip/i.test(`${piece.id} ${piece.label}`))
        return [];
      // A square at either end: two rows across each carry the pull.
      const sewn = 4 * Math.min(...piece.size);
      const holds = perInch * (sewn / 25.4);
      if (holds >= load) return [];
      return [
        {
          id: `handle-weak/${id}/${attachment.id}`,
          severity: "caution" as const,
          about: `piece/${piece.id}`,
          message:
            `${piece.label} is sewn down along ${work.format.length(sewn)} and holds about ${Math.round(holds)} N. ` +
            `${id} weighs ${work.format.mass(mass)}; swung by it, it pulls with up to ${Math.round(load)} N.`,
          remedy: "Use stronger thread, a wider strip with webbing inside, or two handles.",
          source: rule.source,
        },
      ];
    });
  });
