import type { Ratio } from "../plane/types.ts";
import { parseLength } from "../units/parse-length.ts";
import { describe } from "./describe.ts";
import type { Ledger } from "./ledger.ts";
import { report } from "./ledger.ts";

/** Steps a workshop rule has: halves of an inch down to 1/64. */
const steps: readonly Ratio[] = [1 / 2, 1 / 4, 1 / 8, 1 / 16, 1 / 32, 1 / 64];
const usual: Ratio = 1 / 8;

/** Read the step that printed inches are rounded to. Centimetres and millimetres have none. */
export function resolveRound(ledger: Ledger, written: string | number | undefined): Ratio {
  if (written === undefined) return usual;
  if (ledger.units !== "in") {
    report(ledger, "round", `is not for a project in ${ledger.units}`, "Take the line out");
    return usual;
  }
  const reading = parseLength(written, { units: "in" });
  const step = reading.ok
    ? steps.find((each) => Math.abs(each * 25.4 - reading.value) < 1e-6)
    : null;
  if (step != null) return step;
  const fault = `expected 1/2, 1/4, 1/8, 1/16, 1/32 or 1/64, got ${describe(written)}`;
  report(ledger, "round", fault, "Write the step as a fraction, such as 1/16");
  return usual;
}
