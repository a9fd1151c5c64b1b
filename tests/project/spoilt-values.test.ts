import { expect, test } from "vitest";
import { parse } from "yaml";
import { readProject } from "../../lib/project/read-project.ts";
import { fixture } from "./project-text.ts";

type Value = Readonly<Record<string, unknown>> | readonly unknown[];
type Way = readonly string[];

const [, front = "", body = ""] = /^---\n([\s\S]*?)\n---\n([\s\S]*)$/.exec(
  fixture("every-key").text,
)!;
const whole = parse(front) as Value;

const isNested = (value: unknown): value is Value => typeof value === "object" && value !== null;

const waysInto = (value: Value, way: Way = []): readonly Way[] =>
  Object.entries(value).flatMap(([key, held]) => [
    [...way, key],
    ...(isNested(held) ? waysInto(held, [...way, key]) : []),
  ]);

/** The same value with the one at the end of a way changed, or taken out where there is nothing to put. */
function changed(value: Value, [key = "", ...rest]: Way, put: unknown): Value {
  const held = (value as Readonly<Record<string, unknown>>)[key];
  const own = rest.length > 0 ? changed(held as Value, rest, put) : put;
  if (Array.isArray(value)) {
    return value.flatMap((one: unknown, i) =>
      String(i) !== key ? [one] : own === undefined ? [] : [own],
    );
  }
  const entries = Object.entries(value).map(([name, one]) => [name, name === key ? own : one]);
  return Object.fromEntries(entries.filter(([, one]) => one !== undefined)) as Value;
}

// What people leave behind by mistake, and what no key takes.
const spoilers: readonly unknown[] = [undefined, null, "", "?", -3, 1e9, true, [], {}, [[]]];

test.each(spoilers.map((put) => ({ put })))(
  "with $put for any value of a file, each fault is one line in plain words",
  ({ put }) => {
    const messages = waysInto(whole).flatMap((way) => {
      // JSON is YAML too.
      const text = `---\n${JSON.stringify(changed(whole, way, put), null, 1)}\n---\n${body}`;
      return readProject({ file: "content/spoilt.md", text }).faults.map(({ message }) => message);
    });
    expect(messages.length).toBeGreaterThan(50);
    const unclear = messages.filter(
      (message) =>
        !/^content\/spoilt\.md:\d+ \S.*: .+\. [A-Z].+\.$/.test(message) ||
        /Invalid|undefined|NaN|\[object/.test(message),
    );
    expect(unclear).toEqual([]);
  },
);
