import { describe, expect, test } from "vitest";
import { planJson } from "../../lib/booklet/plan-json.ts";
import { planJsonSchema, planSchema } from "../../lib/booklet/plan-schema.ts";
import { polygonArea } from "../../lib/plane/polygon-area.ts";
import { smallPlan } from "../fixtures/small-plan.ts";

const json = planJson(smallPlan);

describe("plan.json", () => {
  test("agrees with its own schema", () => {
    expect(planSchema.safeParse(JSON.parse(JSON.stringify(json))).error).toBeUndefined();
  });

  // The keys and their order are the contract that readers of plan.json rely on.
  test("keeps its keys in the agreed order", () => {
    expect(Object.keys(json)).toEqual(
      "format title units slug copies solids pieces lays slabs sheets boards materials steps findings".split(
        " ",
      ),
    );
    expect(Object.keys(json.solids["pad"]!)).toEqual(
      "bounds volume area mass centreOfMass blocks joints faces edges panels seams ways opening refolds closing sewing sizes".split(
        " ",
      ),
    );
    expect(Object.keys(json.solids["pad"]!.panels[0]!)).toEqual(
      "id label faces cut mirrorOf outline cutOutline folds print area size".split(" "),
    );
  });

  test("is the same bytes every time", () => {
    expect(JSON.stringify(planJson(smallPlan))).toBe(JSON.stringify(json));
  });

  test("begins every outline at its lowest, leftmost corner", () => {
    const underside = json.solids["pad"]!.panels.find(({ id }) => id === "P4")!;
    expect(underside.cutOutline[0]).toEqual([15, 0]);
  });

  // A circle of radius r has area πr²; chords 0.05 mm inside it lose less than 0.05 mm × its rim.
  test("flattens arcs to within 0.05 mm", () => {
    const { cutOutline } = json.pieces["patch"]!;
    const lost = Math.PI * 55 ** 2 - polygonArea(cutOutline);
    expect(lost).toBeGreaterThan(0);
    expect(lost).toBeLessThan(0.05 * 2 * Math.PI * 55);
  });

  test("says how far the print stands turned once a piece lies on the cloth", () => {
    const print = (id: string) =>
      json.solids["pad"]!.panels.find((panel) => panel.id === id)!.print[0]!.turn;
    expect(print("P1")).toBe(0);
    expect(print("P4")).toBe(180);
  });

  test("has a JSON Schema", () => {
    expect(planJsonSchema()).toMatchObject({ title: "Slipcase plan", type: "object" });
  });
});
