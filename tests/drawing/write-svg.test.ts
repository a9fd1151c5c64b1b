import { describe, expect, test } from "vitest";
import { escapeXml } from "../../lib/drawing/escape-xml.ts";
import { paperNumber } from "../../lib/drawing/paper-number.ts";
import { flattenPath, pathOfLoop } from "../../lib/drawing/paper-path.ts";
import { writeInks, writeSvg } from "../../lib/drawing/write-svg.ts";
import type { Point } from "../../lib/plane/types.ts";
import { flatView } from "../../lib/drawing/flat-view.ts";

describe("writing numbers and text", () => {
  test.each([
    [0.005, "0.01"],
    [-0.001, "0"],
    [12, "12"],
    [1.23456, "1.23"],
    [-7.5, "-7.5"],
  ])("rounds %d to %s", (value, text) => expect(paperNumber(value)).toBe(text));

  // Source: W3C, Extensible Markup Language 1.0, section 4.6, predefined entities.
  test("escapes the five characters that XML predefines", () => {
    expect(escapeXml(`<a href="x">'&'</a>`)).toBe(
      "&lt;a href=&quot;x&quot;&gt;&#39;&amp;&#39;&lt;/a&gt;",
    );
  });

  test("puts a hostile title into the drawing as plain words", () => {
    const svg = writeSvg(
      { id: "x", title: "</title><script>", alt: "a & b", width: 1, height: 1 },
      [],
    );
    expect(svg).not.toContain("<script>");
    expect(svg).toContain("a &amp; b");
  });
});

// Source: W3C, Scalable Vector Graphics 2, section 9.3.8: sweep-flag 1 draws in the positive-angle
// direction, which is clockwise on a page whose y points down.
describe("writing arcs", () => {
  const quarter = (isClockwise: boolean) => {
    const [from, to]: [Point, Point] = isClockwise
      ? [
          [0, 10],
          [10, 0],
        ]
      : [
          [10, 0],
          [0, 10],
        ];
    return [{ kind: "arc", from, to, centre: [0, 0] as Point, isClockwise }] as const;
  };
  const dataOf = (isClockwise: boolean) =>
    writeInks([
      {
        kind: "path",
        className: "line cut",
        isObstacle: true,
        paths: [pathOfLoop(quarter(isClockwise), flatView(1), false)],
      },
    ]);

  test("a clockwise arc has sweep-flag 1 and its own radius", () =>
    expect(dataOf(true)).toContain("A10 10 0 0 1 10 0"));
  test("a counter-clockwise arc has sweep-flag 0", () =>
    expect(dataOf(false)).toContain("A10 10 0 0 0 0 -10"));

  test("three quarters of a circle has the large-arc flag", () => {
    const arc = [
      {
        kind: "arc",
        from: [10, 0] as Point,
        to: [0, -10] as Point,
        centre: [0, 0] as Point,
        isClockwise: false,
      },
    ] as const;
    const path = pathOfLoop(arc, flatView(1), false);
    expect(
      writeInks([{ kind: "path", className: "line cut", isObstacle: true, paths: [path] }]),
    ).toContain("A10 10 0 1 0");
    // Flattened, it goes round the far side.
    expect(flattenPath(path).some(([x, y]) => x < -7 && y < -6.9)).toBe(true);
  });
});
