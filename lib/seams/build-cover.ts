import type { Mm } from "../plane/types.ts";
import { refoldPanels } from "../panels/refold-panel.ts";
import { graphSolid } from "../panels/unfold-panel.ts";
import type {
  CoverSpec,
  FabricStock,
  Fault,
  Project,
  SolidSpec,
  ZipStock,
} from "../project/types.ts";
import { buildSolid } from "../solids/build-solid.ts";
import { splitForClosing } from "./split-for-closing.ts";
import type { Solid } from "../solids/types.ts";
import { cutPiping } from "./cut-piping.ts";
import { pipingRuns } from "./piping-runs.ts";
import { cutUnderlaps } from "./cut-underlap.ts";
import { choosePanels } from "./choose-panels.ts";
import { findLostChoices, findUpFaults } from "./find-lost-choices.ts";
import { closesOnItself, describeSeam, findSeamRuns } from "./find-seams.ts";
import { fitBlocks } from "./fit-blocks.ts";
import { makePieces } from "./make-pieces.ts";
import { markAttachment } from "./mark-attachments.ts";
import { findBoxing } from "./name-assembly.ts";
import { measureFoamPanels } from "./measure-foam-panels.ts";
import { nameEdges } from "./name-edges.ts";
import { orderSeams } from "./order-seams.ts";
import { placePrint } from "./place-print.ts";
import { planAttaching } from "./plan-attaching.ts";
import { planClosing } from "./plan-closing.ts";
import { replaySewing } from "./replay-sewing.ts";
import type { ComparedWay, Cover, Seam, SewingPass, SewingProof, SewnOn } from "./types.ts";

export interface CoverOptions {
  /** Put before panel ids, so that two covers of one project do not share any. */
  readonly prefix: string;
  readonly hardness: number | null;
  /** Prints a length in the author's unit. */
  readonly format: (length: Mm) => string;
}

/** Everything about the cover of one solid, from the way it is panelled to the way it closes. */
export function buildCover(
  project: Pick<Project, "stock" | "pieces">,
  spec: SolidSpec & { readonly cover: CoverSpec },
  foam: Solid,
  { prefix, hardness, format }: CoverOptions,
): { cover: Cover | null; fitted: Solid; faults: readonly Fault[] } {
  const { cover } = spec;
  const field = `solids.${spec.id}.cover`;
  const cloth = project.stock.find(
    (one): one is FabricStock => one.id === cover.fabric && one.kind === "fabric",
  )!;
  const whole = buildSolid(
    { ...spec, blocks: fitBlocks(spec.blocks, foam, cover.ease) },
    { ups: cover.up },
  );
  const split = splitForClosing(whole, cover, field);
  const read = nameEdges(split.solid, cover, { field, format });
  const chosen = choosePanels(split.solid, foam, {
    cover,
    cloth,
    named: {
      ...read,
      faults: [...split.faults, ...read.faults, ...findUpFaults(cover, split.solid, field)],
    },
    parted: split.edge,
    ends: split.ends,
    hardness,
    field,
  });
  if ("faults" in chosen) return { cover: null, fitted: split.solid, faults: chosen.faults };
  const { ways, plan, solid: fitted } = chosen;
  // A seam that the opening parts is piped along both its stretches.
  const named = nameEdges(fitted, cover, { field, format });
  const panels = prefixed(ways[0]!, prefix).panels;
  const print = placePrint(cover.print ?? { centre: [], match: [] }, fitted, panels, {
    cloth,
    field: `${field}.print`,
  });
  const attached = cover.attach.map((one) =>
    markAttachment(fitted, panels, one, {
      field: `${field}.attach.${one.id}`,
      piece: project.pieces.find(({ id }) => id === one.piece) ?? null,
    }),
  );
  const misplaced = [...print.faults, ...attached.flatMap((one) => one.faults)];
  if (misplaced.length > 0) return { cover: null, fitted, faults: misplaced };
  const runs = findSeamRuns(panels, {
    open: new Set(plan.edges),
    openState: cover.closing.kind === "hand-sewn" ? "open" : "closing",
    piped: named.piped,
  });
  const { seams, passes } = orderSeams(
    runs.map((run, i) => describeSeam(run, i, closesOnItself(run))),
    panels,
    runs,
    findBoxing(panels, fitted),
  );
  const sewnOn = planAttaching(
    cover.attach.map(({ id }, i) => ({ id, marks: attached[i]!.marks })),
    passes,
  );
  const strips = cutPiping(spec.id, pipingRuns({ seams, panels }), cover, cloth);
  const zips =
    project.stock.find(
      (one): one is ZipStock => one.id === cover.closing.stock && one.kind === "zip",
    ) ?? null;
  return {
    fitted,
    faults: [],
    cover: {
      solid: spec.id,
      fabric: cover.fabric,
      seamAllowance: cover.seamAllowance,
      ways: ways.map((way, i): ComparedWay => ({
        ...prefixed(way, prefix),
        isChosen: i === 0,
        clothLength: null,
      })),
      panels,
      pieces: [
        ...makePieces(fitted, panels, runs, seams, {
          cloth,
          allowance: cover.seamAllowance,
          origins: print.origins,
          others: {
            closing:
              (cover.closing.kind === "zip" ? cover.allowances?.zip : cover.allowances?.opening) ??
              cover.seamAllowance,
            open: cover.allowances?.opening ?? cover.seamAllowance,
          },
          marks: attached.flatMap(({ marks }) => marks),
        }),
        ...(strips === null ? [] : [strips]),
        ...cutUnderlaps({ passes, seams, panels }, cover, { cloth, prefix }),
      ],
      seams,
      passes,
      attached: sewnOn,
      sewable: proveSewing(panels, seams, passes, sewnOn),
      opening: {
        ...plan,
        seams: seams.filter(({ state }) => state !== "sewn").map(({ id }) => id),
      },
      closing: planClosing(cover.closing, plan.run, zips, format),
      refolds: refoldPanels(panels, graphSolid(fitted)),
      foamSize: foam.size,
      coverSize: fitted.size,
      foamPanels: measureFoamPanels(panels, foam),
      blockRoom: fitted.blocks.map(({ id, size }) => ({ block: id, size })),
      lost: [
        ...findLostChoices({ cover, solid: fitted, panels, named }),
        ...attached.flatMap((one) => one.lost),
      ],
    },
  };
}

/** Replay the order by a route of its own. */
export function proveSewing(
  panels: Cover["panels"],
  seams: readonly Seam[],
  passes: readonly SewingPass[],
  attached: readonly SewnOn[] = [],
): SewingProof {
  const edgesIn = (state: Seam["state"]) =>
    new Set(seams.filter((seam) => seam.state === state).flatMap(({ edges }) => edges));
  return replaySewing({
    panels,
    passes,
    attached,
    open: edgesIn("open"),
    closing: edgesIn("closing"),
  });
}

/** Panel ids with the solid's own prefix, wherever a panel is named. */
function prefixed<W extends { readonly panels: Cover["panels"] }>(way: W, prefix: string): W {
  if (prefix === "") return way;
  const rename = (id: string | null) => (id === null ? null : `${prefix}${id}`);
  const panels = way.panels.map((panel) => ({
    ...panel,
    id: `${prefix}${panel.id}`,
    mirrorOf: rename(panel.mirrorOf),
    sameAs: rename(panel.sameAs),
    loops: panel.loops.map((loop) =>
      loop.map((side) => ({ ...side, panel: `${prefix}${side.panel}` })),
    ),
  }));
  return { ...way, panels };
}
