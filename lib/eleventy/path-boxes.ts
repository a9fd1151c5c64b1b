import { OPS } from "pdfjs-dist/legacy/build/pdf.mjs";
import type { Mm } from "../plane/types.ts";

const mmPerPoint = 25.4 / 72;

/** Where something lies on a page, from its lower left corner. */
export interface Box {
  readonly left: Mm;
  readonly low: Mm;
  readonly width: Mm;
  readonly height: Mm;
}

/** What is seen of a path that is painted. */
export interface PathBox extends Box {
  /** How much of it, the larger of across and up, lies where nothing may be painted. */
  readonly lost: Mm;
}

/** How a drawing lies on its page: x and y of the unit across, of the unit up, and of the origin. */
export type Matrix = readonly [number, number, number, number, number, number];

/** Follow the drawing operators, keeping matrix and clip, and box every path that is painted. */
export function pathBoxes({
  fnArray,
  argsArray,
}: {
  fnArray: number[];
  argsArray: unknown[];
}): readonly PathBox[] {
  const boxes: PathBox[] = [];
  const saved: State[] = [];
  let state: State = { matrix: [1, 0, 0, 1, 0, 0], clip: null };
  let isClip = false;
  fnArray.forEach((operator, i) => {
    const values = argsArray[i] as readonly unknown[];
    if (operator === OPS.save) saved.push(state);
    if (operator === OPS.restore) state = saved.pop() ?? state;
    if (operator === OPS.transform) {
      state = { ...state, matrix: multiply(state.matrix, values as unknown as Matrix) };
    }
    if (operator === OPS.clip || operator === OPS.eoClip) isClip = true;
    if (operator !== OPS.constructPath) return;
    // [paint operator, path data, box of the path as left, low, right, high]
    const bounds = values[2] as ArrayLike<number> | null | undefined;
    if (bounds?.length !== 4) return;
    const whole = boxOf(bounds, state.matrix);
    const box = within(whole, state.clip);
    if (isClip) state = { ...state, clip: box };
    else if (box.width >= 0 && box.height >= 0) {
      const lost = Math.max(whole.width - box.width, whole.height - box.height);
      boxes.push({ ...box, lost });
    }
    isClip = false;
  });
  return boxes;
}

interface State {
  readonly matrix: Matrix;
  /** What of the page is open to paint, as a box; null for all of it. */
  readonly clip: Box | null;
}

/** The part of a box that lies in another; of negative size where none does. */
function within(box: Box, clip: Box | null): Box {
  if (clip === null) return box;
  const left = Math.max(box.left, clip.left);
  const low = Math.max(box.low, clip.low);
  const right = Math.min(box.left + box.width, clip.left + clip.width);
  const high = Math.min(box.low + box.height, clip.low + clip.height);
  return { left, low, width: right - left, height: high - low };
}

/** The box round left, low, right and high in points, in mm of the page. */
export function boxOf(bounds: ArrayLike<number>, [a, b, c, d, e, f]: Matrix): Box {
  const corners = [0, 2].flatMap((x) =>
    [1, 3].map(
      (y) => [a * bounds[x]! + c * bounds[y]! + e, b * bounds[x]! + d * bounds[y]! + f] as const,
    ),
  );
  const xs = corners.map(([x]) => x * mmPerPoint);
  const ys = corners.map(([, y]) => y * mmPerPoint);
  const [left, low] = [Math.min(...xs), Math.min(...ys)];
  return { left, low, width: Math.max(...xs) - left, height: Math.max(...ys) - low };
}

const multiply = ([a, b, c, d, e, f]: Matrix, [g, h, i, j, k, l]: Matrix): Matrix => [
  a * g + c * h,
  b * g + d * h,
  a * i + c * j,
  b * i + d * j,
  a * k + c * l + e,
  b * k + d * l + f,
];
