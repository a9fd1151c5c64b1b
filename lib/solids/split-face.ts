import type { Loop, Point } from "../plane/types.ts";
import { midpoint } from "../plane/points.ts";
import { polygonArea } from "../plane/polygon-area.ts";
import { line, segmentLength } from "../plane/segments.ts";
import { liftPoint } from "./lift-point.ts";
import { distance3, dot3, subtract3 } from "./points3.ts";
import type { Face, FaceSide, Point3, Solid, SolidEdge } from "./types.ts";

/** Marks the half of a split face that lies further along its up. */
export const halfMark = "#half";

export interface SplitSolid {
  readonly solid: Solid;
  /** The edge that parts the two halves. */
  readonly edge: string;
  /** The half edges at both short ends, where the strips of the closing meet the rest of the boxing. */
  readonly ends: readonly string[];
}

/**
 * Part a strip along its middle: the line runs between the middles of its two short sides, so that a
 * closing can go in there. Both halves answer to the face's names.
 *
 * Null where the face is curved, or has not four straight sides each along one neighbour.
 */
export function splitFace(solid: Solid, id: string): SplitSolid | null {
  const face = solid.faces.find((one) => one.id === id);
  if (face === undefined || face.loops.length !== 1 || face.surface.kind !== "plane") return null;
  const [sides] = face.loops as [readonly FaceSide[]];
  const isPlain = ({ segments }: FaceSide) => segments.length === 1 && segments[0]!.kind === "line";
  if (sides.length !== 4 || !sides.every(isPlain)) return null;
  const edges = sides.map((side) => solid.edges.find((edge) => edge.id === side.edge)!);
  if (edges.some(({ faces: [a, b], path }) => a === b || path.length !== 2)) return null;
  // Turn the sides so that the long ones are the first and the third, the first the lower.
  const long = sides[0]!.length + sides[2]!.length >= sides[1]!.length + sides[3]!.length ? 0 : 1;
  const rise = (side: FaceSide) => dot3(spaceMiddle(face, side), face.up);
  const first = rise(sides[long]!) <= rise(sides[(long + 2) % 4]!) ? long : (long + 2) % 4;
  const [low, right, high, left] = [0, 1, 2, 3].map((i) => sides[(first + i) % 4]!) as [
    FaceSide,
    FaceSide,
    FaceSide,
    FaceSide,
  ];
  const upper = `${id}${halfMark}`;
  const middle = `${id}~${upper}`;
  const [p, q] = [middleOf(right), middleOf(left)];
  const own = (segment: Loop[number], edge: string, of: string, isForward: boolean): FaceSide => ({
    face: of,
    edge,
    segments: [segment],
    length: segmentLength(segment),
    isForward,
  });
  const [r, l] = [right.segments[0]!, left.segments[0]!];
  const lowerLoop = [
    low,
    own(line(r.from, p), near(right, true), id, right.isForward),
    own(line(p, q), middle, id, true),
    own(line(q, l.to), near(left, false), id, left.isForward),
  ];
  const upperLoop = [
    { ...high, face: upper },
    own(line(l.from, q), near(left, true), upper, left.isForward),
    own(line(q, p), middle, upper, false),
    own(line(p, r.to), near(right, false), upper, right.isForward),
  ];
  const halves = [
    halfFace(face, { id, loop: lowerLoop, word: "lower half" }),
    halfFace(face, { id: upper, loop: upperLoop, word: "upper half" }),
  ];
  const path = [p, q].map((point) => liftPoint(face.surface, point)) as [Point3, Point3];
  const cut = new Map([right, left].map((side) => [side.edge, side]));
  const belongs = (edge: SolidEdge, of: string): SolidEdge => ({
    ...edge,
    faces: edge.faces.map((one) => (one === id ? of : one)) as [string, string],
  });
  return {
    edge: middle,
    ends: [right, left].flatMap(({ edge }) => [edge, secondHalf(edge)]),
    solid: {
      ...solid,
      faces: solid.faces.flatMap((one) => (one === face ? halves : [splitSides(one, cut)])),
      edges: [
        ...solid.edges.flatMap((edge) => {
          const side = cut.get(edge.id);
          if (side === undefined) return [edge.id === high.edge ? belongs(edge, upper) : edge];
          return halveEdge(edge).map((half) => {
            const lies = lowerLoop.some((own) => own.edge === half.id) ? id : upper;
            return belongs(half, lies);
          });
        }),
        {
          id: middle,
          faces: [id, upper],
          length: distance3(...path),
          bend: "convex",
          turn: 0,
          isStraight: true,
          path,
        },
      ],
      mesh: splitMesh(solid, face, { id, upper, lowerLoop, upperLoop }),
    },
  };
}

