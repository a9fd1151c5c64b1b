import table from "../../shared/tables/imperative-verbs.json" with { type: "json" };
import tools from "../../shared/tables/tools.json" with { type: "json" };
import { cautionOf } from "./cautions-for.ts";
import { countWords, mostWords } from "./count-words.ts";
import { mostInGroup } from "./split-groups.ts";
import type { Step } from "./types.ts";

const verbs = new Set(table.verbs);
const secondVerb = new RegExp(
  `\\band (${table.verbs.map((verb) => verb.toLowerCase()).join("|")})\\b`,
);
const toolNames = new Set(tools.rows.map(({ name }) => name));

/**
 * Everything in a list of steps that breaks the rules for steps, one line each; empty when all is well.
 * `supplied` are the things that are there from the start.
 *
 * @source ASD-STE100 (one command, at most 20 words); ANSI Z535.6 (caution before the action);
 * Novick and Morse 2000 (few steps a group)
 */
export function lintSteps(steps: readonly Step[], supplied: readonly string[]): string[] {
  return [
    ...lintIds(steps),
    ...steps.flatMap(lintActions),
    ...lintNames(steps),
    ...lintSupply(steps, supplied),
    ...steps.flatMap(lintCautions),
    ...lintGroups(steps),
  ];
}

function lintIds(steps: readonly Step[]): string[] {
  const ids = steps.map(({ id }) => id);
  return ids.filter((id, index) => ids.indexOf(id) !== index).map((id) => `${id}: used twice`);
}

function lintActions({ id, actions }: Step): string[] {
  return actions.flatMap((action) => {
    const first = action.split(/[\s,:]/)[0] ?? "";
    return [
      ...(verbs.has(first) ? [] : [`${id}: "${action}" does not start with a known verb`]),
      ...(countWords(action) <= mostWords
        ? []
        : [`${id}: "${action}" has ${countWords(action)} words`]),
      ...(action.includes(";") || / and then /.test(action) || secondVerb.test(action)
        ? [`${id}: "${action}" has two actions`]
        : []),
      ...(action.endsWith(".") ? [] : [`${id}: "${action}" has no full stop`]),
      ...(/undefined|NaN|Infinity/.test(action) ? [`${id}: "${action}" has a hole in it`] : []),
    ];
  });
}

/** Every part or tool named in an action is among those the step uses or makes. */
function lintNames(steps: readonly Step[]): string[] {
  const words = [...new Set(steps.flatMap(({ uses }) => uses))].toSorted(
    (one, other) => other.length - one.length || one.localeCompare(other, "en"),
  );
  return steps.flatMap(({ id, actions, uses, makes }) => {
    const allowed = new Set([...uses, ...makes]);
    return actions.flatMap((action) => {
      let rest = action;
      return words.flatMap((word) => {
        const pattern = new RegExp(`(?<![\\w-])${escape(word)}(?![\\w-])`, "g");
        if (!pattern.test(rest)) return [];
        rest = rest.replaceAll(pattern, "·");
        return allowed.has(word) || isPlainWord(word)
          ? []
          : [`${id}: "${action}" names ${word}, which it does not use`];
      });
    });
  });
}

/** A one-word name such as "pad" or "lid" is also a word of the language, so it proves nothing. */
function isPlainWord(word: string): boolean {
  return !word.includes(" ") && !toolNames.has(word);
}

/** Every part is there from the start, or made by an earlier step. */
function lintSupply(steps: readonly Step[], supplied: readonly string[]): string[] {
  const there = new Set([...supplied, ...toolNames]);
  return steps.flatMap(({ id, uses, makes }) => {
    const missing = uses
      .filter((name) => !there.has(name))
      .map((name) => `${id}: uses ${name}, which nothing has made`);
    for (const name of makes) there.add(name);
    return missing;
  });
}

function lintCautions({ id, uses, cautions }: Step): string[] {
  const given = new Set(cautions.map((one) => one.id));
  return uses.flatMap((name) => {
    const needed = cautionOf(name);
    return needed === null || given.has(needed)
      ? []
      : [`${id}: uses ${name} without the caution ${needed}`];
  });
}

function lintGroups(steps: readonly Step[]): string[] {
  const groups = [...new Set(steps.map(({ group }) => group))];
  return groups.flatMap((group) => {
    const count = steps.filter((step) => step.group === group).length;
    return count <= mostInGroup ? [] : [`${group}: ${count} steps in one group`];
  });
}

function escape(text: string): string {
  return text.replace(/[.*+?^${}()|[\]\\]/g, "\\$&");
}
