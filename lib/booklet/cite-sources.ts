import type { Finding } from "../checks/types.ts";
import type { Step } from "../steps/types.ts";
import { gravestFirst } from "./merge-findings.ts";
import type { Source, SourcesPage } from "./pages.ts";

/** How a source is named beside a notice. */
export type Cite = (source: string) => string | null;

const address = /https?:\/\/[^\s;:,)]+(?::\/\/[^\s;,)]+)?/g;
/** Sources that are not works to look up: they are said in full where they stand. */
const isOwn = /^(?:computed|our choice|common practice)\b/;

/** The sources of findings and cautions in the order of the booklet, each once. */
export function listSources(
  findings: readonly Finding[],
  steps: readonly Step[],
): SourcesPage | null {
  const all = [
    ...gravestFirst(findings).map(({ source }) => source),
    ...steps.flatMap(({ cautions }) => cautions.map(({ source }) => source)),
  ];
  const worth = [...new Set(all)].filter((source) => source !== "" && !isOwn.test(source));
  if (worth.length === 0) return null;
  return {
    kind: "sources",
    id: "sources",
    title: "Sources",
    sources: worth.map((text, i): Source => ({ id: `source-${i + 1}`, number: i + 1, text })),
  };
}

/** A short line for each source of the list: who, which work, and its number in the list. */
export function citeFrom(page: SourcesPage | null): Cite {
  return (source) => {
    if (source === "") return null;
    const found = page?.sources.find((each) => each.text === source);
    return found === undefined ? shortName(source) : `${shortName(source)} [${found.number}]`;
  };
}

/** The work itself: what stands before the first address, stroke or note on it. */
function shortName(text: string): string {
  const first = text.replace(address, "").split(/[;:]/)[0] ?? text;
  return (first.split(",")[0] ?? first).trim();
}
