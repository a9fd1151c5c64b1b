import type { Count } from "../plane/types.ts";
import type { Sentence } from "./split-sentences.ts";
import { splitSentences } from "./split-sentences.ts";
import type { Project, TextPart, Unit } from "./types.ts";
import { leadingWords, openingWords, workshopVerbs } from "./workshop-verbs.ts";

/** A remark on the author's wording. It stops nothing; `npm run check` prints it. */
export interface TextNote {
  readonly file: string;
  readonly line: Count;
  readonly message: string;
}

/**
 * Most words in a sentence.
 *
 * @source ASD-STE100 Simplified Technical English, rules 5.1 and 6.3 (numbers from memory): 20 words in
 * a procedure, 25 in a description
 */
const mostWords = { action: 20, prose: 25 } as const;

type Proof = (sentence: Sentence, part: TextPart, units: Unit) => string | null;

const proofs: readonly Proof[] = [countWords, startWithVerb, oneAction, cautionFirst, oneSystem];

/** Read the author's text for the rules of good instructions; every note names file and line. */
export function lintText({ file, units, words }: Project): readonly TextNote[] {
  return words.flatMap((part, index) => {
    if (part.kind === "figure") return [];
    const late = cautionAfterStep(part, words[index - 1], words[index + 1]);
    const notes = splitSentences(part.markdown, part.line).flatMap((sentence) =>
      proofs.flatMap((proof) => {
        const message = proof(sentence, part, units);
        return message === null ? [] : [{ file, line: sentence.line, message }];
      }),
    );
    return late === null ? notes : [{ file, line: part.line, message: late }, ...notes];
  });
}

/** One line for the terminal: `content/seat.md:30 text: …`. */
export function formatNote({ file, line, message }: TextNote): string {
  return `${file}:${line} text: ${message}`;
}

function isAction(part: TextPart): boolean {
  return part.kind === "step" || part.kind === "before";
}

function countWords({ text }: Sentence, part: TextPart): string | null {
  const count = text.split(" ").filter((word) => /[\p{L}\p{N}]/u.test(word)).length;
  const most = isAction(part) || part.kind === "caution" ? mostWords.action : mostWords.prose;
  if (count <= most) return null;
  return `a sentence of ${count} words, and ${most} are enough here. Make two of it.`;
}

function startWithVerb({ text }: Sentence, part: TextPart): string | null {
  if (!isAction(part)) return null;
  const first = firstWord(text);
  if (first === null || workshopVerbs.has(first) || /^(do|don’t|don't|never|be)$/.test(first)) {
    return null;
  }
  return `a step starts with its verb, and "${first}" is not one that is known. Write an order, such as Cut or Fold.`;
}

/** The word an action starts with, after words and clauses that may lead up to it. */
function firstWord(text: string): string | null {
  let words = text.replace(/[“”"‘(]/g, "").split(" ");
  while (leadingWords.has(plain(words[0]))) words = words.slice(1);
  if (openingWords.has(plain(words[0]))) {
    const comma = words.findIndex((word) => word.endsWith(","));
    if (comma < 0) return plain(words[0]);
    words = words.slice(comma + 1);
    while (leadingWords.has(plain(words[0]))) words = words.slice(1);
  }
  const word = plain(words[0]);
  return word === "" || /^\d/.test(word) ? null : word;
}

function plain(word: string | undefined): string {
  return (word ?? "").toLowerCase().replace(/[^\p{L}\p{N}’'-]/gu, "");
}

function oneAction({ text }: Sentence, part: TextPart): string | null {
  if (!isAction(part)) return null;
  if (text.includes(";") || /\b(and|,) then\b/i.test(text)) {
    return "a step has one action a sentence. Start a new sentence after the first.";
  }
  const second = [...text.matchAll(/(?:\band|,|\bthen) (\p{L}+)/giu)]
    .map(([, word]) => plain(word))
    .find((word, index) => workshopVerbs.has(word) && !isLedUpTo(text, word, index));
  if (second === undefined) return null;
  return `a step has one action a sentence. Start a new one at "${second}".`;
}

/** Whether a verb only follows an opening clause, as in "When it is dry, sand it". */
function isLedUpTo(text: string, verb: string, index: Count): boolean {
  return index === 0 && openingWords.has(plain(text.split(" ")[0])) && firstWord(text) === verb;
}

function cautionFirst({ text, place }: Sentence, part: TextPart): string | null {
  if (!isAction(part) || place === 0) return null;
  if (!/^(caution|warning|danger|be careful|take care|beware|mind)\b/i.test(text)) return null;
  return "a caution stands before the action. Put it first, or in ::: caution above the step.";
}

function cautionAfterStep(
  part: TextPart,
  before: TextPart | undefined,
  after: TextPart | undefined,
): string | null {
  if (part.kind !== "caution" || before === undefined || !isAction(before)) return null;
  // Does it belong to the step that follows?
  if (after !== undefined && isAction(after)) return null;
  return "a caution stands before the action. Move it above the step.";
}

const metricWords =
  /[\d.,/]*\d\s*(?:mm|cm|m|millimet(?:re|er)s?|centimet(?:re|er)s?|met(?:re|er)s?)\b/i;
const inchWords =
  /[\d.,/]*\d\s*(?:["″]|inch(?:es)?\b|ft\b|feet\b|foot\b|yd\b|yards?\b|in(?=[.,;:)]|$| (?:wide|long|deep|high|thick|from|apart|of|by|×)\b))/i;

function oneSystem({ text }: Sentence, _part: TextPart, units: Unit): string | null {
  const found = (units === "in" ? metricWords : inchWords).exec(text)?.[0];
  if (found === undefined) return null;
  return `"${found.trim()}" is not in the unit of this booklet, ${units}. Write {{ … }} to have it printed in ${units}.`;
}
