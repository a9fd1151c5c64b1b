import { describe, expect, test } from "vitest";
import { nameAssembly } from "../../lib/seams/name-assembly.ts";

const panel = (id: string, label: string, area = 1) => ({ id, label, area });
const cushion = [
  panel("P1", "top", 9),
  panel("P2", "underside", 9),
  panel("P3", "front"),
  panel("P4", "back"),
  panel("P5", "left side"),
  panel("P6", "right side"),
];
const boxing = new Set(["P3", "P4", "P5", "P6"]);
const some = (...places: readonly number[]) => places.map((place) => cushion[place]!);

describe("what panels sewn together are called", () => {
  test.each([
    { panels: some(0), name: "the top" },
    { panels: some(2, 4), name: "the front and the left side" },
    { panels: some(2, 3, 4), name: "3 strips of the boxing" },
    { panels: some(2, 3, 4, 5), name: "the boxing" },
    { panels: some(0, 2, 3), name: "the top with 2 strips of the boxing" },
    { panels: some(0, 2, 3, 4, 5), name: "the top with its boxing" },
    { panels: some(0, 1, 2, 3, 4), name: "all but the right side" },
    { panels: some(0, 1, 2, 3), name: "all but the left side and the right side" },
    { panels: cushion, name: "the whole cover" },
  ])("$name", ({ panels, name }) => {
    expect(nameAssembly(panels, cushion, boxing)).toBe(name);
  });

  test("goes by its letter where two panels have one label", () => {
    const bands = [panel("P1", "band of 3 sides"), panel("P2", "band of 3 sides"), cushion[0]!];
    expect(nameAssembly([bands[0]!], bands, new Set(["P1", "P2"]))).toBe("panel P1");
  });
});
