import { rules } from "./rules.ts";
import type { Check } from "./types.ts";

/** Choices of the author that came to nothing on this cover, and why. */
export const checkChoices: Check = ({ covers }) =>
  covers.flatMap(({ solid, lost }) =>
    lost.map(({ field, message, remedy }) => ({
      id: `choice-lost/${solid}/${field}`,
      severity: "note" as const,
      about: `solid/${solid}`,
      message,
      remedy,
      source: rules["choice-lost"].source,
    })),
  );
