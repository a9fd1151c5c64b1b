import type { Mm } from "../plane/types.ts";
import type { NamedSizes, Unit } from "../units/types.ts";
import type { Fault } from "./types.ts";

/** What a reading needs to know, and the list it writes its faults to. Lives for one project. */
export interface Ledger {
  readonly units: Unit;
  readonly names: NamedSizes;
  readonly faults: Fault[];
}

/** Stands in for a length that could not be read. A project with faults is never handed on. */
export const standIn: Mm = 1;

/** Write a fault down. */
export function report(ledger: Ledger, field: string, fault: string, fix: string): void {
  ledger.faults.push({ field, fault, fix });
}
