import type { Column, Table } from "./pages.ts";

interface Content {
  readonly columns: readonly Column[];
  readonly rows: readonly (readonly string[])[];
}

/** A table whose row ids are its own id and a count, or the given keys. */
export function makeTable(id: string, caption: string, { columns, rows }: Content): Table {
  return {
    id,
    caption,
    columns,
    rows: rows.map((cells, i) => ({ id: `${id}-${i + 1}`, cells })),
  };
}

/** The same, or null where there is nothing to say. */
export const tableOrNull = (id: string, caption: string, content: Content): Table | null =>
  content.rows.length === 0 ? null : makeTable(id, caption, content);

/** A long, narrow list set two entries to a row, read across. */
export function setInPairs({ columns, rows }: Content): Content {
  const [first, ...others] = columns;
  if (first === undefined) return { columns, rows };
  const blank = columns.map(() => "");
  return {
    columns: [...columns, { ...first, startsAgain: true }, ...others],
    rows: rows.flatMap((row, i) => (i % 2 === 0 ? [[...row, ...(rows[i + 1] ?? blank)]] : [])),
  };
}

/** A column of words, set left. */
export const words = (title: string): Column => ({ title, isNumber: false });

/** A column of figures, set right. */
export const figures = (title: string): Column => ({ title, isNumber: true });
