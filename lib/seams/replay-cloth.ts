import type { Mm, Radians } from "../plane/types.ts";
import { flattenLoop } from "../plane/flatten-loop.ts";
import type { Panel, PanelSide } from "../panels/types.ts";

/** Chords stray no further than this from an arc, in mm, where its tangent is wanted. */
const fineChord: Mm = 1e-4;

export interface RawEdge {
  readonly edge: string;
  readonly panel: string;
  /** Knots it runs from and to, in the order of its panel's outline. */
  readonly from: number;
  readonly to: number;
  readonly isForward: boolean;
  readonly length: Mm;
  isRaw: boolean;
}

export interface Cloth {
  readonly edges: readonly RawEdge[];
  /** Each knot's representative. */
  readonly tied: number[];
  /** Cloth angle at each single corner, and the panel it is on. */
  readonly angles: readonly Radians[];
  readonly owner: readonly string[];
}

/** Every corner of every panel as a knot of its own. */
export function layOut(panels: readonly Panel[]): Cloth {
  const angles: Radians[] = [];
  const owner: string[] = [];
  const edges = panels.flatMap(({ id, loops }) =>
    loops.flatMap((loop) => {
      const first = angles.length;
      loop.forEach((side, i) => {
        angles.push(cornerAngle(loop.at(i - 1)!, side));
        owner.push(id);
      });
      return loop.map((side, i): RawEdge => ({
        edge: side.edge,
        panel: id,
        from: first + i,
        to: first + ((i + 1) % loop.length),
        isForward: side.isForward,
        length: side.length,
        isRaw: true,
      }));
    }),
  );
  return { edges, tied: angles.map((_, i) => i), angles, owner };
}

/** Angle of cloth between two sides, from chords a hair long: arcs count by their tangents. */
function cornerAngle(before: PanelSide, after: PanelSide): Radians {
  const [into, out] = [chordAt(before, true), chordAt(after, false)];
  const turn = Math.atan2(into[0] * out[1] - into[1] * out[0], into[0] * out[0] + into[1] * out[1]);
  return Math.PI - turn;
}

function chordAt({ segments }: PanelSide, atEnd: boolean): readonly [number, number] {
  const segment = atEnd ? segments.at(-1)! : segments[0]!;
  const points = [...flattenLoop([segment], fineChord), segment.to];
  const [a, b] = atEnd ? [points.at(-2)!, points.at(-1)!] : [points[0]!, points[1]!];
  return [b[0] - a[0], b[1] - a[1]];
}

/** The knot that stands for all it is tied to. */
export const find = ({ tied }: Cloth, knot: number): number => {
  let top = knot;
  while (tied[top] !== top) top = tied[top]!;
  return top;
};

export const tie = (cloth: Cloth, a: number, b: number): void => {
  cloth.tied[find(cloth, a)] = find(cloth, b);
};

export const banksOf = (cloth: Cloth, edge: string): readonly RawEdge[] =>
  cloth.edges.filter((one) => one.edge === edge);

/** Panels that hang together with one. */
export function pieceOf(cloth: Cloth, panel: string): ReadonlySet<string> {
  const reached = new Set([panel]);
  for (let size = 0; size !== reached.size;) {
    size = reached.size;
    const knots = new Set(
      cloth.owner.flatMap((owner, i) => (reached.has(owner) ? [find(cloth, i)] : [])),
    );
    cloth.owner.forEach((owner, i) => knots.has(find(cloth, i)) && reached.add(owner));
  }
  return reached;
}

/** Raw edges strung together knot by knot. */
export function rawLoops(cloth: Cloth): RawEdge[][] {
  const raw = cloth.edges.filter(({ isRaw }) => isRaw);
  const from = new Map(raw.map((edge) => [find(cloth, edge.from), edge]));
  const left = new Set(raw);
  const loops: RawEdge[][] = [];
  for (const start of raw) {
    const loop: RawEdge[] = [];
    for (let edge: RawEdge | undefined = start; edge !== undefined && left.delete(edge);) {
      loop.push(edge);
      edge = from.get(find(cloth, edge.to));
    }
    if (loop.length > 0) loops.push(loop);
  }
  return loops;
}

export const lengthOf = (edges: readonly RawEdge[]): Mm =>
  edges.reduce((sum, { length }) => sum + length, 0);
