import { Clipper, FillRule, type PathD, type PathsD } from "clipper2-ts";
import type { Point, Polygon } from "../plane/types.ts";
import type { Point3 } from "../solids/types.ts";
import { boxesOverlap, boxOfPoints } from "./boxes.ts";
import { insidePoints, isInsideRings } from "./inside-point.ts";
import { nearnessAt, type Scene, type SceneTriangle } from "./mesh-scene.ts";
import { nearness, project, type SpaceView } from "./space-view.ts";
import type { Box } from "./types.ts";

/** What can be seen of one face: rings on the paper, holes among them. */
export interface VisibleFace {
  readonly face: string;
  readonly region: readonly Polygon[];
}

/** A flat area lying on a face, such as where glue goes. */
export interface Overlay {
  readonly face: string;
  readonly outlines: readonly (readonly Point3[])[];
}

interface Patch {
  readonly face: string;
  readonly region: PathsD;
  readonly box: Box;
  readonly nearAt: (at: Point) => number | null;
}

const PRECISION = 4;
/** Real millimetres by which one face must stand before another to cover it. */
const BEFORE = 0.5;

/**
 * The part of each face that the viewer sees, in the order of the mesh.
 *
 * Two faces of a solid never pass through one another, so wherever their pictures overlap one is
 * in front all over that overlap; it is tested at one point inside and taken away from the other.
 */
export function visibleFaces(scene: Scene): VisibleFace[] {
  const patches = facePatches(scene);
  return patches.map((patch) => uncovered(patch, patches));
}

/** The parts of flat areas that the viewer sees, where the scene's faces do not cover them. */
export function visibleOverlays(overlays: readonly Overlay[], scene: Scene): VisibleFace[] {
  const patches = facePatches(scene);
  return overlays.map((overlay) => uncovered(overlayPatch(overlay, scene.view), patches));
}

function uncovered(patch: Patch, others: readonly Patch[]): VisibleFace {
  let region = patch.region;
  for (const other of others) {
    if (other === patch || region.length === 0 || !boxesOverlap(patch.box, other.box)) continue;
    const shared = Clipper.intersectD(region, other.region, FillRule.NonZero, PRECISION);
    const covered = coveredRings(shared, patch, other);
    if (covered.length > 0)
      region = Clipper.differenceD(region, covered, FillRule.NonZero, PRECISION);
  }
  return { face: patch.face, region: region.map(toPolygon) };
}

/** The overlaps in which `other` is in front, each with its own holes. */
function coveredRings(shared: PathsD, patch: Patch, other: Patch): PathsD {
  const holes = shared.filter((ring) => Clipper.areaD(ring) < 0);
  return shared.flatMap((ring) => {
    if (Clipper.areaD(ring) < 1e-3) return [];
    const outline = toPolygon(ring);
    const own = holes.filter(
      ([corner]) => corner && isInsideRings([corner.x, corner.y], [outline]),
    );
    const rings = [outline, ...own.map(toPolygon)];
    const inFront = insidePoints(rings, 3).some((at) => {
      const [mine, its] = [patch.nearAt(at), other.nearAt(at)];
      return mine !== null && its !== null && its > mine + BEFORE;
    });
    return inFront ? [ring, ...own] : [];
  });
}

/** Front sides of each face, as one region of the paper each. */
function facePatches(scene: Scene): Patch[] {
  const groups = new Map<string, SceneTriangle[]>();
  for (const triangle of scene.triangles) {
    if (!triangle.isFront) continue;
    const group = groups.get(triangle.face);
    if (group) group.push(triangle);
    else groups.set(triangle.face, [triangle]);
  }
  return [...groups].map(([face, triangles]) => {
    const rings = triangles.map(({ paper }) => paper.map(([x, y]) => ({ x, y })).reverse());
    const region = Clipper.unionD(rings, [], FillRule.NonZero, PRECISION);
    const box = boxOfPoints(triangles.flatMap(({ paper }) => paper));
    return { face, region, box, nearAt: (at) => nearest(triangles, at) };
  });
}

function overlayPatch({ face, outlines }: Overlay, view: SpaceView): Patch {
  const rings = outlines.map((outline) => outline.map((point) => project(view, point)));
  const paths = rings.map((ring) => ring.map(([x, y]) => ({ x, y })));
  const region = Clipper.unionD(paths, [], FillRule.EvenOdd, PRECISION);
  // A flat area is as near as the plane through three of its corners.
  const corners = outlines.flat();
  const plane = planeNearness(corners, view);
  return { face, region, box: boxOfPoints(rings.flat()), nearAt: plane };
}

function planeNearness(corners: readonly Point3[], view: SpaceView): (at: Point) => number | null {
  const [a, b] = corners;
  if (!a || !b) return () => null;
  const [p, q] = [project(view, a), project(view, b)];
  const doubleArea = (c: Point3) => {
    const r = project(view, c);
    return (q[0] - p[0]) * (r[1] - p[1]) - (q[1] - p[1]) * (r[0] - p[0]);
  };
  const c = corners.reduce((best, next) =>
    Math.abs(doubleArea(next)) > Math.abs(doubleArea(best)) ? next : best,
  );
  const r = project(view, c);
  const area = doubleArea(c);
  const [na, nb, nc] = [nearness(view, a), nearness(view, b), nearness(view, c)];
  if (Math.abs(area) < 1e-9) return () => null;
  return ([x, y]) => {
    const v = ((x - p[0]) * (r[1] - p[1]) - (y - p[1]) * (r[0] - p[0])) / area;
    const w = ((q[0] - p[0]) * (y - p[1]) - (q[1] - p[1]) * (x - p[0])) / area;
    return na + v * (nb - na) + w * (nc - na);
  };
}

function nearest(triangles: readonly SceneTriangle[], at: Point): number | null {
  return triangles.reduce<number | null>((best, triangle) => {
    const near = nearnessAt(triangle, at, 1e-6);
    return near === null ? best : best === null ? near : Math.max(best, near);
  }, null);
}

function toPolygon(path: PathD): Polygon {
  return path.map(({ x, y }): Point => [x, y]);
}
