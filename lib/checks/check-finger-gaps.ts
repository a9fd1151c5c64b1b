import type { Loop } from "../plane/types.ts";
import type { Project } from "../project/types.ts";
import { gapsBetween } from "./gaps-between.ts";
import { inMillimetres } from "./in-millimetres.ts";
import { isYoungerThan } from "./is-younger-than.ts";
import { rules } from "./rules.ts";
import type { Check, Finding } from "./types.ts";

const rule = rules["finger-gap"];
const remedy = `Make it narrower than ${inMillimetres(rule.from)} or wider than ${inMillimetres(rule.to)}.`;

/** Holes in sheet parts, and gaps between placed parts, that hold a child's finger fast. */
export const checkFingerGaps: Check = ({ project }) => {
  if (!isYoungerThan(rule.underYears, project.audience)) return [];
  const holes = project.pieces.flatMap((piece) => {
    const stock = project.stock.find((one) => one.id === piece.stock);
    if (stock?.kind !== "sheet" || stock.thickness < rule.shallow) return [];
    return piece.outline.holes.flatMap((hole, index) => {
      const across = narrowestOf(hole);
      if (!isTrap(across)) return [];
      const where = `A hole in ${piece.label} is ${inMillimetres(across)} across and goes ${inMillimetres(stock.thickness)} deep.`;
      return [found(`${piece.id}/${index + 1}`, piece.id, where)];
    });
  });
  const gaps = gapsBetween(project).flatMap(({ parts: [one, other], across, deep }) =>
    isTrap(across) && deep >= rule.shallow
      ? [
          found(
            `${one}+${other}`,
            one,
            `Between ${one} and ${other} is a gap of ${inMillimetres(across)}, ${inMillimetres(deep)} deep.`,
          ),
        ]
      : [],
  );
  return [...holes, ...gaps, ...findMeshes(project)];
};

/** Mesh gives way, so that only wider holes hold a finger: those of a net that is used for something. */
function findMeshes({ stock, pieces, solids }: Project): Finding[] {
  const used = new Set([
    ...pieces.map((piece) => piece.stock),
    ...solids.flatMap(({ cover }) => cover?.fabric ?? []),
  ]);
  return stock.flatMap((one) => {
    if (one.kind !== "fabric" || one.mesh === undefined || !used.has(one.id)) return [];
    if (one.mesh < rule.mesh || one.mesh > rule.to) return [];
    return [
      {
        id: `finger-gap/${one.id}`,
        severity: "caution",
        about: `stock/${one.id}`,
        message: `${one.label} has holes of ${inMillimetres(one.mesh)}. A child's finger can stick in them.`,
        remedy: `Take a mesh with holes narrower than ${inMillimetres(rule.mesh)} or wider than ${inMillimetres(rule.to)}.`,
        source: rule.source,
      },
    ];
  });
}

function isTrap(across: number): boolean {
  return across >= rule.from && across <= rule.to;
}

function found(id: string, piece: string, where: string): Finding {
  return {
    id: `finger-gap/${id}`,
    severity: "caution",
    about: `piece/${piece}`,
    message: `${where} A child's finger can stick in it.`,
    remedy,
    source: rule.source,
  };
}

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
