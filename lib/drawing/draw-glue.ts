import { formatSizes } from "../units/index.ts";
import type { Mm, Ratio } from "../plane/types.ts";
import type { LengthStyle } from "../units/types.ts";
import type { Point3, Solid } from "../solids/types.ts";
import { boxOfInks } from "./boxes.ts";
import { dotInk } from "./dot-ink.ts";
import { drawBody } from "./draw-body.ts";
import { drawHatch } from "./draw-hatch.ts";
import { drawMotion } from "./draw-motion.ts";
import { explodeBlocks, type Exploded } from "./explode-blocks.ts";
import { finishFigure } from "./finish-figure.ts";
import { fitScale } from "./fit-scale.ts";
import { glueHatch } from "./hatch-styles.ts";
import { insidePoints } from "./inside-point.ts";
import { makeScene, type Scene, type SceneMesh } from "./mesh-scene.ts";
import { pathOf } from "./paper-path.ts";
import { pictureSize } from "./picture-size.ts";
import { type Callout, placeBeside } from "./place-beside.ts";
import { placeLabels } from "./place-labels.ts";
import { roundPlaces } from "./round-places.ts";
import { dot, FRONT_VIEW, spaceView } from "./space-view.ts";
import type { DrawingInput, Figure, FigureLimits, Ink, Picture } from "./types.ts";
import { type Overlay, visibleFaces, visibleOverlays } from "./visible-faces.ts";

/** Share of the largest size by which blocks are pulled apart. @source our choice: arrows need room */
const APART: Ratio = 0.34;

/** The blocks pulled apart along their joints, glued areas hatched, arrows showing how they meet. */
export function drawGlue(
  input: DrawingInput,
  solid: Solid,
  how: { readonly id?: string; readonly limits: FigureLimits },
): Figure {
  const { id = `glue/${solid.id}`, limits } = how;
  const gap: Mm = APART * Math.max(...solid.size);
  const exploded = explodeBlocks(solid, gap);
  const meshes: SceneMesh[] = solid.blocks.map(({ id, mesh }) => ({
    mesh,
    body: id,
    shift: exploded.shifts.get(id) ?? [0, 0, 0],
  }));
  const fitted = fitScale(
    (scale) =>
      gluePicture(solid, exploded, {
        meshes,
        scale,
        // Beside the words of a step the names are enough.
        style: limits.width < 110 ? null : input.project,
      }),
    pictureSize(meshes, FRONT_VIEW),
    limits,
  );
  const blocks = solid.blocks.map(({ id, size }) => `${id} ${formatSizes(size, input.project)}`);
  const joints = solid.joints.map(({ blocks: [a, b] }) => `${a} to ${b}`);
  return finishFigure(
    {
      id,
      title: "Glue the blocks together",
      alt: `The blocks pulled apart: ${blocks.join("; ")}. Glue ${joints.join(", ") || "nothing"} on the crossed areas, on both sides.`,
      scale: fitted.note,
    },
    fitted.picture,
    limits,
  );
}

function gluePicture(
  solid: Solid,
  exploded: Exploded,
  {
    meshes,
    scale,
    style,
  }: { meshes: readonly SceneMesh[]; scale: Ratio; style: LengthStyle | null },
): Picture {
  const scene = makeScene(meshes, spaceView(FRONT_VIEW[0], FRONT_VIEW[1], scale));
  const glue = visibleOverlays(overlaysOf(exploded, scene), scene);
  const body = drawBody(scene);
  const regions = visibleFaces(scene);
  const callouts: Callout[] = solid.blocks.flatMap(({ id, size }) => {
    // Point at the part of the block that shows the most and takes no glue.
    const own = regions.filter(({ face }) => face.startsWith(`${id}:`)).map(({ region }) => region);
    const [best] = own.map((region) => insidePoints(region, 1)[0]).filter((at) => at !== undefined);
    return best
      ? [
          {
            lines: [id.replaceAll("-", " "), ...(style ? [formatSizes(size, style)] : [])],
            style: "label",
            to: best,
          },
        ]
      : [];
  });
  const inks: Ink[] = [
    ...glue.map(({ region }) => drawHatch(region, glueHatch)),
    ...glue.map(({ region }): Ink => ({
      kind: "path",
      className: "line glue",
      paths: region.map((ring) => pathOf(ring, true)),
      isObstacle: false,
    })),
    body,
    ...motionInks(exploded, scene),
  ];
  const dots = callouts.map(({ to }) => dotInk(to));
  if (style !== null) {
    const named = placeBeside(callouts, boxOfInks(inks));
    return { inks: [...inks, ...named, ...dots], collisions: [] };
  }
  // Names alone find room closer by.
  const labels = callouts.map(({ to, ...words }) => ({ ...words, candidates: roundPlaces(to) }));
  const placed = placeLabels(labels, inks);
  return { inks: [...inks, ...placed.inks, ...dots], collisions: placed.collisions };
}

/** Each glued area on the one of its two sides that faces the viewer. */
function overlaysOf({ shifts, joints }: Exploded, { view }: Scene): Overlay[] {
  return joints.map(({ joint, moved, away }) => {
    const still = joint.blocks.find((id) => id !== moved) ?? moved;
    const owner = dot(away, view.towards) > 0 ? still : moved;
    const shift = shifts.get(owner) ?? [0, 0, 0];
    return {
      face: owner,
      outlines: joint.outlines.map((outline) => outline.map((p) => plus(p, shift))),
    };
  });
}

/** Arrows from where each block is drawn to where it goes. */
function motionInks({ shifts, joints }: Exploded, scene: Scene): Ink[] {
  return joints.flatMap(({ joint, moved }) => {
    const still = joint.blocks.find((id) => id !== moved) ?? moved;
    const [a, b] = [shifts.get(still), shifts.get(moved)];
    const outline = joint.outlines[0];
    if (!a || !b || !outline) return [];
    if (Math.hypot(b[0] - a[0], b[1] - a[1], b[2] - a[2]) < 1e-6) return [];
    const middle = meanPoint(outline);
    return drawMotion(plus(middle, b), plus(middle, a), scene);
  });
}

function meanPoint(points: readonly Point3[]): Point3 {
  const sum = points.reduce((a, b) => plus(a, b), [0, 0, 0] as Point3);
  const count = Math.max(1, points.length);
  return [sum[0] / count, sum[1] / count, sum[2] / count];
}

function plus(a: Point3, b: Point3): Point3 {
  return [a[0] + b[0], a[1] + b[1], a[2] + b[2]];
}
