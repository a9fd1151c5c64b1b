import type { Count } from "../plane/types.ts";
import type { Panel } from "../panels/types.ts";

/** Longer labels make no name. In letters; our choice. */
const longestLabel: Count = 16;

/**
 * A short name for panels sewn together: "top and front", "back and 3 more", and once every panel is
 * on it "the whole cover".
 */
export function nameAssembly(
  panels: readonly Pick<Panel, "id" | "label" | "area">[],
  all: Count,
): string {
  if (panels.length === all) return all > 1 ? "the whole cover" : panels[0]!.label;
  const bySize = panels.toSorted((a, b) => b.area - a.area);
  const [main, second] = bySize.map(shortLabel);
  if (panels.length === 1) return main!;
  if (panels.length === 2) return `${main} and ${second}`;
  return `${main} and ${panels.length - 1} more`;
}

const shortLabel = ({ id, label }: Pick<Panel, "id" | "label">): string =>
  label.length <= longestLabel && !label.includes(" and ") ? label : `panel ${id}`;
