import { z } from "zod";
import { tell } from "./tell.ts";

/** An object with no keys but these. Unknown ones are named by `explain-issues.ts`. */
export function record<S extends z.core.$ZodLooseShape>(shape: S, expected: string, fix: string) {
  return z.strictObject(shape, {
    error: (issue) =>
      issue.code === "unrecognized_keys"
        ? Object.keys(shape).join(" ")
        : tell(expected, fix).error(),
  });
}

/** A map from names of the author's choosing. */
export function named<V extends z.core.$ZodType>(value: V, what: string) {
  return z.record(identifier, value, tell(what, "Write name: value, one a line, set in"));
}

/** A text of a certain form. What is no text at all is told in the same words. */
export function matching(form: RegExp, expected: string, fix: string) {
  return z.string(tell(expected, fix)).regex(form, tell(expected, fix));
}

export const identifier = matching(
  /^[A-Za-z][A-Za-z0-9-]{0,39}$/,
  "a name of letters, digits and hyphens that starts with a letter",
  "Write a name such as seat-foam",
);

export const slug = matching(
  /^[a-z0-9]+(-[a-z0-9]+)*$/,
  "a name of small letters, digits and hyphens",
  "Write a name such as small",
);

export const dimensionName = matching(
  // Latin, Greek and Cyrillic letters by range: editors read this pattern without the u flag.
  /^[A-Za-z_\u00c0-\u00d6\u00d8-\u00f6\u00f8-\u024f\u0370-\u04ff](?:-?[\w\u00c0-\u00d6\u00d8-\u00f6\u00f8-\u024f\u0370-\u04ff]){0,39}$/,
  "a name of letters, digits and single hyphens that starts with a letter",
  "Write a name such as seat-depth",
);

export const lengthExample = "a length such as 1.5 cm or 1/2 in";
const lengthFix = "Write a number, a number with its unit, or a formula over dimensions";

/** A length, or a formula. Read by `read-length.ts` once the dimensions are known. */
export const length = z
  .union([z.number(), z.string()], tell(lengthExample, lengthFix))
  .meta({ description: "A length: 24, 24 1/2 in, 45 cm, or a formula such as 2 * depth + 3" });

const listFix =
  "Write them as a list in square brackets; quote a decimal comma, as in ['62,5', 40]";

export const twoLengths = z.tuple([length, length], tell("two lengths", listFix));
export const threeLengths = z.tuple([length, length, length], tell("three lengths", listFix));
export const place = threeLengths.meta({
  description: "Where its front left bottom corner is: across, to the back, up",
});
export const corners = z
  .array(z.tuple([length, length], tell("a corner of two lengths such as [0, 40]", listFix)), {
    ...tell("a list of corners such as [[0,0],[40,0],[40,30]]", listFix),
  })
  .meta({ description: "Corners in order, the first not repeated at the end" });

const textFix = "Put the words on one line, in quotes if they are a number or hold a colon";
export const text = z
  .string(tell("words", textFix))
  .min(1, tell("words", textFix))
  .max(400, tell("at most 400 characters", "Move the rest into the text below the front matter"));

export const wholeNumber = z
  .number(tell("a whole number", "Write digits only"))
  .int(tell("a whole number", "Write digits only"))
  .min(0, tell("a whole number from 0 up", "Write digits only"))
  .max(10_000, tell("a whole number up to 10000", "Write a smaller number"));

export const positiveCount = wholeNumber.min(
  1,
  tell("a whole number from 1 up", "Write 1 or more, or take the line out"),
);

export const price = z
  .union(
    [z.number(), z.string()],
    tell("a price such as 9 each or 14 per m", "Leave the currency out"),
  )
  .meta({ description: "A price without its currency: 9 each, 14 per m, 12 per yd" });

export const axis = oneOf(["x", "y", "z"]);

/** One word out of a few. */
export function oneOf<const W extends readonly [string, ...string[]]>(words: W) {
  const list = words.join(", ");
  return z.enum(words, tell(`one of ${list}`, `Write one of ${list}`));
}

export const faceName = z
  .string(tell("the name of a face such as pad/back", "Write block/side"))
  .meta({ description: "A face: <block>/<side>, such as pad/back" });

export const yesOrNo = z.boolean(tell("true or false", "Write true or false"));
