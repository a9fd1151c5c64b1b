import type { Count, Mm, Ratio } from "../plane/types.ts";

/** The unit bare numbers are in and the booklet prints in. */
export type Unit = "in" | "cm" | "mm";

/** Every unit a length may be written in. */
export type LengthUnit = "mm" | "cm" | "m" | "in" | "ft" | "yd";

/** How lengths print. A whole `Project` fits here. */
export interface LengthStyle {
  readonly units: Unit;
  /** Step that inches are rounded to: 1/8 by default, always one over a power of two. */
  readonly round: Ratio;
}

/** What became of reading a text: a value, or what is wrong, where, and how to mend it. */
export type Reading<T> = { readonly ok: true; readonly value: T } | Misreading;

export interface Misreading {
  readonly ok: false;
  /** What is wrong, without a full stop. */
  readonly fault: string;
  /** How to mend it, without a full stop. */
  readonly fix: string;
  /** Character in the text, counted from 0. */
  readonly at: Count;
  /** True when it only follows from a name whose own fault is already known. */
  readonly isFollowOn: boolean;
}

/** Named sizes a formula may use. Null marks a name whose own size could not be read. */
export type NamedSizes = ReadonlyMap<string, Mm | null>;

/** A formula as a tree. `at` is the character it starts at, or that its operator stands at. */
export type Expression =
  | { readonly kind: "number"; readonly value: number; readonly at: Count }
  | { readonly kind: "length"; readonly value: Mm; readonly at: Count }
  | { readonly kind: "name"; readonly name: string; readonly at: Count }
  | { readonly kind: "negate"; readonly of: Expression; readonly at: Count }
  | {
      readonly kind: "binary";
      readonly operator: "+" | "-" | "*" | "/";
      readonly left: Expression;
      readonly right: Expression;
      readonly at: Count;
    }
  | {
      readonly kind: "call";
      readonly name: "min" | "max";
      readonly of: readonly Expression[];
      readonly at: Count;
    };

/** The smallest parts of a formula. */
export type Token =
  | {
      readonly kind: "number";
      readonly value: number;
      /** Written with a slash, such as 5/8 or 1 1/2. */
      readonly isFraction: boolean;
      /** Written with a decimal comma. */
      readonly hasComma: boolean;
      readonly at: Count;
    }
  | { readonly kind: "unit"; readonly unit: LengthUnit; readonly at: Count }
  | { readonly kind: "name"; readonly name: string; readonly at: Count }
  | { readonly kind: "mark"; readonly mark: Mark; readonly at: Count }
  | { readonly kind: "end"; readonly at: Count };

export type Mark = "+" | "-" | "*" | "/" | "(" | ")" | ",";

/** A length ready to be set in type. `numerator` is 0 when there is no fraction. */
export interface LengthParts {
  readonly isNegative: boolean;
  /** Whole units, or the number with its decimals: "24", "62.5", or "" when there is only a fraction. */
  readonly whole: string;
  readonly numerator: Count;
  readonly denominator: Count;
  readonly unit: Unit;
  /** The value in full, such as "17.717 in", where the printed figure is not the true one. */
  readonly exact: string | null;
}
