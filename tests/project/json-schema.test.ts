import { describe, expect, test } from "vitest";
import { parse } from "yaml";
import { z } from "zod";
import { projectJsonSchema } from "../../lib/project/json-schema.ts";
import { fixture } from "./project-text.ts";

type Json = Readonly<Record<string, unknown>>;
const schema = projectJsonSchema();

/** Front matter of a fixture, read by the YAML library alone. */
const frontMatter = (name: string): unknown => parse(fixture(name).text.split("---\n")[1] ?? "");

/** Every object within a schema. */
function* within(value: unknown): Generator<Json> {
  if (typeof value !== "object" || value === null) return;
  yield value as Json;
  for (const inner of Object.values(value)) yield* within(inner);
}

describe("the schema for editors", () => {
  test("is draft 7, named, and the same each time", () => {
    expect(schema["$schema"]).toBe("http://json-schema.org/draft-07/schema#");
    expect(schema["title"]).toBe("Slipcase project file");
    expect(JSON.stringify(projectJsonSchema())).toBe(JSON.stringify(schema));
  });

  test("asks for title and units, and knows every key of the contract", () => {
    expect(schema["required"]).toEqual(["title", "units"]);
    const contract =
      "title units summary audience country dimensions stock solids pieces buy copies variants licence made round";
    expect(Object.keys(schema["properties"] as Json)).toEqual(
      expect.arrayContaining(contract.split(" ")),
    );
  });

  test("lets no unknown key through anywhere", () => {
    for (const each of within(schema)) {
      if (each["type"] !== "object" || each["properties"] === undefined) continue;
      expect(each["additionalProperties"]).toBe(false);
    }
  });

  test("describes its parts in plain words", () => {
    const described = [...within(schema)].filter((each) => typeof each["description"] === "string");
    expect(described.length).toBeGreaterThan(50);
  });

  test.each([
    "seat-block",
    "round-pouf",
    "bay-pad",
    "batten-crate",
    "every-key",
    "contract-example",
  ])("accepts %s when it is read back as a schema", (name) => {
    const again = z.fromJSONSchema(schema as Parameters<typeof z.fromJSONSchema>[0]);
    expect(again.safeParse(frontMatter(name)).error?.issues ?? []).toEqual([]);
  });

  test("refuses the file with a dozen faults", () => {
    const again = z.fromJSONSchema(schema as Parameters<typeof z.fromJSONSchema>[0]);
    expect(again.safeParse(frontMatter("dozen-faults")).success).toBe(false);
  });
});
