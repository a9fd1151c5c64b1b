import type { Stages } from "./stages.ts";

const notLanded = (): never => {
  throw new Error("The project, plan and drawing stages are not wired in yet");
};

/** The stages of lib. */
export const realStages: Stages = {
  readProjects: notLanded,
  computePlan: notLanded,
  figuresOf: notLanded,
  projectSchema: notLanded,
};