const middleOf = ({ segments }: FaceSide): Point => midpoint(segments[0]!.from, segments[0]!.to);

const spaceMiddle = (face: Face, side: FaceSide): Point3 => liftPoint(face.surface, middleOf(side));

/** Each cut edge becomes two, the second named with a stroke, in the edge's own direction. */
const secondHalf = (edge: string): string => `${edge}'`;

/** The half of a side's edge that is met first, or last, on the way round the face. */
const near = ({ edge, isForward }: FaceSide, isStart: boolean): string =>
  isForward === isStart ? edge : secondHalf(edge);

function halveEdge(edge: SolidEdge): readonly SolidEdge[] {
  const [from, to] = edge.path as [Point3, Point3];
  const middle = from.map((part, i) => (part + to[i]!) / 2) as unknown as Point3;
  return [
    { ...edge, length: edge.length / 2, path: [from, middle] },
    { ...edge, id: secondHalf(edge.id), length: edge.length / 2, path: [middle, to] },
  ];
}

function halfFace(
  face: Face,
  { id, loop, word }: { id: string; loop: readonly FaceSide[]; word: string },
): Face {
  const outer = loop.flatMap(({ segments }) => segments);
  return {
    ...face,
    id,
    label: `${word} of the ${face.label}`,
    area: Math.abs(polygonArea(outer.map(({ from }) => from))),
    shape: { outer, holes: [] },
    loops: [loop],
  };
}

/** The neighbours' sides along a cut edge come apart in the middle too. */
function splitSides(face: Face, cut: ReadonlyMap<string, FaceSide>): Face {
  if (!face.loops.flat().some(({ edge }) => cut.has(edge))) return face;
  const loops = face.loops.map((loop) =>
    loop.flatMap((side): FaceSide[] => {
      const [segment] = side.segments;
      if (!cut.has(side.edge) || segment?.kind !== "line") return [side];
      const middle = middleOf(side);
      return [
        { ...side, edge: near(side, true), segments: [line(segment.from, middle)] },
        { ...side, edge: near(side, false), segments: [line(middle, segment.to)] },
      ].map((half) => ({ ...half, length: side.length / 2 }));
    }),
  );
  const [outer, ...holes] = loops.map((loop) => loop.flatMap(({ segments }) => segments));
  return { ...face, loops, shape: { outer: outer!, holes } };
}

/** The two halves as fans of triangles in place of the face's own. */
function splitMesh(
  { mesh }: Solid,
  face: Face,
  halves: {
    readonly id: string;
    readonly upper: string;
    readonly lowerLoop: readonly FaceSide[];
    readonly upperLoop: readonly FaceSide[];
  },
): Solid["mesh"] {
  const points = [...mesh.points];
  const knot = (flat: Point): number => {
    const at = liftPoint(face.surface, flat);
    const known = points.findIndex((point) => Math.hypot(...subtract3(point, at)) < 1e-6);
    return known >= 0 ? known : points.push(at) - 1;
  };
  const kept = mesh.triangles.flatMap((triangle, i) =>
    mesh.faces[i] === face.id ? [] : [{ triangle, face: mesh.faces[i]! }],
  );
  const fans = [
    { loop: halves.lowerLoop, face: halves.id },
    { loop: halves.upperLoop, face: halves.upper },
  ].flatMap(({ loop, face: of }) => {
    const [a, b, c, d] = loop.map(({ segments }) => knot(segments[0]!.from)) as [
      number,
      number,
      number,
      number,
    ];
    return [
      { triangle: [a, b, c] as const, face: of },
      { triangle: [a, c, d] as const, face: of },
    ];
  });
  const all = [...kept, ...fans];
  return {
    points,
    triangles: all.map(({ triangle }) => triangle),
    faces: all.map((one) => one.face),
  };
}
