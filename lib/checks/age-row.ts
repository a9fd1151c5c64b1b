/** A row of a table by age: 5th, 50th and 95th percentile of boys and girls. */
export interface AgeRow {
  readonly age: number;
  readonly boys: readonly number[];
  readonly girls: readonly number[];
}

/** The row of the last birthday that the table has, the youngest below two; null beyond a year after its last. */
export function ageRow(rows: readonly AgeRow[], years: number): AgeRow | null {
  const last = rows.at(-1);
  if (last === undefined || years >= last.age + 1) return null;
  return rows.findLast(({ age }) => age <= years) ?? rows[0] ?? null;
}
