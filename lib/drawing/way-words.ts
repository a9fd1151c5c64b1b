import type { ComparedWay } from "../seams/types.ts";

/** What a way of cutting the cover is after, as the table and the pictures of the ways call it. */
export function wayWords({ rule }: Pick<ComparedWay, "rule">): string {
  switch (rule) {
    case "auto":
      return "best all round";
    case "fewest":
      return "fewest panels";
    case "least-cloth":
      return "least cloth";
    case "upright":
      return "print upright";
    case "plain":
      return "a panel for every face";
    case "named":
      return "as the author names them";
  }
}
