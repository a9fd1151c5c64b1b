import type { Count } from "../plane/types.ts";
import type { Cover, PieceEdge, Seam } from "../seams/types.ts";

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

/** "notch 3", "notches 3 and 4", "notches 5 to 8". */
export function notchWords(numbers: readonly Count[]): string {
  const [first, second] = numbers;
  if (numbers.length === 1) return `notch ${first}`;
  if (numbers.length === 2) return `notches ${first} and ${second}`;
  return `notches ${first} to ${numbers.at(-1)}`;
}
