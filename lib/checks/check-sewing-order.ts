import { listWords } from "../units/list-words.ts";
import type { Check } from "./types.ts";

/** Covers whose order of sewing puts a seam out of reach of the machine, found by replaying it. */
export const checkSewingOrder: Check = ({ covers }) =>
  covers
    .filter(({ sewable }) => !sewable.ok)
    .map(({ solid, sewable }) => ({
      id: `sewing-order/${solid}`,
      severity: "note",
      about: `solid/${solid}`,
      message: `Replayed on the cloth, the order of sewing of ${solid} does not lie flat throughout: ${listWords(sewable.faults.slice(0, 2))}.`,
      remedy: "Sew that stretch by hand, or leave another seam open under `open`.",
      source: "computed by replaying the order of sewing",
    }));
