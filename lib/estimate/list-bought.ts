import type { BuyLine } from "../project/types.ts";
import { countOf } from "./count-of.ts";
import { containersFor } from "./coverage.ts";
import { jointsBetween } from "./joints-between.ts";
import { woodArea } from "./list-finish.ts";
import { glueArea } from "./list-glue.ts";
import { isScrew } from "./screws-for.ts";
import type { Material, Work } from "./types.ts";

/** The author's own lines, multiplied by the copies; what is spread is counted from its coverage. */
export function listBought(work: Work): Material[] {
  const { copies } = work.project;
  return work.project.buy.map((line, index) => {
    const spread = spreadOf(line, work);
    const quantity = spread === null ? line.quantity * copies : spread.count;
    const buy = Math.max(0, quantity - line.have);
    return {
      id: `buy/${index + 1}`,
      item: line.item,
      quantity,
      perCopy: spread === null ? line.quantity : spread.count / copies,
      unit: "piece",
      unitWord: line.unit,
      have: line.have,
      buy,
      basis: spread?.basis ?? listedBasis(line, work),
      price: line.price === null ? null : buy * line.price,
      group: "other",
    };
  });
}

/** Whole containers for an area that is spread, by the coverage the author read on the label. */
function spreadOf(
  line: BuyLine,
  work: Work,
): { readonly count: number; readonly basis: string } | null {
  const { use = null, covers = null } = line;
  if (use === null || covers === null || line.quantity > 0) return null;
  const { project, format } = work;
  const area = project.copies * (use === "adhesive" ? glueArea(work) : woodArea(project));
  const count = containersFor(area, covers);
  if (count === null) return null;
  return {
    count,
    basis: `${format.area(area)} to ${use === "adhesive" ? "coat" : "finish"}, and one covers ${format.area(covers)} by its label.`,
  };
}

function listedBasis(line: BuyLine, { project }: Work): string {
  const each = `${Number(line.quantity.toFixed(3))}${line.unit === null ? "" : ` ${line.unit}`}`;
  const listed =
    project.copies > 1 ? `${each} for each of ${project.copies} copies.` : "Listed by the author.";
  const joints = isScrew(line) && line.unit === null ? jointsBetween(project).length : 0;
  if (joints === 0) return listed;
  const perJoint = Number((line.quantity / joints).toFixed(1));
  return `${listed} The placed parts meet at ${countOf(joints, "joint")}: about ${perJoint} to each.`;
}
