import type { Work } from "../estimate/types.ts";
import { balanceOf, type Tilt } from "./balance-of.ts";
import { rules } from "./rules.ts";
import type { Check, Finding } from "./types.ts";

/** Things that fall over by themselves, at a nudge, or at a nudge with somebody on them. */
export const checkTipping: Check = (work) =>
  work.solids.flatMap((solid) => {
    const balance = balanceOf(solid, work.project.audience);
    if (balance === null) return [];
    const { alone, seated } = balance;
    if (alone.toEdge <= 0) return [fallsOver(solid.id, alone, work)];
    const own = topHeavy(solid.id, alone, work);
    return own.length > 0 || seated === null ? own : withSitter(solid.id, seated, work);
  });

function fallsOver(id: string, { toEdge, side }: Tilt, { format }: Work): Finding {
  return {
    id: `falls-over/${id}`,
    severity: "warning",
    about: `solid/${id}`,
    message: `The centre of mass lies ${format.length(-toEdge)} outside the base at the ${side.name}: ${id} falls over by itself.`,
    remedy: "Widen the base on that side, or move the weight back over it.",
    source: rules["falls-over"].source,
  };
}

function topHeavy(id: string, tilt: Tilt, { format: { length } }: Work): Finding[] {
  const rule = rules["top-heavy"];
  if (inDegrees(tilt) >= rule.least) return [];
  return [
    {
      id: `top-heavy/${id}`,
      severity: "caution",
      about: `solid/${id}`,
      message:
        `The centre of mass is ${length(tilt.height)} up and ${length(tilt.toEdge)} from the edge at the ${tilt.side.name}: ` +
        `${id} falls once it is tilted by ${Math.round(inDegrees(tilt))}°.`,
      remedy: "Make it lower or its base wider, or fix it to a wall.",
      source: rule.source,
    },
  ];
}

function withSitter(id: string, tilt: Tilt, { format: { length } }: Work): Finding[] {
  const rule = rules["tips-with-sitter"];
  if (inDegrees(tilt) >= rule.least) return [];
  return [
    {
      id: `tips-with-sitter/${id}`,
      severity: "caution",
      about: `solid/${id}`,
      message:
        `With somebody on the seat the centre of mass is ${length(tilt.height)} up and ${length(tilt.toEdge)} from the edge ` +
        `at the ${tilt.side.name}: both fall once tilted by ${Math.round(inDegrees(tilt))}°.`,
      remedy: "Make the seat lower or the base wider. Try it out with a grown-up beside it.",
      source: rule.source,
    },
  ];
}

function inDegrees({ angle }: Tilt): number {
  return (angle * 180) / Math.PI;
}
