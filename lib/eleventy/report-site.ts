import type { Site } from "./open-site.ts";

/** A line for each booklet, then one for each fault. Gives the exit code: 1 when anything is at fault. */
export function reportSite(
  { booklets, faults }: Site,
  print: (line: string) => void = console.log,
): number {
  const width = Math.max(0, ...booklets.map(({ slug }) => slug.length));
  for (const { slug, booklet, plan } of booklets) {
    const pages = booklet.pages.length;
    const warnings = plan.findings.filter(({ severity }) => severity !== "note").length;
    print(
      `${slug.padEnd(width)}  ${count(pages, "page")} of content  ${count(warnings, "warning")}`,
    );
  }
  faults.forEach((fault) => print(fault));
  if (faults.length > 0)
    print(`${count(faults.length, "fault")}. The booklets listed above were written.`);
  return faults.length > 0 ? 1 : 0;
}

export const count = (number: number, noun: string): string =>
  `${number} ${noun}${number === 1 ? "" : "s"}`;
