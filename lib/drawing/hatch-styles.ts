import type { Hatch } from "./hatch-lines.ts";

/**
 * Hatches for panels, told apart without colour by slope, pitch, crossing and dash.
 *
 * @source our choice: pitch of 1.5 mm or more and lines of 0.25 mm outlast a copier
 */
const panelHatches: readonly Hatch[] = [
  { angles: [45], pitch: 2.4, dash: "plain" },
  { angles: [135], pitch: 2.4, dash: "plain" },
  { angles: [0], pitch: 2.4, dash: "plain" },
  { angles: [90], pitch: 2.4, dash: "plain" },
  { angles: [45, 135], pitch: 3.6, dash: "plain" },
  { angles: [0, 90], pitch: 3.6, dash: "plain" },
  { angles: [45], pitch: 2.4, dash: "dashed" },
  { angles: [135], pitch: 2.4, dash: "dashed" },
  { angles: [20], pitch: 3.6, dash: "plain" },
  { angles: [160], pitch: 3.6, dash: "plain" },
  { angles: [0], pitch: 2.4, dash: "dotted" },
  { angles: [90], pitch: 2.4, dash: "dotted" },
  { angles: [70], pitch: 3.6, dash: "dashed" },
  { angles: [110], pitch: 3.6, dash: "dashed" },
  { angles: [20, 160], pitch: 4.8, dash: "plain" },
  { angles: [0, 90], pitch: 3.6, dash: "dashed" },
];

/** The hatch of the n-th panel. After sixteen they come round again, wider. */
export function panelHatch(index: number): Hatch {
  const round = Math.floor(index / panelHatches.length);
  const hatch = panelHatches[index % panelHatches.length] ?? stockHatch;
  return { ...hatch, pitch: hatch.pitch + round };
}

/** Foam and other stock that stays. */
export const stockHatch: Hatch = { angles: [45], pitch: 2.4, dash: "plain" };
/** Areas that take adhesive. */
export const glueHatch: Hatch = { angles: [30, 150], pitch: 1.8, dash: "plain" };
/** Selvedges and other parts not to be used. */
export const wasteHatch: Hatch = { angles: [135], pitch: 1.5, dash: "plain" };
