import type { Mm } from "../plane/types.ts";
import type { Solid } from "../solids/types.ts";
import type { Format } from "../estimate/types.ts";
import { findSeat } from "./find-seat.ts";
import { frontLoadMargin } from "./front-load-margin.ts";
import { tipAngle } from "./tip-angle.ts";
import type { Check, Finding } from "./types.ts";

const gravity = 9.81;
/** Below this a thing feels top-heavy, in degrees. Our choice. */
const wobbly = 20;
/** Blocks whose underside lies this near the lowest point stand on the floor, in mm. */
const onTheFloor = 1;
const source = "EN 1022 and ISO 7174-1, forward test (advice only: both leave out seats that flex)";

/** Things that fall over by themselves, under a load at the edge of the seat, or by a light push. */
export const checkTipping: Check = ({ solids, format }) =>
  solids.flatMap((solid) => {
    const sides = sidesOf(solid);
    const worst = sides.toSorted((one, other) => one.toCentre - other.toCentre)[0];
    if (worst === undefined) return [];
    const about = `solid/${solid.id}`;
    if (worst.toCentre <= 0) {
      return [
        {
          id: `falls-over/${solid.id}`,
          severity: "warning" as const,
          about,
          message: `The centre of mass lies ${format.length(-worst.toCentre)} outside the base at the ${worst.name}: ${solid.id} falls over by itself.`,
          remedy: "Widen the base on that side, or move the weight back over it.",
          source: "computed from the blocks",
        },
      ];
    }
    const edge = edgeFinding(solid, sides, format);
    return edge === null ? pushFinding(solid, worst, format) : [edge];
  });

interface Side {
  readonly name: "front" | "back" | "left" | "right";
  /** From the edge of the base to the centre of mass; negative outside. */
  readonly toCentre: Mm;
  /** How far the seat juts out over the base here. */
  readonly overhang: Mm;
}

function sidesOf(solid: Solid): Side[] {
  const base = solid.blocks.filter((block) => block.min[2] - solid.min[2] < onTheFloor);
  if (base.length === 0) return [];
  const low = (axis: 0 | 1) => Math.min(...base.map((block) => block.min[axis]));
  const high = (axis: 0 | 1) =>
    Math.max(...base.map((block) => block.min[axis] + block.size[axis]));
  const seat = findSeat(solid);
  const [x, y] = solid.centreOfMass;
  const sides: readonly (readonly [Side["name"], Mm, Mm])[] = [
    ["front", y - low(1), seat === null ? 0 : low(1) - seat.min[1]],
    ["back", high(1) - y, seat === null ? 0 : seat.max[1] - high(1)],
    ["left", x - low(0), seat === null ? 0 : low(0) - seat.min[0]],
    ["right", high(0) - x, seat === null ? 0 : seat.max[0] - high(0)],
  ];
  return sides.map(([name, toCentre, overhang]) => ({
    name,
    toCentre,
    overhang: Math.max(0, overhang),
  }));
}

function edgeFinding(solid: Solid, sides: readonly Side[], { length }: Format): Finding | null {
  const seat = findSeat(solid);
  if (seat === null) return null;
  const weight = (solid.mass ?? 0) * gravity;
  const tipping = sides.find(
    ({ overhang, toCentre }) =>
      overhang > 0 && frontLoadMargin({ overhang, seatHeight: seat.height, weight, toCentre }) < 0,
  );
  if (tipping === undefined) return null;
  return {
    id: `tips-at-edge/${solid.id}`,
    severity: "warning",
    about: `solid/${solid.id}`,
    message:
      `The seat juts out ${length(tipping.overhang)} beyond its base at the ${tipping.name}. ` +
      `Somebody who sits down near that edge can tip it over.`,
    remedy: `Bring the base out under the edge, to within ${length(50)} of it or nearer. Try it out with a grown-up beside it.`,
    source,
  };
}

function pushFinding(solid: Solid, worst: Side, { length }: Format): Finding[] {
  const height = solid.centreOfMass[2] - solid.min[2];
  const degrees = (tipAngle(worst.toCentre, height) * 180) / Math.PI;
  if (degrees >= wobbly) return [];
  return [
    {
      id: `top-heavy/${solid.id}`,
      severity: "caution",
      about: `solid/${solid.id}`,
      message:
        `The centre of mass is ${length(height)} up and ${length(worst.toCentre)} from the edge at the ${worst.name}: ` +
        `${solid.id} falls once it is tilted by ${Math.round(degrees)}°.`,
      remedy: "Make it lower or its base wider, or fix it to a wall.",
      source:
        "tip angle = arc tangent of half base over height of the centre; the limit of 20° is our choice",
    },
  ];
}
