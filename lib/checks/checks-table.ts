import { listRules } from "./rules.ts";

/** The list of checks as a Markdown table, as it stands in this folder's README. */
export function checksTable(): string {
  const rows = listRules().map(
    ({ finding, check, asks, limit, source, known }) =>
      `| ${[`\`${finding}\``, check, asks, limit, source.replaceAll("|", "/"), known].join(" | ")} |`,
  );
  return [
    "| finding | check | asks | speaks from | source | known |",
    "| --- | --- | --- | --- | --- | --- |",
    ...rows,
  ].join("\n");
}
