import { openHyphens } from "./open-hyphens.ts";
import type { Severity } from "../checks/types.ts";
import type { Shortfall } from "../packing/types.ts";
import type { Caution } from "../steps/types.ts";
import type { Cite } from "./cite-sources.ts";
import type { MergedFinding } from "./merge-findings.ts";
import type { Notice } from "./pages.ts";

/**
 * The word that stands over each box.
 * @source ANSI Z535.6: DANGER will, WARNING could cause death or serious injury, CAUTION minor or
 * moderate injury; NOTICE is not about injury
 */
const signals = {
  danger: "DANGER",
  warning: "WARNING",
  caution: "CAUTION",
  note: "NOTICE",
} as const satisfies Record<Severity, Notice["signal"]>;

/** A finding as a boxed message: what, the cases of it, then what to do. */
export const findingNotice = (finding: MergedFinding, cite: Cite): Notice => ({
  id: `finding-${slugOf(finding.id)}`,
  severity: finding.severity,
  signal: signals[finding.severity],
  paragraphs: [finding.message, finding.remedy].filter((text) => text !== ""),
  items: finding.items,
  source: cite(finding.source),
  isReminder: false,
});

/** A caution in full as a boxed message: hazard, consequence, how to avoid it. `step` keeps repeats apart. */
export const cautionNotice = (caution: Caution, step: string, cite: Cite): Notice => ({
  id: `caution-${slugOf(step)}-${slugOf(caution.id)}`,
  severity: caution.severity,
  signal: signals[caution.severity],
  paragraphs: [
    `${sentence(caution.hazard)} ${sentence(caution.consequence)}`.trim(),
    sentence(caution.avoid),
  ],
  items: [],
  source: cite(caution.source),
  isReminder: false,
});

/** Cautions that have stood in full before: how to avoid them, in one line for each gravity. */
export function reminderNotices(cautions: readonly Caution[], step: string): readonly Notice[] {
  const severities = [...new Set(cautions.map(({ severity }) => severity))];
  return severities.map((severity) => ({
    id: `reminder-${slugOf(step)}-${severity}`,
    severity,
    signal: signals[severity],
    paragraphs: [
      cautions
        .flatMap((each) => (each.severity === severity ? [sentence(each.avoid)] : []))
        .join(" "),
    ],
    items: [],
    source: null,
    isReminder: true,
  }));
}

/** What cannot be cut, and what would help. */
export const shortfallNotice = ({ part, reason, remedy }: Shortfall, stock: string): Notice => ({
  id: `short-${slugOf(stock)}-${slugOf(part)}`,
  severity: "note",
  signal: signals.note,
  paragraphs: [sentence(`${openHyphens(part.split("/").at(-1)!)} ${reason}`), sentence(remedy)],
  items: [],
  source: null,
  isReminder: false,
});

/** Letters, digits and hyphens only, for ids. */
export const slugOf = (text: string): string =>
  text
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, "-")
    .replace(/^-|-$/g, "");

const sentence = (text: string): string => (text === "" || /[.!?]$/.test(text) ? text : `${text}.`);
