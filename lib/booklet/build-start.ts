import type { Severity } from "../checks/types.ts";
import { listTools } from "../steps/list-tools.ts";
import { findingNotice } from "./make-notice.ts";
import type { BookletPage, StartPage } from "./pages.ts";
import type { Plan } from "./types.ts";

const order: readonly Severity[] = ["danger", "warning", "caution", "note"];

/** Contents, the findings that matter (gravest first), tools, and the print check. */
export function buildStart({ findings, steps }: Plan, pages: readonly BookletPage[]): StartPage {
  const gravestFirst = findings.toSorted(
    (a, b) => order.indexOf(a.severity) - order.indexOf(b.severity),
  );
  return {
    kind: "start",
    id: "before-you-start",
    title: "Before you start",
    contents: pages.map(({ id, title }) => ({ title, target: id })),
    notices: gravestFirst.map(findingNotice),
    tools: listTools(steps),
  };
}
