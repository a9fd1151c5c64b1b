import { isAlias, isMap, isScalar, isSeq, LineCounter, parseDocument } from "yaml";
import type { Node, Pair } from "yaml";
import type { Count } from "../plane/types.ts";
import { explainYaml } from "./explain-yaml.ts";
import type { Fault } from "./types.ts";

/** Front matter as plain values, with the line of every dotted field. */
export interface Tree {
  readonly value: unknown;
  readonly lines: Readonly<Record<string, Count>>;
  readonly faults: readonly LinedFault[];
  /** False when the YAML itself is broken, so that its values mean nothing. */
  readonly isSound: boolean;
}

export interface LinedFault extends Fault {
  readonly line: Count;
}

/** Where the walk collects what it finds. Lives only inside one call. */
interface Walk {
  readonly lineOf: (node: Node | null) => Count;
  readonly lines: Record<string, Count>;
  readonly faults: LinedFault[];
}

const deepest = 12;
const forbiddenKeys = new Set(["__proto__", "constructor", "prototype"]);

/**
 * Read YAML 1.2 without anything that could surprise: no anchors, no aliases, no tags, no merge, no
 * keys that mean something to the language this is written in. Dates and words like "no" stay text.
 *
 * @param firstLine line of the file that the first line of the text is
 */
export function readTree(text: string, firstLine: Count): Tree {
  const counter = new LineCounter();
  const lineAt = (offset: Count) => Math.max(1, counter.linePos(offset).line) + firstLine - 1;
  const lines: Record<string, Count> = Object.create(null) as Record<string, Count>;
  const broken = (line: Count, fault: string, fix: string): Tree => {
    const faults = [{ line, field: "front matter", fault, fix }];
    return { value: {}, lines, faults, isSound: false };
  };
  let document;
  try {
    document = parseDocument(text, {
      lineCounter: counter,
      prettyErrors: false,
      logLevel: "silent",
      merge: false,
      version: "1.2",
    });
  } catch (error) {
    // Brackets thousands deep exhaust the parser's stack.
    if (!(error instanceof RangeError)) throw error;
    return broken(firstLine, "it is nested too deep", "Write it flatter");
  }
  const faults: LinedFault[] = document.errors.map((error) => ({
    line: lineAt(error.pos[0]),
    field: "front matter",
    ...explainYaml(error.code, error.message),
  }));
  if (faults.length > 0) return { value: {}, lines, faults, isSound: false };
  const lineOf = (node: Node | null) => lineAt(node?.range?.[0] ?? 0);
  const walk: Walk = { lineOf, lines, faults };
  if (!isMap(document.contents)) {
    return broken(firstLine, "it is not a map of keys and values", "Write title: and units: first");
  }
  return { value: readNode(document.contents, "", 0, walk), lines, faults, isSound: true };
}

function readNode(node: unknown, field: string, depth: Count, walk: Walk): unknown {
  const refuse = (fault: string, fix: string): undefined => {
    const line = walk.lines[field] ?? walk.lineOf(node as Node | null);
    walk.faults.push({ line, field: field || "front matter", fault, fix });
    return undefined;
  };
  if (isAlias(node)) return refuse("uses an alias (*)", "Write the value out, or use a dimension");
  if (!isMap(node) && !isSeq(node) && !isScalar(node)) return refuse(...empty);
  if (node.anchor !== undefined) {
    return refuse("uses an anchor (&)", "Write the value out, or use a dimension");
  }
  if (node.tag !== undefined && !isPlainTag(node.tag)) {
    return refuse(`uses the tag ${node.tag}`, "Write the plain value");
  }
  if (depth > deepest) return refuse("is nested too deep", "Write it flatter");
  if (isSeq(node)) {
    return node.items.map((item, index) => {
      const inner = join(field, String(index));
      walk.lines[inner] = walk.lineOf(item as Node | null);
      return readNode(item, inner, depth + 1, walk);
    });
  }
  if (isMap(node)) return readMap(node.items, field, depth, walk);
  // A version keeps its noughts: 1.20 is not 1.2.
  if (field === "version" && typeof node.value === "number") return node.source;
  return readScalar(node.value, node.source, refuse);
}

const empty = ["has no value", "Write one, or take the line out"] as const;

function readMap(
  items: readonly Pair<unknown, unknown>[],
  field: string,
  depth: Count,
  walk: Walk,
): Readonly<Record<string, unknown>> {
  const map: Record<string, unknown> = {};
  for (const { key, value } of items) {
    const name = isScalar(key) ? String(key.source ?? key.value) : "?";
    const inner = join(field, name);
    const line = walk.lineOf(key as Node | null);
    const isForbidden = forbiddenKeys.has(name);
    if (!isScalar(key) || isForbidden || key.anchor !== undefined || name === "<<") {
      const fault = isForbidden ? "is not a key that can be used" : "is not a plain key";
      walk.faults.push({ line, field: inner, fault, fix: "Write a plain word before the colon" });
      continue;
    }
    walk.lines[inner] = line;
    const read = readNode(value, inner, depth + 1, walk);
    if (read !== undefined) map[name] = read;
  }
  return map;
}

function readScalar(
  value: unknown,
  source: string | undefined,
  refuse: (fault: string, fix: string) => undefined,
): unknown {
  if (value === null || value === "") return refuse(...empty);
  if (typeof value === "number") {
    if (Number.isFinite(value)) return value;
    return refuse(`is ${source ?? String(value)}, not a number`, "Write a number");
  }
  // Control characters would break the printed page.
  if (typeof value === "string" && /[\0-\x08\x0b\x0c\x0e-\x1f\x7f]/.test(value)) {
    return refuse("holds a control character", "Take it out");
  }
  return typeof value === "string" || typeof value === "boolean" ? value : refuse(...empty);
}

/** Tags that YAML gives by itself, such as that of a quoted string. */
function isPlainTag(tag: string): boolean {
  return /^tag:yaml\.org,2002:(map|seq|str|int|float|bool|null)$/.test(tag);
}

function join(field: string, key: string): string {
  return field === "" ? key : `${field}.${key}`;
}
