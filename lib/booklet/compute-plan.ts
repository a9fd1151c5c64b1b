import { listFindings } from "../checks/list-findings.ts";
import { listMaterials } from "../estimate/list-materials.ts";
import { makeFormat } from "../units/make-format.ts";
import type { Work } from "../estimate/types.ts";
import type { CoverSpec, FabricStock, Fault, Project, SolidSpec } from "../project/types.ts";
import { buildCover } from "../seams/build-cover.ts";
import { makeLoosePiece } from "../seams/make-pieces.ts";
import { splitForClosing } from "../seams/split-for-closing.ts";
import type { Cover, Piece } from "../seams/types.ts";
import { buildSolid } from "../solids/build-solid.ts";
import { partEdge } from "../solids/part-edge.ts";
import type { Solid } from "../solids/types.ts";
import { listStepFaults } from "../steps/list-step-faults.ts";
import { listSteps } from "../steps/list-steps.ts";
import { addLoosePads } from "./add-loose-pads.ts";
import { chooseLeastCloth } from "./choose-least-cloth.ts";
import { planCuts } from "./plan-cuts.ts";
import { planLays } from "./plan-lays.ts";
import type { Plan } from "./types.ts";

/** Work everything out, stage by stage. Pure: the same project gives the same plan. */
export function computePlan(given: Project): Plan {
  const format = makeFormat(given);
  const project = addLoosePads(given, (spec) => buildForm(given, spec), format);
  const forms = project.solids.map((spec) => buildForm(project, spec));
  const built = project.solids.flatMap((spec, i) =>
    spec.cover === null
      ? []
      : [coverForm(project, { ...spec, cover: spec.cover }, forms[i]!, format.length)],
  );
  const solids = forms.map((form) => partForm(form, built));
  const unlaid = built.flatMap(({ cover }) => (cover === null ? [] : [cover]));
  const pieces = loosePieces(project);
  const { lays, covers } = planLays(project, unlaid, pieces, solids);
  const shorter = chooseLeastCloth(given, covers);
  if (shorter !== null) return computePlan(shorter);
  const work: Work = {
    project,
    solids,
    covers,
    pieces,
    lays,
    ...planCuts(project, solids, format, covers),
    format,
  };
  const steps = listSteps(work);
  return {
    project,
    solids,
    covers,
    pieces,
    lays,
    slabs: work.slabs,
    sheets: work.sheets,
    boards: work.boards,
    materials: listMaterials(work),
    findings: listFindings(work),
    steps,
    faults: [...built.flatMap(({ faults }) => faults), ...listStepFaults(project, steps)],
  };
}

function buildForm(project: Project, spec: SolidSpec): Solid {
  const densities = Object.fromEntries(
    project.stock.flatMap((stock) => (stock.kind === "slab" ? [[stock.id, stock.density]] : [])),
  );
  const solid = buildSolid(spec, { densities, ups: spec.cover?.up ?? {} });
  return spec.cover === null ? solid : splitForClosing(solid, spec.cover, "").solid;
}

/** An edge that the cover leaves open for a share of its length is two edges or three from here on. */
function partForm(form: Solid, built: readonly { readonly cover: Cover | null }[]): Solid {
  const own = built.find(({ cover }) => cover?.solid === form.id)?.cover?.opening;
  return (own?.parts ?? []).reduce(partEdge, form);
}

function coverForm(
  project: Project,
  spec: SolidSpec & { readonly cover: CoverSpec },
  solid: Solid,
  format: (length: number) => string,
): { readonly cover: Cover | null; readonly faults: readonly Fault[] } {
  // A loose pad that the program adds leaves the author's own panels their names.
  const covered = project.solids.filter(
    ({ cover, padOf }) => cover !== null && padOf === undefined,
  );
  const foams = new Set([spec.foam, ...spec.blocks.map(({ foam }) => foam)]);
  const hardness = project.stock.flatMap((stock) =>
    stock.kind === "slab" && foams.has(stock.id) && stock.hardness !== null ? [stock.hardness] : [],
  );
  return buildCover(project, spec, solid, {
    prefix: covered.length > 1 || spec.padOf !== undefined ? `${spec.id}-` : "",
    // The hardest foam decides whether the form goes in.
    hardness: hardness.length === 0 ? null : Math.max(...hardness),
    format,
  });
}

const loosePieces = ({ pieces, stock }: Project): Piece[] =>
  pieces.flatMap((spec) => {
    const cloth = stock.find(
      (one): one is FabricStock => one.id === spec.stock && one.kind === "fabric",
    );
    return cloth === undefined ? [] : [makeLoosePiece(spec, cloth)];
  });
