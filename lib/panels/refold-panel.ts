import type { Mm, Point, Radians } from "../plane/types.ts";
import { angleOf, cross, distance, dot, rotate, subtract, unit } from "../plane/points.ts";
import { add3, cross3, distance3, dot3, scale3, subtract3, unit3 } from "../solids/points3.ts";
import { normalOf } from "../solids/surfaces.ts";
import { narrowsUp } from "../solids/lift-point.ts";
import type { ConeSurface, Direction, Face, Point3 } from "../solids/types.ts";
import { sampleSide, type Sample } from "./sample-side.ts";
import type { Fold, Panel, PanelFace, RefoldProof } from "./types.ts";
import type { FaceGraph } from "./unfold-panel.ts";

/** A touch of the flat on the solid: a flat point, its place, and where flat x and y point there. */
interface Touch {
  readonly flat: Point;
  readonly space: Point3;
  readonly across: Direction;
  readonly rise: Direction;
}

/** Corners that come back further off than this have not come back. */
const closeEnough: Mm = 1e-4;

/**
 * Fold panels up again and measure how far their outlines miss the solid.
 *
 * The first face is held against the solid; every other is swung about its fold by the angle the
 * solid has there, and curved faces are rolled up round their radius. Nothing is taken back from
 * the unfolding but the flat figures themselves.
 */
export function refoldPanels(panels: readonly Panel[], graph: FaceGraph): RefoldProof {
  const worst = panels.reduce((most, panel) => Math.max(most, refoldPanel(panel, graph)), 0);
  return { ok: worst <= closeEnough, worst };
}

function refoldPanel(panel: Panel, graph: FaceGraph): Mm {
  const samples = new Map<string, Sample[]>();
  for (const side of panel.loops.flat()) {
    const own = samples.get(side.face) ?? [];
    samples.set(side.face, [...own, ...sampleSide(side, graph.edges.get(side.edge)!)]);
  }
  const first = panel.faces.find(({ face }) =>
    isEnough(samples.get(face) ?? [], graph.faces.get(face)!),
  )!;
  if (first === undefined) return Infinity;
  const touches = new Map<string, Touch>([
    [first.face, holdAgainst(first, graph, samples.get(first.face)!)],
  ]);
  const waiting = [first.face];
  while (waiting.length > 0) {
    const face = waiting.shift()!;
    for (const fold of panel.folds.filter(({ faces }) => faces.includes(face))) {
      const other = fold.faces[0] === face ? fold.faces[1] : fold.faces[0];
      if (touches.has(other)) continue;
      const placed = panel.faces.find((one) => one.face === face)!;
      touches.set(
        other,
        swing(fold, face, (point) =>
          roll(touches.get(face)!, placed, graph.faces.get(face)!, point),
        ),
      );
      waiting.push(other);
    }
  }
  return panel.faces.reduce((most, placed) => {
    const touch = touches.get(placed.face);
    if (touch === undefined) return Infinity;
    const gaps = (samples.get(placed.face) ?? []).map(({ flat, space }) =>
      distance3(roll(touch, placed, graph.faces.get(placed.face)!, flat).space, space),
    );
    return Math.max(most, ...gaps);
  }, 0);
}

/** A flat face needs three samples that are not in line; a curved one needs any. */
const isEnough = (samples: readonly Sample[], face: Face): boolean =>
  face.isCurved ? samples.length > 0 : spread(samples) !== null;

/** Three samples that span the plane best from the first. */
function spread(samples: readonly Sample[]): readonly [Sample, Sample, Sample] | null {
  const [a] = samples;
  if (a === undefined) return null;
  const b = samples.reduce((far, one) =>
    distance(one.flat, a.flat) > distance(far.flat, a.flat) ? one : far,
  );
  const off = (one: Sample) =>
    Math.abs(cross(subtract(b.flat, a.flat), subtract(one.flat, a.flat)));
  const c = samples.reduce((far, one) => (off(one) > off(far) ? one : far));
  return off(c) < 1e-6 ? null : [a, b, c];
}

function holdAgainst(placed: PanelFace, graph: FaceGraph, samples: readonly Sample[]): Touch {
  const face = graph.faces.get(placed.face)!;
  const { surface } = face;
  if (surface.kind !== "plane") {
    const { flat, space } = samples.find(
      (sample) => surface.kind !== "cone" || distance3(sample.space, surface.tip) > 1e-6,
    )!;
    const ruling = surface.kind === "cone" ? unit3(subtract3(space, surface.tip)) : surface.axis;
    const normal = normalOf(surface, space);
    return touchAlong(flat, space, rulingInFlat(placed, face, flat), ruling, normal);
  }
  const [a, b, c] = spread(samples)!;
  const along = unit3(subtract3(b.space, a.space));
  const normal = unit3(cross3(along, subtract3(c.space, a.space)));
  const isLeft = cross(subtract(b.flat, a.flat), subtract(c.flat, a.flat)) > 0;
  return touchAlong(
    a.flat,
    a.space,
    unit(subtract(b.flat, a.flat)),
    along,
    isLeft ? normal : scale3(normal, -1),
  );
}

