import type { Piece } from "../seams/types.ts";
import type { Point } from "../plane/types.ts";
import type { Candidate, Label, ToPaper } from "./types.ts";

/** The number of each notch beside its tick; none where there is but one to tell. */
export function notchNumbers({ notches, edges }: Piece, toPaper: ToPaper): Label[] {
  const numbers = new Set(notches.map(({ number }) => number));
  if (numbers.size < 2) return [];
  return notches.map(({ at, towards, seam, number }) => {
    const reach = edges.find((edge) => edge.seam === seam)?.allowance ?? 0;
    const [inner, outer] = [0, reach].map((by) =>
      toPaper([at[0] + Math.cos(towards) * by, at[1] + Math.sin(towards) * by]),
    ) as [Point, Point];
    // Paper y points down.
    const out: Point = [Math.cos(towards), -Math.sin(towards)];
    const across: Point = [-out[1], out[0]];
    const spot = (from: Point, away: number, aside: number): Candidate => ({
      at: [
        from[0] + out[0] * away + across[0] * aside,
        from[1] + out[1] * away + across[1] * aside,
      ],
      anchor: "middle",
      leader: Math.abs(away) > 5 || Math.abs(aside) > 5 ? inner : null,
    });
    const near = [3, 3.6, 4.4].flatMap((away) =>
      [0, 2.2, -2.2, 4, -4].flatMap((aside) => [
        spot(outer, away, aside),
        spot(inner, -away, aside),
      ]),
    );
    const far = [6, 8, 11, 14, 18, 23].flatMap((away) =>
      [0, 3, -3, 6, -6, 10, -10, 15, -15].flatMap((aside) => [
        spot(inner, -away, aside),
        spot(outer, away, aside),
      ]),
    );
    return { lines: [String(number)], style: "label", candidates: [...near, ...far] };
  });
}
