import type { Audience } from "../project/types.ts";
import { statureFor } from "./stature-for.ts";

/** Whether the audience may be younger than so many years; by stature where only that is known. */
export function isYoungerThan(years: number, audience: Audience | null): boolean {
  if (audience === null) return false;
  switch (audience.kind) {
    case "adult":
      return false;
    case "age":
      return audience.years < years;
    case "stature":
      return audience.stature < (statureFor(years) ?? 0);
  }
}
