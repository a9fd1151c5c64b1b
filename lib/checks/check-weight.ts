import type { Check } from "./types.ts";

/**
 * Mass one person should not lift from the floor alone, in kilograms.
 *
 * @source HSE, Manual handling at work (INDG143), 16 kg close to the body at knuckle height; from memory
 */
const aloneAtMost = 16;

/** Pieces whose foam alone is heavy to lift. */
export const checkWeight: Check = ({ solids, format: { mass } }) =>
  solids.flatMap((solid) => {
    if (solid.mass === null || solid.mass <= aloneAtMost) return [];
    return [
      {
        id: `heavy/${solid.id}`,
        severity: "caution",
        about: `solid/${solid.id}`,
        message: `The foam of ${solid.id} weighs ${mass(solid.mass)}. Lifting it alone can strain the back.`,
        remedy: `Carry it in pairs, or build it in parts of at most ${mass(aloneAtMost)} each.`,
        source: "HSE, Manual handling at work, INDG143 (figure from memory)",
      },
    ];
  });
