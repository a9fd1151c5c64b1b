import type { Project } from "../project/types.ts";
import type { Cover } from "../seams/types.ts";

/**
 * The project with `panels: least-cloth` changed to the rule whose way takes the least cloth once laid;
 * null where the way chosen by its areas is the shortest already. No way is taken that turns more faces.
 */
export function chooseLeastCloth(project: Project, covers: readonly Cover[]): Project | null {
  let hasChanged = false;
  const solids = project.solids.map((spec) => {
    const cover = covers.find(({ solid }) => solid === spec.id);
    if (spec.cover?.panels !== "least-cloth" || cover === undefined) return spec;
    const chosen = cover.ways.find(({ isChosen }) => isChosen)!;
    const length = (way: typeof chosen): number => way.clothLength ?? Infinity;
    const best = cover.ways
      .filter(({ turnedFaces }) => turnedFaces.length <= chosen.turnedFaces.length)
      .reduce((a, b) => (length(b) < length(a) - 1 ? b : a), chosen);
    if (best === chosen || best.rule === "named" || best.rule === "least-cloth") return spec;
    hasChanged = true;
    return { ...spec, cover: { ...spec.cover, panels: best.rule } };
  });
  return hasChanged ? { ...project, solids } : null;
}
