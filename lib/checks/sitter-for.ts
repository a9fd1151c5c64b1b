import type { Mm } from "../plane/types.ts";
import type { Audience } from "../project/types.ts";
import adults from "../../shared/tables/adults.json" with { type: "json" };
import weights from "../../shared/tables/weight-for-age.json" with { type: "json" };
import { ageRow } from "./age-row.ts";
import { statureFor } from "./stature-for.ts";

/** The body that a seat is checked for. */
export interface Sitter {
  readonly stature: Mm;
  /** Kilograms, in the middle of the range. */
  readonly mass: number;
  /** Kilograms of the heaviest that is reckoned with. */
  readonly heaviest: number;
  /** Years, null for an adult. */
  readonly years: number | null;
}

/** @source EN 1022:2018, scope: adults up to 110 kg */
const heaviestAdult = 110;

/**
 * Stature and mass of the sitter. A stature stands in for the age at which the middle child has it.
 *
 * @source CDC 2000 stature and weight for age; ANSUR II 2012 for adults; both in `shared/tables`
 */
export function sitterFor(audience: Audience): Sitter {
  switch (audience.kind) {
    case "adult":
      return adultOf(null);
    case "age": {
      const stature = statureFor(audience.years);
      return stature === null ? adultOf(null) : childOf(audience.years, stature);
    }
    case "stature": {
      const years = yearsFor(audience.stature);
      return years === null ? adultOf(audience.stature) : childOf(years, audience.stature);
    }
  }
}

/** Age at which the middle child is this tall; null for those taller than at eighteen. */
export function yearsFor(stature: Mm): number | null {
  for (let years = 2; years <= 18; years++) {
    if ((statureFor(years) ?? 0) >= stature - 0.5) return years;
  }
  return null;
}

function childOf(years: number, stature: Mm): Sitter {
  const row = ageRow(weights.rows, years);
  if (row === null) return adultOf(stature);
  const [, boys = 0, heavyBoys = 0] = row.boys;
  const [, girls = 0, heavyGirls = 0] = row.girls;
  return { stature, mass: (boys + girls) / 2, heaviest: Math.max(heavyBoys, heavyGirls), years };
}

function adultOf(stature: Mm | null): Sitter {
  const measured = adults.rows.filter(({ source }) => source === "ansur");
  const mean = (values: readonly number[]) =>
    values.reduce((sum, value) => sum + value, 0) / values.length;
  return {
    stature: stature ?? mean(measured.map((row) => row.stature?.[1] ?? 0)),
    mass: mean(measured.map(({ weight }) => weight ?? 0)),
    heaviest: heaviestAdult,
    years: null,
  };
}
