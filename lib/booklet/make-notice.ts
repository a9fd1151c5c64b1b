import type { Finding, Severity } from "../checks/types.ts";
import type { Shortfall } from "../packing/types.ts";
import type { Caution } from "../steps/types.ts";
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

/** A finding as a boxed message: what, then what to do. */
export const findingNotice = (finding: Finding): Notice => ({
  id: `finding-${slugOf(finding.id)}`,
  severity: finding.severity,
  signal: signals[finding.severity],
  paragraphs: [finding.message, finding.remedy].filter((text) => text !== ""),
  source: finding.source,
  isReminder: false,
});

/**
 * A caution as a boxed message: hazard, consequence, how to avoid it. `step` keeps repeats apart.
 * Where it has stood in full before, a reminder says only how to avoid it.
 */
export function cautionNotice(
  caution: Caution,
  step: string,
  { isReminder = false }: { readonly isReminder?: boolean } = {},
): Notice {
  const { hazard, consequence, avoid, severity } = caution;
  const why = `${sentence(hazard)} ${sentence(consequence)}`.trim();
  return {
    id: `caution-${slugOf(step)}-${slugOf(caution.id)}`,
    severity,
    signal: signals[severity],
    paragraphs: isReminder ? [sentence(avoid)] : [why, sentence(avoid)],
    source: isReminder ? null : caution.source,
    isReminder,
  };
}

/** What cannot be cut, and what would help. */
export const shortfallNotice = ({ part, reason, remedy }: Shortfall, stock: string): Notice => ({
  id: `short-${slugOf(stock)}-${slugOf(part)}`,
  severity: "note",
  signal: signals.note,
  paragraphs: [sentence(reason), sentence(remedy)],
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
