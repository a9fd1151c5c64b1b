export type { Check, Finding, Severity } from "./types.ts";
export { findSeat } from "./find-seat.ts";
export { checks, listFindings } from "./list-findings.ts";
export { seatFor } from "./seat-for.ts";
export { statureFor } from "./stature-for.ts";
export { tipAngle } from "./tip-angle.ts";
