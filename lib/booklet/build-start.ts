import { listTools } from "../steps/list-tools.ts";
import type { Cite } from "./cite-sources.ts";
import { findingNotice } from "./make-notice.ts";
import { gravestFirst, mergeFindings } from "./merge-findings.ts";
import type { BookletPage, StartPage } from "./pages.ts";
import type { Plan } from "./types.ts";

/** Contents, the findings that matter (gravest first, like ones as one), tools, and the print check. */
export function buildStart(
  { findings, steps }: Plan,
  pages: readonly BookletPage[],
  cite: Cite,
): StartPage {
  return {
    kind: "start",
    id: "before-you-start",
    title: "Before you start",
    contents: pages.map(({ id, title }) => ({ title, target: id })),
    notices: mergeFindings(gravestFirst(findings)).map((finding) => findingNotice(finding, cite)),
    tools: listTools(steps),
  };
}
