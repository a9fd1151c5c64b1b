import type { Mm, Point, Segment } from "../plane/types.ts";
import { shapeArea } from "../plane/loop-area.ts";
import { loopBounds } from "../plane/loop-bounds.ts";
import { segmentLength } from "../plane/segments.ts";
import type { Panel, PanelSide } from "../panels/types.ts";
import { facingSide } from "../project/facing-side.ts";
import type { FabricStock, PieceSpec } from "../project/types.ts";
import type { Solid } from "../solids/types.ts";
import { addAllowance } from "./add-allowance.ts";
import { clipForPartner, clipInwardCorners } from "./clip-corners.ts";
import { bareEnds, type SeamRun } from "./find-seams.ts";
import type { PanelMark } from "./mark-attachments.ts";
import { choosePatterns, markSeam } from "./mark-seams.ts";
import type { Clip, Notch, Piece, PieceEdge, Seam } from "./types.ts";

export interface PieceOptions {
  readonly cloth: FabricStock;
  readonly allowance: Mm;
  /** Where edges differ from `allowance`. */
  readonly others?: EdgeAllowances;
  /** Where loose pieces are sewn on. */
  readonly marks: readonly PanelMark[];
  /** Where panels have to lie in the repeat of the print. */
  readonly origins?: ReadonlyMap<string, Point>;
}

/** Allowances of the edges a closing is sewn to, and of those left open. */
export interface EdgeAllowances {
  readonly closing: Mm;
  readonly open: Mm;
}

/** Every panel as a piece to cut: allowances, seam letters, notches, clips and marks. */
export function makePieces(
  solid: Solid,
  panels: readonly Panel[],
  runs: readonly SeamRun[],
  seams: readonly Seam[],
  { cloth, allowance, others, marks, origins }: PieceOptions,
): Piece[] {
  const allowances = {
    sewn: allowance,
    closing: others?.closing ?? allowance,
    open: others?.open ?? allowance,
  };
  const seamOf = new Map(seams.flatMap((seam) => seam.edges.map((edge) => [edge, seam] as const)));
  const runOf = new Map(runs.map((run) => [run.first[0]!.edge, run]));
  const notches: { panel: string; notch: Notch }[] = [];
  const clips: { panel: string; clip: Clip }[] = [];
  const patterns = choosePatterns(seams);
  for (const [i, seam] of seams.entries()) {
    const run = runOf.get(seam.edges[0]!)!;
    const firstNumber = notches.length / 2 + 1;
    const ends = seam.state === "sewn" || seam.isRing ? [] : bareEnds(run, panels);
    notches.push(...markSeam(run, seam, { firstNumber, pattern: patterns[i]!, ends }));
    clips.push(...clipForPartner(run, seam, allowance));
  }
  return panels.map((panel): Piece => {
    const edges = panel.loops.flatMap((loop) =>
      loop.map((side) => {
        const seam = seamOf.get(side.edge)!;
        return describeEdge(side, seam, allowances[seam.state]);
      }),
    );
    const outline = addAllowance(
      panel.loops.map((loop) => ({
        segments: loop.flatMap(({ segments }) => segments),
        allowances: loop.flatMap(({ edge, segments }) =>
          segments.map(() => allowances[seamOf.get(edge)!.state]),
        ),
      })),
      cloth.shrink,
    );
    return {
      id: panel.id,
      label: panel.label,
      panel: panel.id,
      stock: cloth.id,
      cut: 1,
      finished: panel.shape,
      outline,
      area: shapeArea(outline),
      cutSize: sizeOf(outline.outer),
      edges,
      notches: notches.filter((one) => one.panel === panel.id).map(({ notch }) => notch),
      clips: [
        ...clipInwardCorners(panel, allowance),
        ...clips.filter((one) => one.panel === panel.id).map(({ clip }) => clip),
      ],
      marks: marks.filter((one) => one.panel === panel.id).map(({ mark }) => mark),
      mirrorOf: panel.mirrorOf,
      ...originOf(panel.id, origins),
      isUpright:
        cloth.direction !== "any" &&
        panel.faces.some(({ face }) => solid.faces.find(({ id }) => id === face)!.isVisible),
    };
  });
}

const originOf = (panel: string, origins?: ReadonlyMap<string, Point>) => {
  const printOrigin = origins?.get(panel);
  return printOrigin === undefined ? {} : { printOrigin };
};

/** A loose piece of cloth as cut: hemmed or seamed all round, each side by its own allowance. */
export function makeLoosePiece(spec: PieceSpec, cloth: FabricStock): Piece {
  const loops = [spec.outline.outer, ...spec.outline.holes];
  const isOuter = new Set(spec.outline.outer);
  const allowanceOf = (segment: Segment): Mm => {
    const side = isOuter.has(segment) ? facingSide(segment) : null;
    return (side === null ? undefined : spec.hem?.[side]) ?? spec.seamAllowance;
  };
  const outline = addAllowance(
    loops.map((segments) => ({ segments, allowances: segments.map(allowanceOf) })),
    cloth.shrink,
  );
  const edges = loops.flat().map((segment): PieceEdge => ({
    seam: null,
    segments: [segment],
    length: segmentLength(segment),
    allowance: allowanceOf(segment),
    kind: "hem",
  }));
  return {
    id: spec.id,
    label: spec.label,
    panel: null,
    stock: cloth.id,
    cut: spec.cut,
    finished: spec.outline,
    outline,
    area: shapeArea(outline),
    cutSize: sizeOf(outline.outer),
    edges,
    notches: [],
    clips: [],
    marks: [],
    mirrorOf: null,
    isUpright: cloth.direction !== "any" && spec.up === "up",
  };
}

function sizeOf(loop: Piece["outline"]["outer"]): readonly [Mm, Mm] {
  const { min, max } = loopBounds(loop);
  return [max[0] - min[0], max[1] - min[1]];
}

function describeEdge(side: PanelSide, seam: Seam, allowance: Mm): PieceEdge {
  const kinds = { sewn: "seam", closing: "closing", open: "opening" } as const;
  return {
    seam: seam.id,
    segments: side.segments,
    length: side.length,
    allowance,
    kind: kinds[seam.state],
  };
}
