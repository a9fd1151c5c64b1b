import type { Panel } from "../panels/types.ts";
import type { Mm } from "../plane/types.ts";
import type { Cover, Seam } from "./types.ts";

/** Piping sewn on in one length. */
export interface PipingRun {
  readonly seams: readonly string[];
  readonly length: Mm;
  /** The panel it is basted to. */
  readonly panel: string;
}

/** Where the two ends of a run of piping overlap. @source common practice, no source */
export const pipingOverlap: Mm = 50;

/**
 * Runs of piping: seams with piping that follow one another round a panel are one length, others are
 * lengths of their own. Each is basted to the panel that it goes right round, or to the one that has
 * most of it.
 */
export function pipingRuns({
  seams,
  panels,
}: Pick<Cover, "seams" | "panels">): readonly PipingRun[] {
  const seamOf = new Map(
    seams
      .filter(({ isPiped }) => isPiped)
      .flatMap((seam) => seam.edges.map((edge) => [edge, seam])),
  );
  const rounds = panels.flatMap((panel) => listRounds(panel, seamOf));
  const runs = [...new Set(seamOf.values())].map((seam) => new Set([seam]));
  for (const { stretches } of rounds) {
    for (const stretch of stretches) {
      const met = runs.filter((run) => stretch.some((seam) => run.has(seam)));
      met.forEach((run) => runs.splice(runs.indexOf(run), 1));
      runs.push(new Set([...met.flatMap((run) => [...run]), ...stretch]));
    }
  }
  const order = (run: ReadonlySet<Seam>): number =>
    Math.min(...[...run].map((seam) => seams.indexOf(seam)));
  return runs
    .toSorted((one, other) => order(one) - order(other))
    .map((run) => {
      const own = seams.filter((seam) => run.has(seam));
      return {
        seams: own.map(({ id }) => id),
        length: own.reduce((sum, { length }) => sum + Math.max(...length), 0),
        panel: choosePanel(run, rounds),
      };
    });
}

/** One loop of a panel, with the piped seams that follow one another on it. */
interface Round {
  readonly panel: string;
  readonly stretches: readonly (readonly Seam[])[];
  /** Length of each piped seam on it. */
  readonly lengths: ReadonlyMap<Seam, Mm>;
  /** No side is without piping. */
  readonly isWhole: boolean;
}

function listRounds(panel: Panel, seamOf: ReadonlyMap<string, Seam>): readonly Round[] {
  return panel.loops.map((loop) => {
    const met = loop.map(({ edge }) => seamOf.get(edge) ?? null);
    const lengths = new Map<Seam, Mm>();
    const stretches: Seam[][] = [];
    met.forEach((seam, i) => {
      if (seam === null) return;
      lengths.set(seam, (lengths.get(seam) ?? 0) + loop[i]!.length);
      const before = met.at(i - 1) ?? null;
      // The last side of a loop comes before its first.
      if (before !== null) stretches.push([before, seam]);
    });
    return { panel: panel.id, stretches, lengths, isWhole: !met.includes(null) };
  });
}

function choosePanel(run: ReadonlySet<Seam>, rounds: readonly Round[]): string {
  const held = ({ lengths }: Round): Mm =>
    [...run].reduce((sum, seam) => sum + (lengths.get(seam) ?? 0), 0);
  const goesRound = (round: Round): boolean =>
    round.isWhole && [...round.lengths.keys()].every((seam) => run.has(seam));
  const [best] = rounds.toSorted(
    (one, other) => Number(goesRound(other)) - Number(goesRound(one)) || held(other) - held(one),
  );
  return best?.panel ?? "";
}
