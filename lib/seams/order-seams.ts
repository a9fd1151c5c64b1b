import type { Count, Radians } from "../plane/types.ts";
import type { Panel } from "../panels/types.ts";
import type { ClosingSpec } from "../project/types.ts";
import type { Seam } from "./types.ts";

type Unordered = Omit<Seam, "order" | "makes">;

/**
 * A sewing order in which every seam lies flat under the machine: a straight zip first while both
 * panels are flat, then darts, inward corners set in while the panels are free, short straight joins,
 * seams round corners, closed rings last. What is left open for the foam comes at the end.
 *
 * @source common practice, no source
 */
export function orderSeams(
  seams: readonly Unordered[],
  panels: readonly Panel[],
  closing: ClosingSpec["kind"],
): Seam[] {
  const assembly = new Map(panels.map(({ id }, i) => [id, i]));
  const labels = new Map(panels.map(({ id, label }) => [id, label]));
  const isOnlyClosing = seams.filter(({ state }) => state === "closing").length === 1;
  const waiting = [...seams];
  const ordered: Seam[] = [];
  while (waiting.length > 0) {
    const ranked = waiting.map((seam) => ({
      seam,
      rank: rankSeam(seam, assembly, closing, isOnlyClosing),
    }));
    const best = ranked.reduce((a, b) => (comesBefore(b, a) ? b : a)).seam;
    waiting.splice(waiting.indexOf(best), 1);
    const [a, b] = best.panels.map((panel) => assembly.get(panel)!) as [Count, Count];
    if (best.state !== "open")
      assembly.forEach((group, panel) => group === b && assembly.set(panel, a));
    const members = [...assembly]
      .filter(([, group]) => group === a)
      .map(([panel]) => labels.get(panel)!);
    ordered.push({
      ...best,
      order: ordered.length + 1,
      makes: nameAssembly(members, panels.length),
    });
  }
  return ordered;
}

interface Ranked {
  readonly seam: Unordered;
  readonly rank: Count;
}

function comesBefore(a: Ranked, b: Ranked): boolean {
  if (a.rank !== b.rank) return a.rank < b.rank;
  if (Math.abs(a.seam.length[0] - b.seam.length[0]) > 1e-6)
    return a.seam.length[0] < b.seam.length[0];
  return false;
}

/** A corner that turns inward by more than this has to be set in, with a clip and a pivot. */
const setIn: Radians = -0.25;

function rankSeam(
  seam: Unordered,
  assembly: ReadonlyMap<string, Count>,
  closing: ClosingSpec["kind"],
  isOnlyClosing: boolean,
): Count {
  const [a, b] = seam.panels;
  const isStraight = seam.corners.length === 0 && !seam.isRing;
  if (seam.state === "open") return 10;
  // A zip round corners can only go in once the panels it runs along are joined.
  if (seam.state === "closing") return closing !== "ties" && isStraight && isOnlyClosing ? 0 : 9;
  // A dart, or a strip sewn end to end into a ring.
  if (a === b) return 1;
  const joins = assembly.get(a) !== assembly.get(b);
  // Inward corners are set in while both panels still lie flat.
  if (seam.corners.some(({ turn }) => turn < setIn)) return joins ? 2 : 6;
  if (isStraight) return joins ? 3 : 4;
  if (seam.isRing) return joins ? 7 : 8;
  return joins ? 5 : 6;
}

function nameAssembly(labels: readonly string[], all: Count): string {
  if (labels.length === all && all > 2) return "the whole cover";
  if (labels.length <= 2) return labels.join(" with ");
  return `${labels[0]} with ${labels.length - 1} panels joined to it`;
}
