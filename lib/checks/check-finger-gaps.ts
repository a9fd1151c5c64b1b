import type { Loop } from "../plane/types.ts";
import safety from "../../shared/safety/children.json" with { type: "json" };
import { isYoungerThan } from "./is-younger-than.ts";
import { inMillimetres } from "./in-millimetres.ts";
import type { Check } from "./types.ts";

const { fingers } = safety.rules;

/** Holes in sheet parts that hold a child's finger fast. */
export const checkFingerGaps: Check = ({ project }) => {
  if (!isYoungerThan(fingers.underYears, project.audience)) return [];
  return project.pieces.flatMap((piece) => {
    const stock = project.stock.find((one) => one.id === piece.stock);
    if (stock?.kind !== "sheet" || stock.thickness < fingers.shallow) return [];
    return piece.outline.holes.flatMap((hole, index) => {
      const across = narrowestOf(hole);
      if (across < fingers.from || across > fingers.to) return [];
      return [
        {
          id: `finger-gap/${piece.id}/${index + 1}`,
          severity: "caution" as const,
          about: `piece/${piece.id}`,
          message: `A hole in ${piece.label} is ${inMillimetres(across)} across and goes ${inMillimetres(stock.thickness)} deep. A child's finger can stick in it.`,
          remedy: `Make it narrower than ${inMillimetres(fingers.from)} or wider than ${inMillimetres(fingers.to)}.`,
          source: fingers.source,
        },
      ];
    });
  });
};

/** Smaller side of the upright box round a hole; a circle is two halves, so its centre counts too. */
function narrowestOf(hole: Loop): number {
  const points = hole.flatMap((segment) => {
    if (segment.kind === "line") return [segment.from];
    const radius = Math.hypot(
      segment.from[0] - segment.centre[0],
      segment.from[1] - segment.centre[1],
    );
    const [x, y] = segment.centre;
    return [[x - radius, y - radius] as const, [x + radius, y + radius] as const];
  });
  const spread = (axis: 0 | 1) =>
    Math.max(...points.map((point) => point[axis])) -
    Math.min(...points.map((point) => point[axis]));
  return points.length === 0 ? 0 : Math.min(spread(0), spread(1));
}
