import { computePlan } from "../booklet/compute-plan.ts";
import { drawFigure, listFigures } from "../drawing/index.ts";
import { projectJsonSchema } from "../project/json-schema.ts";
import { readProjects } from "../project/read-projects.ts";
import type { Stages } from "./stages.ts";

/** The stages of lib. */
export const realStages: Stages = {
  readProjects,
  computePlan,
  figuresOf: (plan) => ({
    ids: listFigures(plan),
    draw: (id, room) => {
      const figure = drawFigure(plan, id, room);
      if (figure === null) throw new Error(`no figure is called ${id}`);
      return figure;
    },
  }),
  projectSchema: projectJsonSchema,
};
