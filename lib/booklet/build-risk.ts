import safety from "../../shared/safety/risk.json" with { type: "json" };
import type { Caution, Step } from "../steps/types.ts";
import type { RiskPage } from "./pages.ts";
import { makeTable, words } from "./table.ts";
import type { Plan } from "./types.ts";

/**
 * A risk assessment to complete: one row for each caution of the steps, with the steps it concerns and
 * the controls the booklet names; the rest is blank for the room. Null unless a class makes the thing.
 *
 * @source SSERC, five steps of risk assessment (hazard, who, controls, further action, by whom, by when,
 * done), https://www.sserc.org.uk/health-safety/risk-assessment-process
 */
export function buildRisk({ project, steps, findings }: Plan): RiskPage | null {
  if (project.isForClass !== true) return null;
  const cautions = new Map(
    steps.flatMap((step) => step.cautions.map((caution) => [caution.id, caution] as const)),
  );
  const rows = [...cautions.values()]
    .filter(({ severity }) => severity !== "note")
    .map((caution) => rowOf(caution, steps));
  const stored = findings.some(({ id }) => id === "fire") ? [fireRow] : [];
  return {
    kind: "risk",
    id: "risk-assessment",
    title: "Risk assessment",
    facts: safety.blanks.map((label) => ({ label, value: "" })),
    table: makeTable("risk-rows", safety.heading, {
      columns: safety.columns.map(words),
      rows: [...rows, ...stored, ...safety.room].map((row) => [...row, "", "", "", ""]),
    }),
  };
}

const fireRow = safety.foam;

function rowOf(caution: Caution, steps: readonly Step[]): readonly string[] {
  const numbers = steps.flatMap(({ cautions }, index) =>
    cautions.some(({ id }) => id === caution.id) ? [index + 1] : [],
  );
  const who = new Map(Object.entries(safety.who)).get(caution.id) ?? safety.anybody;
  return [
    `${caution.hazard} ${caution.consequence} (${numbers.length > 1 ? "steps" : "step"} ${ranges(numbers)})`,
    who,
    caution.avoid,
  ];
}

/** "1, 3 to 5 and so on": runs of numbers drawn together. */
function ranges(numbers: readonly number[]): string {
  const runs = numbers.reduce<(readonly [number, number])[]>((list, number) => {
    const last = list.at(-1);
    return last !== undefined && last[1] === number - 1
      ? [...list.slice(0, -1), [last[0], number]]
      : [...list, [number, number]];
  }, []);
  return runs
    .map(([from, to]) => (from === to ? `${from}` : `${from}${to - from > 1 ? " to " : ", "}${to}`))
    .join(", ");
}
