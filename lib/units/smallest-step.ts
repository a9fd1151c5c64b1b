import type { Mm } from "../plane/types.ts";
import type { LengthStyle } from "./types.ts";

/** The smallest length a booklet asks anybody to lay off: a step of its inches, or a millimetre. */
export const smallestStep = ({ units, round }: LengthStyle): Mm =>
  units === "in" ? round * 25.4 : 1;
