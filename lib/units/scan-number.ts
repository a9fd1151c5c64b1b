import type { Count } from "../plane/types.ts";
import { misread } from "./misread.ts";
import type { Misreading } from "./types.ts";
import { vulgarFractions } from "./vulgar-fractions.ts";

export interface ScannedNumber {
  readonly ok: true;
  readonly value: number;
  readonly isFraction: boolean;
  readonly hasComma: boolean;
  readonly end: Count;
}

const hyphenated = /(\d+)-(\d+)[/⁄](\d+)/y;
const mixed = /(\d+)\s+(\d+)[/⁄](\d+)(?!\d|[.,]\d)/y;
const fraction = /(\d+)[/⁄](\d+)(?!\d|[.,]\d)/y;
const vulgar = /(\d*)\s*([¼½¾⅐-⅞])/y;
const decimal = /(?:\d+([.,])\d+|\.\d+|\d+)/y;
const longest = 15; // digits a double keeps exactly

/**
 * Read the number that starts at a character: 24, 17.5, 62,5, 5/8, 1 1/2, 1½.
 *
 * Null when no number starts there. Numbers that can be read two ways are refused. A slash with no
 * gaps makes a fraction; with gaps it divides.
 */
export function scanNumber(text: string, at: Count): ScannedNumber | Misreading | null {
  const hyphen = match(hyphenated, text, at);
  if (hyphen) {
    const [all, whole, top, bottom] = hyphen;
    return misread(
      `${all} can be read as a sum or as a mixed number`,
      `Write ${whole} ${top}/${bottom} for the mixed number, or ${whole} - (${top}/${bottom})`,
      at,
    );
  }
  const whole = match(mixed, text, at);
  if (whole) return readFraction(whole[0], [whole[1], whole[2], whole[3]], at);
  const part = match(fraction, text, at);
  if (part) return readFraction(part[0], ["", part[1], part[2]], at);
  const single = match(vulgar, text, at);
  const known = single && vulgarFractions.get(single[2] ?? "");
  if (single && known) {
    const value = Number(single[1] || 0) + known[0] / known[1];
    // One character cannot be mistaken for a division, so it does not count as a slashed fraction.
    return { ok: true, value, isFraction: false, hasComma: false, end: at + single[0].length };
  }
  const plain = match(decimal, text, at);
  return plain ? readDecimal(plain[0], text, at) : null;
}

function match(pattern: RegExp, text: string, at: Count): RegExpExecArray | null {
  pattern.lastIndex = at;
  return pattern.exec(text);
}

function readFraction(
  all: string,
  [whole, top, bottom]: readonly (string | undefined)[],
  at: Count,
): ScannedNumber | Misreading {
  if (Number(bottom) === 0) {
    return misread(`${all} divides by zero`, "Write a fraction such as 1/2", at);
  }
  if (whole && Number(top) >= Number(bottom)) {
    return misread(
      `${all} has a fraction that is not less than one`,
      `Write a mixed number such as ${whole} 1/2`,
      at,
    );
  }
  const value = Number(whole || 0) + Number(top) / Number(bottom);
  return { ok: true, value, isFraction: true, hasComma: false, end: at + all.length };
}

function readDecimal(all: string, text: string, at: Count): ScannedNumber | Misreading {
  const end = at + all.length;
  if (/^[.,]\d/.test(text.slice(end)) && all.includes(",") !== text.startsWith(",", end)) {
    return misread("a number has both a point and a comma", `Write ${withoutGroups(text, at)}`, at);
  }
  if (/^[.,]\d/.test(text.slice(end)) && /[.,]/.test(all)) {
    return misread("a number has two points or commas", `Write ${withoutGroups(text, at)}`, at);
  }
  if (all.replace(/\D/g, "").length > longest) {
    return misread("a number has more than 15 digits", "Write a shorter number", at);
  }
  const [head = "", tail] = all.split(",");
  // Could the comma part thousands? 1,000 could; 0,125 and 62,5 and 1234,567 could not.
  if (tail?.length === 3 && head.length <= 3 && head !== "0") {
    return misread(
      `${all} can be read as ${head}${tail} or as ${head}.${tail}`,
      `Write ${head}${tail} or ${head}.${tail}`,
      at,
    );
  }
  const value = Number(all.replace(",", "."));
  return { ok: true, value, isFraction: false, hasComma: tail !== undefined, end };
}

/** 1,234.5 and 1.234,5 as the number they most likely mean: 1234.5. */
function withoutGroups(text: string, at: Count): string {
  const [run = ""] = /^[\d.,]*\d/.exec(text.slice(at)) ?? [];
  const last = Math.max(run.lastIndexOf("."), run.lastIndexOf(","));
  const isGroup = run.indexOf(run.charAt(last)) !== last;
  if (isGroup) return run.replace(/[.,]/g, "");
  return `${run.slice(0, last).replace(/[.,]/g, "")}.${run.slice(last + 1)}`;
}
