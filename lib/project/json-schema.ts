import { z } from "zod";
import { projectSchema } from "./schema.ts";

/**
 * The JSON Schema (draft 7) of the front matter, made from the schema that checks it, so that editors
 * can complete and check project files.
 */
export function projectJsonSchema(): Readonly<Record<string, unknown>> {
  const { $schema, ...rest } = z.toJSONSchema(projectSchema, { target: "draft-7", io: "input" });
  return {
    $schema,
    title: "Slipcase project file",
    description: "Front matter of a project file. Lengths may carry a unit or be formulas.",
    ...rest,
  };
}