/** A touch from one flat direction, where it points in space, and the outward normal. */
function touchAlong(
  flat: Point,
  space: Point3,
  flatAlong: Point,
  along: Direction,
  normal: Direction,
): Touch {
  const left = cross3(normal, along);
  const [x, y] = flatAlong;
  return {
    flat,
    space,
    across: unit3(subtract3(scale3(along, x), scale3(left, y))),
    rise: unit3(add3(scale3(along, y), scale3(left, x))),
  };
}

/** Flat direction of the straight line on a curved face through a flat point. */
function rulingInFlat(placed: PanelFace, face: Face, flat: Point): Point {
  if (face.surface.kind === "cone") return unit(subtract(flat, placed.placement.shift));
  return rotate([0, 1], placed.placement.turn);
}

/** Where another flat point of the same face comes to lie, and the flat's directions there. */
function roll(touch: Touch, placed: PanelFace, face: Face, flat: Point): Touch {
  const { surface } = face;
  const step = subtract(flat, touch.flat);
  const inSpace = (flatStep: Point): Point3 =>
    add3(scale3(touch.across, flatStep[0]), scale3(touch.rise, flatStep[1]));
  const normal = cross3(touch.across, touch.rise);
  if (surface.kind === "plane") return { ...touch, flat, space: add3(touch.space, inSpace(step)) };
  const ruling = rulingInFlat(placed, face, touch.flat);
  const [along, side] = [inSpace(ruling), inSpace(rotate(ruling, -Math.PI / 2))];
  if (surface.kind === "cylinder") {
    const angle: Radians = dot(step, rotate(ruling, -Math.PI / 2)) / surface.radius;
    const bulge = subtract3(
      scale3(side, surface.radius * Math.sin(angle)),
      scale3(normal, surface.radius * (1 - Math.cos(angle))),
    );
    const space = add3(touch.space, add3(bulge, scale3(along, dot(step, ruling))));
    const turned = unit3(
      subtract3(scale3(normal, Math.cos(angle)), scale3(side, -Math.sin(angle))),
    );
    return touchAlong(flat, space, ruling, along, turned);
  }
  return rollCone(touch, placed, surface, flat, along, normal);
}

/** On a cone the flat turns about its tip, and the surface turns about the axis as it goes. */
function rollCone(
  touch: Touch,
  placed: PanelFace,
  surface: ConeSurface,
  flat: Point,
  along: Point3,
  normal: Point3,
): Touch {
  const { halfAngle } = surface;
  const isNarrowAbove = narrowsUp(surface);
  const flatTip = placed.placement.shift;
  const [own, other] = [subtract(touch.flat, flatTip), subtract(flat, flatTip)];
  const [sine, cosine] = [Math.sin(halfAngle), Math.cos(halfAngle)];
  // Does the ruling run from the tip? Its axis and the way out follow from the normal.
  const axis = unit3(subtract3(scale3(along, cosine), scale3(normal, sine)));
  const out = unit3(add3(scale3(along, sine), scale3(normal, cosine)));
  const tip = subtract3(touch.space, scale3(along, Math.hypot(...own)));
  // A flat sector may sweep more than half a turn: both ends are measured from its middle.
  const middle = rotate([0, isNarrowAbove ? -1 : 1], placed.placement.turn);
  const fromMiddle = (to: Point): Radians => angleOf([dot(middle, to), cross(middle, to)]);
  const round = (fromMiddle(other) - fromMiddle(own)) / sine;
  // Counter-clockwise in the flat, seen from outside, is counter-clockwise about the normal's side.
  const side = cross3(axis, out);
  const handed = dot3(cross3(normal, along), side) > 0 ? 1 : -1;
  const turned = unit3(add3(scale3(out, Math.cos(round)), scale3(side, handed * Math.sin(round))));
  const reach = Math.hypot(...other);
  const ruling = unit3(add3(scale3(turned, sine), scale3(axis, cosine)));
  const space = add3(tip, scale3(ruling, reach));
  const newNormal = unit3(subtract3(scale3(turned, cosine), scale3(axis, sine)));
  return touchAlong(flat, space, reach === 0 ? [0, 1] : unit(other), ruling, newNormal);
}

/** Swing the face beyond a fold by the angle the solid has there. */
function swing(fold: Fold, face: string, at: (flat: Point) => Touch): Touch {
  // Keep our face to the left of travel.
  const [from, to] = fold.faces[0] === face ? [fold.from, fold.to] : [fold.to, fold.from];
  const touch = at(from);
  const along = unit3(subtract3(at(to).space, touch.space));
  const normal = cross3(touch.across, touch.rise);
  const angle = fold.bend === "convex" ? fold.turn : -fold.turn;
  const right = cross3(along, normal);
  const swung = unit3(add3(scale3(normal, Math.cos(angle)), scale3(right, Math.sin(angle))));
  return touchAlong(from, touch.space, unit(subtract(to, from)), along, swung);
}
