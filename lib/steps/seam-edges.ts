import { distance } from "../plane/points.ts";
import type { Count, Mm } from "../plane/types.ts";
import type { Cover, Notch, PieceEdge, Seam } from "../seams/types.ts";

/** The stretches of one panel's outline that belong to a seam, empty where no piece is known. */
export function seamEdges(seam: Seam, panel: string, cover: Cover): readonly PieceEdge[] {
  const piece = cover.pieces.find((one) => one.panel === panel);
  return piece?.edges.filter((edge) => edge.seam === seam.id) ?? [];
}

/** So many lines in one edge stand for a free curve. Our choice. */
const freeCurve = 6;

/** Whether a panel's edge of the seam has a curve in it. */
export function isCurved(seam: Seam, panel: string, cover: Cover): boolean {
  return seamEdges(seam, panel, cover).some(
    ({ segments }) =>
      segments.length > freeCurve || segments.some((segment) => segment.kind === "arc"),
  );
}

/** Numbers of the notches of a seam, in order from its start. */
export function notchNumbers(seam: Seam, cover: Cover): readonly Count[] {
  const numbers = cover.pieces
    .filter(({ panel }) => panel !== null && seam.panels.includes(panel))
    .flatMap(({ notches }) => notches)
    .filter((notch) => notch.seam === seam.id)
    .map(({ number }) => number);
  return [...new Set(numbers)].toSorted((one, other) => one - other);
}

/** Notches of other seams that lie at the ends of this one, as where a round seam is open from there on. */
export function endNotches(seam: Seam, cover: Cover): readonly Count[] {
  const isAt = (notch: Notch, { segments }: PieceEdge) =>
    [segments[0]!.from, segments.at(-1)!.to].some((end) => distance(end, notch.at) < samePlace);
  const numbers = cover.pieces
    .filter(({ panel }) => panel !== null && seam.panels.includes(panel))
    .flatMap(({ edges, notches }) => {
      const own = edges.filter((edge) => edge.seam === seam.id);
      return notches.filter(
        (notch) => notch.seam !== seam.id && own.some((edge) => isAt(notch, edge)),
      );
    })
    .map(({ number }) => number);
  return [...new Set(numbers)].toSorted((one, other) => one - other);
}

/** Points nearer than this are one. */
const samePlace: Mm = 1e-6;

/** "notch 3", "notches 3 and 4", "notches 5 to 8". */
export function notchWords(numbers: readonly Count[]): string {
  const [first, second] = numbers;
  if (numbers.length === 1) return `notch ${first}`;
  if (numbers.length === 2) return `notches ${first} and ${second}`;
  return `notches ${first} to ${numbers.at(-1)}`;
}
