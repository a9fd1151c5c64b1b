import type { BuyLine } from "../project/types.ts";

/** Finishes that heat up in a rag as they dry. */
const drying =
  /\b(linseed|tung|danish|teak|wood|hard ?wax)[- ]oil\b|\bhard ?wax\b|\boil finish\b|\bvarnish\b|\bstain\b/i;

/** Whether a line of the author's is an oil, stain or varnish of that kind. */
export function isDrying({ item }: BuyLine): boolean {
  return drying.test(item);
}
