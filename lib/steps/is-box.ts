import type { Work } from "../estimate/types.ts";

/** Whether a slab part, `<solid>/<block>`, is a plain box that needs no shaping; unknown parts are. */
export function isBox(part: string, { project }: Pick<Work, "project">): boolean {
  const [solid, block] = part.split("/");
  const spec = project.solids.find(({ id }) => id === solid)?.blocks.find(({ id }) => id === block);
  return spec === undefined || spec.kind === "box";
}
