import type { Column, Table } from "./pages.ts";

/** A table whose row ids are its own id and a count, or the given keys. */
export function makeTable(
  id: string,
  caption: string,
  {
    columns,
    rows,
  }: { readonly columns: readonly Column[]; readonly rows: readonly (readonly string[])[] },
): Table {
  return {
    id,
    caption,
    columns,
    rows: rows.map((cells, i) => ({ id: `${id}-${i + 1}`, cells })),
  };
}

/** The same, or null where there is nothing to say. */
export const tableOrNull = (
  id: string,
  caption: string,
  content: { readonly columns: readonly Column[]; readonly rows: readonly (readonly string[])[] },
): Table | null => (content.rows.length === 0 ? null : makeTable(id, caption, content));

/** A column of words, set left. */
export const words = (title: string): Column => ({ title, isNumber: false });

/** A column of figures, set right. */
export const figures = (title: string): Column => ({ title, isNumber: true });
