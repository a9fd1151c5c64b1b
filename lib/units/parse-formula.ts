import { lengthUnits, unitsInside } from "./length-units.ts";
import { misread } from "./misread.ts";
import { scanTokens } from "./scan-tokens.ts";
import type { Expression, Misreading, Token } from "./types.ts";

type Parsed = Expression | Misreading;

/** Where the parser stands. Lives only inside one call. */
interface Cursor {
  readonly tokens: readonly Token[];
  next: number;
  /** Brackets and signs opened so far. */
  depth: number;
  /** Inside min( ) or max( ), where a comma parts two sizes. */
  calls: number;
}

const longestFormula = 200;
const deepestNesting = 32;

/**
 * Turn a formula into a tree. Nothing is ever run: only numbers, units, names, + - * / ( ), min, max.
 *
 * @source our choice: at most 200 characters and 32 nested brackets, far beyond any sensible size
 */
export function parseFormula(text: string, known: ReadonlySet<string> = new Set()): Parsed {
  if (text.trim() === "") return misread("the length is empty", "Write a length such as 45 cm");
  if (text.length > longestFormula) {
    return misread("a formula has more than 200 characters", "Name its parts in dimensions");
  }
  const tokens = scanTokens(text, known);
  if ("ok" in tokens) return tokens;
  const cursor: Cursor = { tokens, next: 0, depth: 0, calls: 0 };
  const whole = parseSum(cursor);
  if (isMisreading(whole)) return whole;
  const rest = peek(cursor);
  return rest.kind === "end" ? whole : unexpected(rest);
}

export function isMisreading(parsed: Parsed): parsed is Misreading {
  return "ok" in parsed;
}

function parseSum(cursor: Cursor): Parsed {
  let left = parseProduct(cursor);
  for (;;) {
    const token = peek(cursor);
    if (isMisreading(left) || token.kind !== "mark") return left;
    if (token.mark !== "+" && token.mark !== "-") return left;
    cursor.next += 1;
    const right = parseProduct(cursor);
    if (isMisreading(right)) return right;
    left = { kind: "binary", operator: token.mark, left, right, at: token.at };
  }
}

function parseProduct(cursor: Cursor): Parsed {
  let left = parseSigned(cursor);
  for (;;) {
    const token = peek(cursor);
    if (isMisreading(left) || token.kind !== "mark") return left;
    if (token.mark !== "*" && token.mark !== "/") return left;
    cursor.next += 1;
    const after = peek(cursor);
    if (token.mark === "/" && after.kind === "number" && after.isFraction) {
      return misread(
        "dividing by a fraction without brackets can be read two ways",
        "Put the fraction in brackets, such as length / (2/3)",
        after.at,
      );
    }
    const right = parseSigned(cursor);
    if (isMisreading(right)) return right;
    left = { kind: "binary", operator: token.mark, left, right, at: token.at };
  }
}

function parseSigned(cursor: Cursor): Parsed {
  const token = peek(cursor);
  if (token.kind !== "mark" || (token.mark !== "-" && token.mark !== "+")) return parseSize(cursor);
  cursor.depth += 1;
  if (cursor.depth > deepestNesting) return tooDeep(token);
  cursor.next += 1;
  const of = parseSigned(cursor);
  cursor.depth -= 1;
  if (isMisreading(of) || token.mark === "+") return of;
  return { kind: "negate", of, at: token.at };
}

function parseSize(cursor: Cursor): Parsed {
  const token = peek(cursor);
  if (token.kind === "number") return parseNumber(cursor, token);
  if (token.kind === "name") {
    cursor.next += 1;
    if (token.name === "min" || token.name === "max")
      return parseCall(cursor, token.name, token.at);
    const after = peek(cursor);
    if (after.kind === "mark" && after.mark === "(") {
      return misread(`${token.name} is not something to work out with`, "Use min or max", token.at);
    }
    return { kind: "name", name: token.name, at: token.at };
  }
  if (token.kind === "mark" && token.mark === "(") {
    cursor.depth += 1;
    if (cursor.depth > deepestNesting) return tooDeep(token);
    cursor.next += 1;
    const calls = cursor.calls;
    cursor.calls = 0;
    const inside = parseSum(cursor);
    cursor.calls = calls;
    cursor.depth -= 1;
    return isMisreading(inside) ? inside : closeBracket(cursor, inside);
  }
  return unexpected(token);
}

function parseNumber(cursor: Cursor, token: Token & { readonly kind: "number" }): Parsed {
  if (token.hasComma && cursor.calls > 0) {
    return misread(
      "a comma between two digits inside min or max can be read two ways",
      "Put a space after a comma that parts two sizes, and use a point for decimals",
      token.at,
    );
  }
  cursor.next += 1;
  const first = peek(cursor);
  if (first.kind !== "unit") return { kind: "number", value: token.value, at: token.at };
  cursor.next += 1;
  let unit = first.unit;
  let value = token.value * lengthUnits[unit];
  // Does a smaller unit follow, as in 2 ft 3 in?
  for (;;) {
    const number = peek(cursor);
    const after = cursor.tokens[cursor.next + 1];
    if (number.kind !== "number" || after?.kind !== "unit") break;
    if (!unitsInside[unit].includes(after.unit)) break;
    unit = after.unit;
    value += number.value * lengthUnits[unit];
    cursor.next += 2;
  }
  return { kind: "length", value, at: token.at };
}

function parseCall(cursor: Cursor, name: "min" | "max", at: number): Parsed {
  const open = peek(cursor);
  if (open.kind !== "mark" || open.mark !== "(") {
    return misread(`${name} needs brackets`, `Write ${name}(a, b)`, open.at);
  }
  cursor.depth += 1;
  if (cursor.depth > deepestNesting) return tooDeep(open);
  const of: Expression[] = [];
  cursor.calls += 1;
  let token: Token;
  do {
    cursor.next += 1;
    const one = parseSum(cursor);
    if (isMisreading(one)) return one;
    of.push(one);
    token = peek(cursor);
  } while (token.kind === "mark" && token.mark === ",");
  cursor.calls -= 1;
  cursor.depth -= 1;
  return closeBracket(cursor, { kind: "call", name, of, at });
}

function closeBracket(cursor: Cursor, inside: Expression): Parsed {
  const token = peek(cursor);
  if (token.kind !== "mark" || token.mark !== ")") {
    if (token.kind !== "end") return unexpected(token);
    return misread("a bracket is not closed", "Add the missing )", token.at);
  }
  cursor.next += 1;
  return inside;
}

function peek(cursor: Cursor): Token {
  return cursor.tokens[cursor.next] ?? { kind: "end", at: 0 };
}

function tooDeep(token: Token): Misreading {
  return misread("brackets are nested too deep", "Name the parts in dimensions", token.at);
}

function unexpected(token: Token): Misreading {
  switch (token.kind) {
    case "number":
      return misread(
        "two numbers stand side by side",
        "Write 1000 without a gap, a fraction as 24 1/2, a second unit as in 2 ft 3 in, or put a sign between",
        token.at,
      );
    case "unit":
      return misread(`the unit ${token.unit} has no number`, `Write 2 ${token.unit}`, token.at);
    case "name":
      return misread(`${token.name} is not a unit`, "Use mm, cm, m, in, ft or yd", token.at);
    case "mark":
      return misread(
        `${token.mark} is out of place`,
        "Write a formula such as 2 * depth + 3",
        token.at,
      );
    case "end":
      return misread(
        "the formula stops half way",
        "Finish it, or take the last sign away",
        token.at,
      );
  }
}
