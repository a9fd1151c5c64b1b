import { computePlan } from "../booklet/compute-plan.ts";
import { drawFigure, listFigures } from "../drawing/index.ts";
import { projectJsonSchema } from "../project/json-schema.ts";
import { readProject } from "../project/read-project.ts";
import type { Stages } from "./stages.ts";

/** The stages of lib. */
export const realStages: Stages = {
  readProjects: (text, file) => {
    const { projects, faults } = readProject({ file, text });
    return { projects, faults: faults.map(({ message }) => message) };
  },
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
