import type { Mm } from "../plane/types.ts";
import { misread } from "./misread.ts";
import { nearestWord } from "./nearest-word.ts";
import type { Expression, Misreading, NamedSizes } from "./types.ts";

/**
 * A value on its way to being a length. `bare` is a number as written, which may still turn out to be
 * a count or a length; `ratio` is one length divided by another and can never be a length again.
 */
export interface Quantity {
  readonly kind: "bare" | "ratio" | "length";
  readonly value: number;
}

type Worked = Quantity | Misreading;

/** Work a formula out. `unit` is the mm of the unit that bare numbers are in. */
export function workOut(
  expression: Expression,
  given: { readonly names: NamedSizes; readonly unit: Mm },
): Worked {
  switch (expression.kind) {
    case "number":
      return { kind: "bare", value: expression.value };
    case "length":
      return { kind: "length", value: expression.value };
    case "name":
      return lookUp(expression.name, given.names, expression.at);
    case "negate": {
      const of = workOut(expression.of, given);
      return "ok" in of ? of : { kind: of.kind, value: -of.value };
    }
    case "binary": {
      const left = workOut(expression.left, given);
      if ("ok" in left) return left;
      const right = workOut(expression.right, given);
      if ("ok" in right) return right;
      return combine(expression, [left, right], given.unit);
    }
    case "call": {
      const values: Quantity[] = [];
      for (const each of expression.of) {
        const value = workOut(each, given);
        if ("ok" in value) return value;
        values.push(value);
      }
      const same = alike(values, given.unit, expression.at);
      if ("ok" in same) return same;
      const pick = expression.name === "min" ? Math.min : Math.max;
      return { kind: same.kind, value: pick(...same.values) };
    }
  }
}

function lookUp(name: string, names: NamedSizes, at: number): Worked {
  const value = names.get(name);
  if (value === null)
    return { ...misread(`${name} has a fault of its own`, "", at), isFollowOn: true };
  if (value !== undefined) return { kind: "length", value };
  const known = [...names.keys()];
  const nearest = nearestWord(name, known);
  const fault = `${name} is not a name listed in dimensions`;
  if (nearest !== null) return misread(fault, `Write ${nearest} if that was meant`, at);
  if (known.length === 0)
    return misread(fault, `Write a number, or list ${name} in dimensions`, at);
  return misread(fault, `Write a number, or one of ${known.join(", ")}`, at);
}

function combine(
  { operator, at }: Expression & { readonly kind: "binary" },
  [left, right]: readonly [Quantity, Quantity],
  unit: Mm,
): Worked {
  switch (operator) {
    case "+":
    case "-": {
      const same = alike([left, right], unit, at);
      if ("ok" in same) return same;
      const [first = 0, second = 0] = same.values;
      return { kind: same.kind, value: operator === "+" ? first + second : first - second };
    }
    case "*":
      if (left.kind === "length" && right.kind === "length") {
        return misread("two lengths multiplied make an area", "Multiply by a plain number", at);
      }
      return { kind: strongest(left, right), value: left.value * right.value };
    case "/":
      if (right.value === 0)
        return misread("the formula divides by zero", "Divide by another size", at);
      if (right.kind !== "length") {
        return { kind: strongest(left, right), value: left.value / right.value };
      }
      if (left.kind === "length") return { kind: "ratio", value: left.value / right.value };
      return misread(
        "a plain number divided by a length is not a length",
        "Divide a length by a plain number, or write a fraction without gaps, such as 5/8 in",
        at,
      );
  }
}

function strongest(left: Quantity, right: Quantity): Quantity["kind"] {
  if (left.kind === "length" || right.kind === "length") return "length";
  return left.kind === "ratio" || right.kind === "ratio" ? "ratio" : "bare";
}

interface Alike {
  readonly kind: Quantity["kind"];
  readonly values: readonly number[];
}

/** Bring values to one kind: bare numbers become lengths beside a length. */
function alike(values: readonly Quantity[], unit: Mm, at: number): Alike | Misreading {
  const hasLength = values.some(({ kind }) => kind === "length");
  const hasRatio = values.some(({ kind }) => kind === "ratio");
  if (hasLength && hasRatio) {
    return misread(
      "a length and a plain ratio are put together",
      "Multiply the ratio by a length first",
      at,
    );
  }
  const inUnit = ({ kind, value }: Quantity) =>
    hasLength && kind === "bare" ? value * unit : value;
  return {
    kind: hasLength ? "length" : hasRatio ? "ratio" : "bare",
    values: values.map(inUnit),
  };
}
