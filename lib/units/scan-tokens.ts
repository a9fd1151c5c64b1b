import type { Count } from "../plane/types.ts";
import { unitWords } from "./length-units.ts";
import { misread } from "./misread.ts";
import { scanNumber } from "./scan-number.ts";
import type { Mark, Misreading, Token } from "./types.ts";

const word = /[\p{L}_][\p{L}\p{N}_]*/uy;
const hyphened = /[\p{L}_][\p{L}\p{N}_]*(?:-[\p{L}\p{N}_]+)+/uy;
const unitSign = /''|′′|["″”'′’]/y;

/** Signs of formulas as authors write them, and what they mean. */
const marks: ReadonlyMap<string, Mark> = new Map([
  ["+", "+"],
  ["-", "-"],
  ["−", "-"],
  ["*", "*"],
  ["×", "*"],
  ["·", "*"],
  ["/", "/"],
  ["÷", "/"],
  ["(", "("],
  [")", ")"],
  [",", ","],
  [";", ","],
]);

/**
 * Cut a formula into numbers, units, names and signs; the last token is always `end`.
 *
 * @param known names of dimensions: one with hyphens, such as seat-depth, is told from a subtraction
 *   only by being known; the longest known name wins
 */
export function scanTokens(
  text: string,
  known: ReadonlySet<string> = new Set(),
): readonly Token[] | Misreading {
  const tokens: Token[] = [];
  let at: Count = 0;
  while (at < text.length) {
    if (/\s/.test(text.charAt(at))) {
      at += 1;
      continue;
    }
    const number = scanNumber(text, at);
    if (number && !number.ok) return number;
    if (number) {
      const { value, isFraction, hasComma } = number;
      tokens.push({ kind: "number", value, isFraction, hasComma, at });
      at = number.end;
      continue;
    }
    const [token, length] = scanWord(text, at, known);
    if (!token) {
      return misread(
        `${JSON.stringify(text.charAt(at))} has no meaning in a length`,
        "Use numbers, units, names of dimensions, + - * / ( ), min and max",
        at,
      );
    }
    tokens.push(token);
    at += length;
  }
  return [...tokens, { kind: "end", at }];
}

function scanWord(
  text: string,
  at: Count,
  known: ReadonlySet<string>,
): readonly [Token | null, Count] {
  const name = scanHyphened(text, at, known);
  if (name !== null) return [{ kind: "name", name, at }, name.length];
  for (const pattern of [word, unitSign]) {
    pattern.lastIndex = at;
    const found = pattern.exec(text)?.[0];
    if (found === undefined) continue;
    const unit = unitWords.get(found);
    return [unit ? { kind: "unit", unit, at } : { kind: "name", name: found, at }, found.length];
  }
  const mark = marks.get(text.charAt(at));
  return [mark ? { kind: "mark", mark, at } : null, 1];
}

/** The longest known name with hyphens that starts here, or null. */
function scanHyphened(text: string, at: Count, known: ReadonlySet<string>): string | null {
  hyphened.lastIndex = at;
  const parts = hyphened.exec(text)?.[0].split("-") ?? [];
  for (let length = parts.length; length > 1; length--) {
    const name = parts.slice(0, length).join("-");
    if (known.has(name)) return name;
  }
  return null;
}
