import type { Count, Mm, Point, Radians, Segment } from "../plane/types.ts";
import { arcRadius, arcSweep, pointAlong } from "../plane/segments.ts";
import type { Axis, BlockSpec, FrustumBlock } from "../project/types.ts";
import { profileBlock, type Profile } from "./profile-block.ts";
import { cross3, dot3, scale3, subtract3, unit3 } from "./points3.ts";
import { triangulate } from "./mesh-kernel.ts";
import type { Direction, Point3, Surface } from "./types.ts";

/** A block as triangles that know which side, and which facet of a curved side, they belong to. */
export interface BlockMesh {
  readonly points: readonly Point3[];
  readonly triangles: readonly BlockTriangle[];
  /** Sides in order; each with its true surface. */
  readonly sides: readonly BlockSide[];
}

export interface BlockSide {
  readonly name: string;
  readonly surface: Surface;
}

export interface BlockTriangle {
  readonly corners: readonly [Count, Count, Count];
  readonly side: Count;
  readonly facet: Count;
}

/** Facets stray this far from a curved side; true lengths never come from facets. */
const facetTolerance: Mm = 0.25;

/** @param finer how many times the usual number of facets round a curve */
export function meshBlock(block: BlockSpec, finer: Count = 1): BlockMesh {
  const mesh =
    block.kind === "frustum" ? meshFrustum(block, finer) : meshProfile(profileBlock(block), finer);
  return { ...mesh, points: mesh.points.map(snap) };
}

/** 6 in and 12 in must meet 18 in exactly: places are kept to a ten-millionth of a millimetre. */
const snap = (point: Point3): Point3 =>
  point.map((part) => Math.round(part * 1e7) / 1e7) as unknown as Point3;

/** Chords for a full circle: a multiple of eight, so that quarter points are corners. */
function circleFacets(radius: Mm): Count {
  const wanted = Math.PI / Math.acos(1 - Math.min(1, facetTolerance / radius));
  return Math.min(160, Math.max(32, 8 * Math.ceil(wanted / 8)));
}

function meshProfile(profile: Profile, finer: Count): BlockMesh {
  const ring: { point: Point; side: Count; facet: Count }[] = [];
  const sides: BlockSide[] = [];
  const { loop, sides: names, height } = profile;
  const sideOf = (i: number): Count => {
    const surface = sideSurface(profile, loop[i]!);
    // The two halves of a cylinder are one side.
    const same = sides.findIndex(
      (side) =>
        side.name === names[i] && surface.kind === "cylinder" && isSameAxis(side.surface, surface),
    );
    return same >= 0 ? same : sides.push({ name: names[i]!, surface }) - 1;
  };
  let facet = 0;
  loop.forEach((segment, i) => {
    const side = sideOf(i);
    const chords = segment.kind === "line" ? 1 : finer * chordsOf(segment);
    for (let chord = 0; chord < chords; chord++, facet++) {
      ring.push({
        point: chord === 0 ? segment.from : pointAlong(segment, chord / chords),
        side,
        facet,
      });
    }
  });
  const lift = (point: Point, along: Mm) => toSpace(profile, point, along);
  const n = ring.length;
  const points = [
    ...ring.map(({ point }) => lift(point, 0)),
    ...ring.map(({ point }) => lift(point, height)),
  ];
  const isMirrored = profile.axis === "y"; // x, z, y is a left-handed order
  const facing = (a: Count, b: Count, c: Count): readonly [Count, Count, Count] =>
    isMirrored ? [a, c, b] : [a, b, c];
  const walls = ring.flatMap(({ side, facet }, i): BlockTriangle[] => {
    const next = (i + 1) % n;
    return [
      { corners: facing(i, next, next + n), side, facet },
      { corners: facing(i, next + n, i + n), side, facet },
    ];
  });
  const low = sides.push({ name: profile.ends[0], surface: endSurface(profile, 0) }) - 1;
  const high = sides.push({ name: profile.ends[1], surface: endSurface(profile, height) }) - 1;
  const caps = triangulate(ring.map(({ point }) => point)).flatMap(([a, b, c]): BlockTriangle[] => [
    { corners: facing(a, c, b), side: low, facet: 0 },
    { corners: facing(a + n, b + n, c + n), side: high, facet: 0 },
  ]);
  return { points, triangles: [...walls, ...caps], sides };
}

const isSameAxis = (a: Surface, b: Surface): boolean =>
  a.kind === "cylinder" &&
  b.kind === "cylinder" &&
  dot3(subtract3(a.centre, b.centre), subtract3(a.centre, b.centre)) < 1e-12;

const chordsOf = (arc: Segment & { kind: "arc" }): Count =>
  Math.max(1, Math.round((circleFacets(arcRadius(arc)) * Math.abs(arcSweep(arc))) / (2 * Math.PI)));

