import type { Mm } from "../plane/types.ts";
import type { NamedSizes, Unit } from "../units/types.ts";
import type { Fault } from "./types.ts";

/** What a reading needs to know, and the list it writes its faults to. Lives for one project. */
export interface Ledger {
  readonly units: Unit;
  readonly names: NamedSizes;
  readonly faults: Fault[];
  /** Fields left out because their form is faulty, so that nothing naming them is blamed again. */
  readonly dropped: ReadonlySet<string>;
}

/** Stands in for a length that could not be read. A project with faults is never handed on. */
export const standIn: Mm = 1;

/** Write a fault down. */
export function report(ledger: Ledger, field: string, fault: string, fix: string): void {
  ledger.faults.push({ field, fault, fix });
}

/** Whether a field, or something it lies in, was left out for a fault of its own. */
export function isDropped({ dropped }: Ledger, field: string): boolean {
  const parts = field.split(".");
  return parts.some((_, index) => dropped.has(parts.slice(0, index + 1).join(".")));
}
