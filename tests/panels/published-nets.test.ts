import { describe, expect, test } from "vitest";
import { arcRadius, arcSweep, segmentLength } from "../../lib/plane/segments.ts";
import type { BlockSpec } from "../../lib/project/types.ts";
import { buildSolid } from "../../lib/solids/build-solid.ts";
import { cylinder, frustum, inch, wedge } from "../fixtures/blocks.ts";
import { arcsOf } from "../fixtures/make-cover.ts";
import { panelsBy } from "../fixtures/plain-panels.ts";

const degrees = 180 / Math.PI;

/** Radii and sweep of the flat ring sector that the side of a round form becomes. */
function sectorOf(block: BlockSpec) {
  const { panels } = panelsBy("plain", buildSolid({ id: "form", foam: null, blocks: [block] }));
  const side = panels.find(({ faces }) => faces.some(({ face }) => face.endsWith("/around")))!;
  expect(side.faces.length).toBe(1);
  const arcs = arcsOf(side.shape.outer);
  const radii = arcs.map(arcRadius);
  const outer = Math.max(...radii);
  const swept = (radius: number) =>
    arcs
      .filter((arc) => Math.abs(arcRadius(arc) - radius) < 1e-6)
      .reduce((sum, arc) => sum + Math.abs(arcSweep(arc)), 0);
  return { outer, inner: Math.min(...radii), sweep: swept(outer), area: side.area };
}

describe("the side of a frustum laid flat", () => {
  // ceemrr.com, Geometry 2, drawing nets 6: diameters 5 and 8 in, height 4 in.
  // http://ceemrr.com/Geometry2/DrawingsNets/DrawingsNets6.html
  test("of diameters 5 and 8 in is a sector of 7.12 and 11.39 in through 126.4°", () => {
    const { outer, inner, sweep } = sectorOf(frustum("f", 8 * inch, 5 * inch, 4 * inch));
    expect(inner / inch).toBeCloseTo(7.12, 2);
    expect(outer / inch).toBeCloseTo(11.39, 2);
    expect(sweep * degrees).toBeCloseTo(126.4, 1);
  });

  // Worked by hand from the formulas below.
  test("of 500 and 400 mm by 350 mm has radii 1767.77 and 1414.21 mm through 50.91°", () => {
    const { outer, inner, sweep } = sectorOf(frustum("f", 500, 400, 350));
    expect(outer).toBeCloseTo(1767.77, 2);
    expect(inner).toBeCloseTo(1414.21, 2);
    expect(outer - inner).toBeCloseTo(353.55, 2);
    expect(sweep * degrees).toBeCloseTo(50.91, 2);
  });

  // Dr. Math 65796, "Making a frustum": outer R s / (R − r), inner r s / (R − r), angle 360 (R − r) / s.
  // http://mathforum.org/library/drmath/view/65796.html
  test.each([
    [300, 200, 400],
    [220, 380, 90],
    [500, 480, 300],
    [90, 40, 800],
  ])("of diameters %d and %d, %d high, follows the published formulas", (base, top, height) => {
    const { outer, inner, sweep, area } = sectorOf(frustum("f", base, top, height));
    const [wide, narrow] = [Math.max(base, top) / 2, Math.min(base, top) / 2];
    const slant = Math.hypot(wide - narrow, height);
    expect(outer).toBeCloseTo((wide * slant) / (wide - narrow), 6);
    expect(inner).toBeCloseTo((narrow * slant) / (wide - narrow), 6);
    expect(sweep * degrees).toBeCloseTo((360 * (wide - narrow)) / slant, 6);
    // Sheet Metal Drafting, p. 91 (Wikisource): half the sum of both rims times the slant.
    expect(area).toBeCloseTo(((Math.PI * (base + top)) / 2) * slant, 4);
  });
});

describe("the side of a cone laid flat", () => {
  // Anvilfire, "Cones": a point of 90° opens to 254.6°. http://www.anvilfire.com/21centbs/math/cones1.htm
  test("with a point of 90° is a sector of 254.6°", () => {
    const { sweep } = sectorOf(frustum("f", 400, 0, 200));
    expect(sweep * degrees).toBeCloseTo(254.6, 1);
  });

  // Let's Fab, "Cone development formula": 180 D / R. https://letsfab.in/cone-development-formula/
  test.each([
    [300, 200],
    [120, 400],
    [500, 100],
  ])("of diameter %d and height %d sweeps 180 D / R degrees", (diameter, height) => {
    const { outer, sweep } = sectorOf(frustum("f", diameter, 0, height));
    expect(outer).toBeCloseTo(Math.hypot(diameter / 2, height), 6);
    expect(sweep * degrees).toBeCloseTo((180 * diameter) / outer, 6);
  });
});

describe("the side of a drum laid flat", () => {
  // Circumference π d, worked by hand for a pouf 450 mm across.
  test("of 450 mm is a strip of 1413.7 mm, its disc 0.159 m²", () => {
    const solid = buildSolid({ id: "pouf", foam: null, blocks: [cylinder("p", 450, 300)] });
    const { panels } = panelsBy("plain", solid);
    const strip = panels.find(({ faces }) => faces[0]!.face === "p/around")!;
    expect(Math.max(...strip.size)).toBeCloseTo(1413.7, 1);
    expect(Math.min(...strip.size)).toBeCloseTo(300, 9);
    const disc = panels.find(({ faces }) => faces[0]!.face === "p/top")!;
    expect(disc.area / 1e6).toBeCloseTo(0.159, 4);
    expect(disc.shape.outer.every(({ kind }) => kind === "arc")).toBe(true);
  });

  // A home-sewing tutorial's sums: 12 in across needs 37.68 in (with 3.14), 30 cm needs 94.2 cm.
  test.each([
    [12 * inch, 37.68 * inch],
    [300, 942],
  ])("of %d mm goes round %d mm", (diameter, round) => {
    const solid = buildSolid({ id: "pouf", foam: null, blocks: [cylinder("p", diameter, 100)] });
    const rim = solid.edges.find(({ faces }) => faces.includes("p/top"))!;
    // The tutorial takes 3.14 for π: a twentieth of a per cent.
    expect(Math.abs(rim.length / round - 1)).toBeLessThan(6e-4);
  });
});

describe("the slope of a wedge", () => {
  // Pythagoras: 500 deep and 200 high.
  test("500 deep and 200 high is 538.52 mm long", () => {
    const solid = buildSolid({
      id: "w",
      foam: null,
      blocks: [wedge("w", [300, 500, 200], "back")],
    });
    const slope = solid.faces.find(({ id }) => id === "w/slope")!;
    const lengths = slope.shape.outer.map(segmentLength);
    expect(Math.max(...lengths)).toBeCloseTo(538.52, 2);
  });
});
