import type { PanelMark } from "./mark-attachments.ts";
import type { SewingPass, SewnOn } from "./types.ts";

/**
 * When each loose piece is sewn on: to one panel while it lies by itself; across a seam as soon as that
 * seam is sewn, while the work still opens out.
 */
export function planAttaching(
  attached: readonly { readonly id: string; readonly marks: readonly PanelMark[] }[],
  passes: readonly SewingPass[],
): SewnOn[] {
  return attached.map(({ id, marks }) => {
    const panels = [...new Set(marks.map(({ panel }) => panel))];
    const joined = passes.find((pass) => panels.every((panel) => pass.panels.includes(panel)));
    return { id, panels, after: panels.length < 2 ? 0 : (joined?.number ?? 0) };
  });
}
