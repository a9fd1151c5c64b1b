export { buildBooklet } from "./build-booklet.ts";
export { computePlan } from "./compute-plan.ts";
export { describeWalk } from "./describe-walk.ts";
export { choosePaper, otherPaper, papers } from "./paper.ts";
export { patternSheets } from "./pattern-sheets.ts";
export { planJson } from "./plan-json.ts";
export { planJsonSchema, planSchema } from "./plan-schema.ts";
export { replayWalk, walkOutline } from "./walk-outline.ts";
