import type { Mm, Polygon } from "../plane/types.ts";
import { touching } from "./no-fit-depth.ts";
import type { StripForm, StripItem, StripJob } from "./strip-types.ts";

/**
 * A length that no lay can beat: the largest of three bounds.
 *
 * Area: all pieces side by side without a gap. Tallest: the piece that stands highest at its lowest
 * turn. Middle: pieces wider than half the cloth at every turn all cross its middle line, so the
 * lengths they take of that line add up.
 *
 * @source Martello, Monaci and Vigo 2003, "An exact approach to the strip-packing problem" (bounds
 * L0 and L1), the last carried over from rectangles to outlines here
 */
export function layBound(job: StripJob): Mm {
  const area = job.items.reduce((sum, item) => sum + item.area, 0) / job.width;
  const tallest = Math.max(0, ...job.items.map((item) => least(job, item, (form) => form.height)));
  const middle = job.items.reduce((sum, item) => {
    const chord = least(job, item, (form) => middleChord(form, job.width));
    return sum + chord;
  }, 0);
  return Math.max(area, tallest, middle, steppedMiddle(job));
}

/** The least value over the forms that fit the width; 0 for an item that fits in none. */
function least(job: StripJob, item: StripItem, of: (form: StripForm) => Mm): Mm {
  const fitting = item.forms
    .map((form) => job.forms[form]!)
    .filter((f) => f.width <= job.width + touching);
  return fitting.length === 0 ? 0 : Math.min(...fitting.map(of));
}

/** Least length of the middle line a form can take, wherever it lies across the cloth. */
function middleChord(form: StripForm, width: Mm): Mm {
  if (form.width <= width / 2) return 0;
  const to = width / 2;
  const from = Math.min(to, form.width - width / 2);
  const stops = [from, to, ...form.polygon.map(([x]) => x)].filter((x) => x >= from && x <= to);
  const eps = 1e-7 * width;
  return Math.min(
    ...stops.flatMap((x) => [chordAt(form.polygon, x - eps), chordAt(form.polygon, x + eps)]),
  );
}

/** Length of an upright line within a polygon. */
function chordAt(polygon: Polygon, x: Mm): Mm {
  const heights = polygon.flatMap(([ax, ay], i) => {
    const [bx, by] = polygon[(i + 1) % polygon.length]!;
    return ax <= x === bx <= x ? [] : [ay + ((x - ax) * (by - ay)) / (bx - ax)];
  });
  const sorted = heights.sort((a, b) => a - b);
  let length = 0;
  for (let i = 0; i + 1 < sorted.length; i += 2) length += sorted[i + 1]! - sorted[i]!;
  return length;
}

/**
 * Rectangles wider than half the cloth that must start at a repeat follow one another in whole
 * repeats; only the last is not rounded up.
 */
function steppedMiddle(job: StripJob): Mm {
  const wide = job.items.filter((item) => {
    const forms = item.forms.map((form) => job.forms[form]!);
    // Pieces that start elsewhere in the repeat may follow closer.
    return (
      item.stepY > 0 &&
      (item.startY ?? 0) === 0 &&
      forms.every((form) => isWideRectangle(form, item, job.width))
    );
  });
  let sum = 0;
  let spare = 0;
  for (const item of wide) {
    const height = least(job, item, (form) => form.height);
    const rounded = Math.ceil(height / item.stepY - 1e-9) * item.stepY;
    sum += rounded;
    spare = Math.max(spare, rounded - height);
  }
  return sum - spare;
}

const isWideRectangle = (form: StripForm, item: StripItem, width: Mm): boolean =>
  form.width > width / 2 && form.width * form.height <= item.area * (1 + 1e-9);