const axes: Record<Axis, readonly [across: Direction, up: Direction, along: Direction]> = {
  x: [
    [0, 1, 0],
    [0, 0, 1],
    [1, 0, 0],
  ],
  y: [
    [1, 0, 0],
    [0, 0, 1],
    [0, 1, 0],
  ],
  z: [
    [1, 0, 0],
    [0, 1, 0],
    [0, 0, 1],
  ],
};

function toSpace({ axis, origin, start }: Profile, point: Point, along: Mm): Point3 {
  const [u, v, w] = [origin[0] + point[0], origin[1] + point[1], start + along];
  return axis === "x" ? [w, u, v] : axis === "y" ? [u, w, v] : [u, v, w];
}

function sideSurface(profile: Profile, segment: Segment): Surface {
  const [across, up, along] = axes[profile.axis];
  if (segment.kind === "arc") {
    const centre = toSpace(profile, segment.centre, 0);
    return { kind: "cylinder", centre, axis: along, zero: across, radius: arcRadius(segment) };
  }
  const travel = subtract3(toSpace(profile, segment.to, 0), toSpace(profile, segment.from, 0));
  // The loop runs counter-clockwise in (across, up), so outside lies to the right of travel.
  const right = unit3(
    [0, 1, 2].map(
      (i) => dot3(travel, up) * across[i]! - dot3(travel, across) * up[i]!,
    ) as unknown as Point3,
  );
  return planeSurface(toSpace(profile, segment.from, 0), right);
}

function endSurface(profile: Profile, along: Mm): Surface {
  const [, , direction] = axes[profile.axis];
  const at = toSpace(profile, profile.loop[0]!.from, along);
  return planeSurface(at, along === 0 ? scale3(direction, -1) : direction);
}

/** A plane through a point; which way its flat axes lie is settled when it becomes a face. */
export function planeSurface(origin: Point3, normal: Direction): Surface {
  const helper: Direction = Math.abs(normal[2]) < 0.9 ? [0, 0, 1] : [0, 1, 0];
  const across = unit3(cross3(helper, normal));
  return { kind: "plane", origin, across, rise: unit3(cross3(normal, across)) };
}

function meshFrustum({ at, base, top, height }: FrustumBlock, finer: Count): BlockMesh {
  const wide = Math.max(base, top) / 2;
  const n = finer * circleFacets(wide);
  const centre: Point3 = [at[0] + wide, at[1] + wide, at[2]];
  const ringAt = (radius: Mm, z: Mm): Point3[] =>
    Array.from({ length: n }, (_, i) => {
      const angle: Radians = (2 * Math.PI * i) / n;
      return [
        centre[0] + radius * Math.cos(angle),
        centre[1] + radius * Math.sin(angle),
        at[2] + z,
      ];
    });
  const surface = frustumSurface(centre, base / 2, top / 2, height);
  const isCone = top === 0;
  const tip: Point3 = [centre[0], centre[1], at[2] + height];
  const points = [...ringAt(base / 2, 0), ...(isCone ? [tip] : ringAt(top / 2, height))];
  const walls = Array.from({ length: n }, (_, i): BlockTriangle[] => {
    const next = (i + 1) % n;
    const first: BlockTriangle = { corners: [i, next, isCone ? n : next + n], side: 0, facet: i };
    return isCone ? [first] : [first, { corners: [i, next + n, i + n], side: 0, facet: i }];
  }).flat();
  const fan = Array.from({ length: n - 2 }, (_, i) => [0, i + 1, i + 2] as const);
  const floor = fan.map(([a, b, c]): BlockTriangle => ({ corners: [a, c, b], side: 1, facet: 0 }));
  const roof = fan.map(([a, b, c]): BlockTriangle => ({
    corners: [a + n, b + n, c + n],
    side: 2,
    facet: 0,
  }));
  return {
    points,
    triangles: isCone ? [...walls, ...floor] : [...walls, ...floor, ...roof],
    sides: [
      { name: "around", surface },
      { name: "underside", surface: planeSurface(centre, [0, 0, -1]) },
      ...(isCone ? [] : [{ name: "top", surface: planeSurface(tip, [0, 0, 1]) }]),
    ],
  };
}

function frustumSurface(centre: Point3, base: Mm, top: Mm, height: Mm): Surface {
  const zero: Direction = [1, 0, 0];
  if (base === top) return { kind: "cylinder", centre, axis: [0, 0, 1], zero, radius: base };
  const narrowsUp = base > top;
  // Similar triangles: the tip lies where the two rims would shrink to a point.
  const tipHeight = (height * base) / (base - top);
  return {
    kind: "cone",
    tip: [centre[0], centre[1], centre[2] + tipHeight],
    axis: narrowsUp ? [0, 0, -1] : [0, 0, 1],
    zero,
    halfAngle: Math.atan2(Math.abs(base - top), height),
  };
}
