import type { Format } from "../estimate/types.ts";
import type { Mm } from "../plane/types.ts";
import type { Project, SolidSpec } from "../project/types.ts";
import { designPad } from "../solids/design-pad.ts";
import type { Solid } from "../solids/types.ts";
import { planCuts } from "./plan-cuts.ts";

/** Thicknesses of a loose pad, the best first. @source our choice: 50 mm sits well, 30 mm still holds */
const thicknesses: readonly Mm[] = [50, 40, 30];

/**
 * The project with a loose pad beside every solid whose author anchors the cloth with one. The pad is as
 * thick as still comes out of what the slabs leave over, so that it costs no further slab; where none
 * does, it has the middle thickness and its foam has to be bought.
 */
export function addLoosePads(
  project: Project,
  build: (spec: SolidSpec) => Solid,
  format: Format,
): Project {
  const asked = project.solids.filter(({ cover }) => cover?.anchor === "pad");
  if (asked.length === 0) return project;
  const needed = (specs: readonly SolidSpec[]): number => {
    const { slabs } = planCuts({ ...project, solids: specs }, specs.map(build), format);
    return slabs.reduce((sum, plan) => sum + plan.needed + 1000 * plan.short.length, 0);
  };
  return asked.reduce((grown, spec) => {
    const solid = build(spec);
    const designs = thicknesses.flatMap((thickness) => designPad(solid, spec, thickness) ?? []);
    if (designs.length === 0 || grown.solids.some(({ id }) => id === designs[0]!.id)) return grown;
    const before = needed(grown.solids);
    const place = grown.solids.findIndex(({ id }) => id === spec.id) + 1;
    const withPad = (pad: SolidSpec): readonly SolidSpec[] => grown.solids.toSpliced(place, 0, pad);
    const free = designs.find((pad) => needed(withPad(pad)) <= before);
    return { ...grown, solids: withPad(free ?? designs[1] ?? designs[0]!) };
  }, project);
}
