/** An id in words: "seat-foam" becomes "seat foam". */
export const openHyphens = (id: string): string => id.replaceAll("-", " ");

/** The same with a capital, for titles. */
export function titleOf(id: string): string {
  const words = openHyphens(id);
  return words.charAt(0).toUpperCase() + words.slice(1);
}

/** The author's own words for a stock, or its id in words. */
export const stockLabel = (
  stock: readonly { readonly id: string; readonly label: string }[],
  id: string,
): string => stock.find((each) => each.id === id)?.label ?? openHyphens(id);
