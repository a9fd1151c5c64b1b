import { loopBounds } from "../plane/loop-bounds.ts";
import type { Mark, Piece } from "../seams/types.ts";
import type { Format } from "../units/make-format.ts";
import type { Fact } from "./pages.ts";

/**
 * Where each loose piece is sewn on, as figures to lay off: from the lower left corner of the box round the
 * cut piece, like the walk round its outline.
 */
export function describeMarks({ marks, outline }: Piece, format: Format): readonly Fact[] {
  const [left, low] = loopBounds(outline.outer).min;
  const place = ({ at: [x, y] }: Mark) =>
    `${format.length(x - left)} across, ${format.length(y - low)} up`;
  const middles = marks.filter(({ kind }) => kind === "middle");
  const endsOf = (label: string) => marks.filter((mark) => mark.label === `end of the ${label}`);
  const own = middles.map((middle): Fact => {
    const ends = endsOf(middle.label).map(place);
    const value = [place(middle), ...(ends.length > 0 ? [`ends ${ends.join("; ")}`] : [])];
    return { label: `Mark for the ${middle.label}`, value: value.join("; ") };
  });
  const others = marks
    .filter(
      ({ kind, label }) =>
        kind === "end" &&
        !middles.some((one) => endsOf(one.label).some((end) => end.label === label)),
    )
    .map((end): Fact => ({ label: `Mark for the ${end.label}`, value: place(end) }));
  return [...own, ...others];
}
