import fc from "fast-check";
import pointInPolygon from "point-in-polygon-hao";
import { expect, test } from "vitest";
import { findNoFit } from "../../lib/packing/no-fit.ts";
import { noFitDepth } from "../../lib/packing/no-fit-depth.ts";
import { makeForm } from "../../lib/packing/place-forms.ts";
import type { Point, Polygon } from "../../lib/plane/types.ts";

/** A dot as mover: the no-fit region is then the outline itself, so that depth is plain distance. */
const dot = makeForm(
  [
    [0, 0],
    [1e-9, 0],
    [0, 1e-9],
  ],
  0,
  false,
);

/** Distance to the nearest side, side by side. */
const distance = (outline: Polygon, [x, y]: Point): number =>
  Math.min(
    ...outline.map(([ax, ay], i) => {
      const [bx, by] = outline[(i + 1) % outline.length]!;
      const [ux, uy] = [bx - ax, by - ay];
      const along = ((x - ax) * ux + (y - ay) * uy) / (ux * ux + uy * uy);
      const held = Math.min(1, Math.max(0, along));
      return Math.hypot(x - ax - held * ux, y - ay - held * uy);
    }),
  );

const star = fc
  .array(fc.integer({ min: 20, max: 200 }), { minLength: 5, maxLength: 14 })
  .map((arms): Polygon =>
    arms.map((arm, i): Point => {
      const angle = (2 * Math.PI * i) / arms.length;
      return [arm * Math.cos(angle), arm * Math.sin(angle)];
    }),
  );

test("depths are the distance to the nearest side inside, and 0 outside, by brute force", () => {
  const at = fc.double({ min: 0, max: 400, noNaN: true });
  fc.assert(
    fc.property(
      star,
      fc.array(fc.tuple(at, at), { minLength: 20, maxLength: 20 }),
      (arms, points) => {
        const form = makeForm(arms, 0, false);
        const region = findNoFit(form, dot);
        const ring = [...form.polygon, form.polygon[0]!].map(([x, y]): [number, number] => [x, y]);
        for (const point of points) {
          const isInside = pointInPolygon([...point], [ring]) === true;
          const expected = isInside ? distance(form.polygon, point) : 0;
          // Corners of the region are kept to a millionth of a millimetre.
          expect(noFitDepth(region, ...point)).toBeCloseTo(expected, 4);
        }
      },
    ),
    { numRuns: 60, seed: 5 },
  );
});
