import type { Count } from "../plane/types.ts";
import type { Panel } from "../panels/types.ts";
import { theFace } from "../solids/the-face.ts";
import type { Solid } from "../solids/types.ts";

/** Longer labels make no name. In letters; our choice. */
const longestLabel: Count = 24;
/** Steeper than this is a wall: share of the normal that points up or down. @source our choice */
const level = 0.5;

export type NamedPanel = Pick<Panel, "id" | "label" | "area">;

/** Which panels are boxing: strips of walls only, where there are plates for them to run round. */
export function findBoxing(
  panels: readonly Panel[],
  { faces }: Pick<Solid, "faces">,
): ReadonlySet<string> {
  const isWall = (id: string) =>
    Math.abs(faces.find((face) => face.id === id)?.normal[2] ?? 1) < level;
  const boxing = panels.filter((panel) => panel.faces.every(({ face }) => isWall(face)));
  return new Set(boxing.length < panels.length ? boxing.map(({ id }) => id) : []);
}

/**
 * What panels sewn together are called: "the boxing", "the top with its boxing", "all but the left side",
 * and once every panel is on it "the whole cover".
 *
 * @param all every panel of the cover
 */
export function nameAssembly(
  panels: readonly NamedPanel[],
  all: readonly NamedPanel[],
  boxing: ReadonlySet<string>,
): string {
  const name = (panel: NamedPanel) => theLabel(panel, all);
  const missing = all.filter(({ id }) => !panels.some((one) => one.id === id));
  if (missing.length === 0) return all.length > 1 ? "the whole cover" : name(panels[0]!);
  if (panels.length === 1) return name(panels[0]!);
  const plates = panels.filter(({ id }) => !boxing.has(id));
  const walls = panels.length - plates.length;
  if (plates.length === 0 && walls === boxing.size) return "the boxing";
  const [main, second] = panels.toSorted((a, b) => b.area - a.area) as [NamedPanel, NamedPanel];
  if (panels.length === 2) return `${name(main)} and ${name(second)}`;
  if (plates.length === 0) return `${walls} strips of the boxing`;
  if (plates.length === 1 && walls === boxing.size) return `${name(plates[0]!)} with its boxing`;
  if (missing.length === 1) return `all but ${name(missing[0]!)}`;
  if (missing.length === 2) return `all but ${name(missing[0]!)} and ${name(missing[1]!)}`;
  if (plates.length === 1) return `${name(plates[0]!)} with ${walls} strips of the boxing`;
  return `${name(main)} and the ${panels.length - 1} panels round it`;
}

/** "the top", "side 3", or "panel P2" where its label is long or another panel has the same. */
function theLabel({ id, label }: NamedPanel, all: readonly NamedPanel[]): string {
  if (all.some((other) => other.id !== id && other.label === label)) return `panel ${id}`;
  if (label.length > longestLabel || label.includes(",")) return `panel ${id}`;
  if (label.includes(" and ")) return `panel ${id}`;
  return theFace(label);
}
