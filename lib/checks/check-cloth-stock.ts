import type { Lay } from "../packing/types.ts";
import type { Check } from "./types.ts";

/** Cloth on hand that is shorter than its lay. Says nothing where nothing is on hand: then it is simply bought. */
export const checkClothStock: Check = ({ lays, project, format: { length, shop } }) =>
  lays
    .filter((lay) => lay.have > 0 && lay.short > 0)
    .map((lay) => {
      const label = project.stock.find((one) => one.id === lay.stock)?.label ?? lay.stock;
      return {
        id: `cloth-short/${lay.stock}`,
        severity: "note",
        about: `stock/${lay.stock}`,
        message:
          `The lay takes ${length(lay.length)} of ${label} and ${length(lay.have)} is on hand: ` +
          `${length(lay.short)} must be bought${isMore(lay) ? ", for no piece may lie across the end of a length, and a repeat is kept for the start" : ""}.`,
        remedy: `Buy ${shop(lay.buy)} from the same roll, or use fewer copies or another way to cut the cover.`,
        source: "computed from the lay",
      };
    });

/** Does the missing length exceed the plain difference? */
function isMore({ short, length, have }: Lay): boolean {
  return short > length - have + 1;
}
