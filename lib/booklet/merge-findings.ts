import type { Finding, Severity } from "../checks/types.ts";

/** A finding, or several of one kind with the same remedy made one. */
export interface MergedFinding extends Finding {
  /** What differs from one to the next; empty for a finding on its own. */
  readonly items: readonly string[];
}

const order: readonly Severity[] = ["danger", "warning", "caution", "note"];

/** Findings by their gravity, those of one gravity in the order they came. */
export const gravestFirst = (findings: readonly Finding[]): readonly Finding[] =>
  findings.toSorted((a, b) => order.indexOf(a.severity) - order.indexOf(b.severity));

/** Findings of one kind, gravity, remedy and source become one message with a list of what differs. */
export function mergeFindings(findings: readonly Finding[]): readonly MergedFinding[] {
  const groups = new Map<string, Finding[]>();
  for (const finding of findings) {
    const { severity, remedy, source } = finding;
    const key = JSON.stringify([kindOf(finding), severity, remedy, source]);
    groups.set(key, [...(groups.get(key) ?? []), finding]);
  }
  return [...groups.values()].map(mergeGroup);
}

/** "foam-tolerance/seat/long" is of the kind "foam-tolerance". */
const kindOf = ({ id }: Finding): string => id.split("/")[0] ?? id;

function mergeGroup(group: readonly Finding[]): MergedFinding {
  const first = group[0]!;
  const messages = group.map(({ message }) => sentencesOf(message));
  if (group.length === 1) return { ...first, items: [] };
  const isShared = (sentence: string): boolean =>
    messages.every((message) => message.includes(sentence));
  const items = messages.map((message) => message.filter((each) => !isShared(each)).join(" "));
  return {
    ...first,
    message: messages[0]!.filter(isShared).join(" "),
    items: [...new Set(items)].filter((item) => item !== ""),
  };
}

const sentencesOf = (text: string): readonly string[] => text.split(/(?<=[.!?])\s+(?=[A-Z0-9])/);
