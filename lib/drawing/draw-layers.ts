import { blockSpec, foamLayers, isCutInLayers } from "../estimate/foam-layers.ts";
import type { CutPlace } from "../packing/types.ts";
import type { Mm, Ratio } from "../plane/types.ts";
import type { Point3, Solid, SolidBlock, SolidMesh } from "../solids/types.ts";
import { formatLength, formatSizes } from "../units/index.ts";
import { boxMesh } from "./box-mesh.ts";
import { boxOfInks } from "./boxes.ts";
import { dotInk } from "./dot-ink.ts";
import { drawBody } from "./draw-body.ts";
import { drawHatch } from "./draw-hatch.ts";
import { drawMotion } from "./draw-motion.ts";
import { finishFigure } from "./finish-figure.ts";
import { fitScale } from "./fit-scale.ts";
import { glueHatch } from "./hatch-styles.ts";
import { insidePoints } from "./inside-point.ts";
import { makeScene, type SceneMesh } from "./mesh-scene.ts";
import { pictureSize } from "./picture-size.ts";
import { type Callout, placeBeside } from "./place-beside.ts";
import { FRONT_VIEW, nearness, spaceView } from "./space-view.ts";
import type { DrawingInput, Figure, FigureLimits, Ink, Picture } from "./types.ts";
import { visibleFaces } from "./visible-faces.ts";

type AxisIndex = 0 | 1 | 2;

/** The layers of one block, apart along the way they are stacked. */
interface Stack {
  readonly axis: AxisIndex;
  readonly heights: readonly Mm[];
  readonly layers: readonly CutPlace[];
  readonly meshes: readonly SceneMesh[];
  /** Middle of each joint: on the layer above it, then on the layer below. */
  readonly joints: readonly (readonly [Point3, Point3])[];
}

/** Sizes nearer than this are the same, in mm. */
const same: Mm = 0.6;
/** Share of the largest size by which layers are pulled apart. @source our choice */
const APART: Ratio = 0.24;

/** The layers a block is glued up from, apart, with their sizes and glued faces; null for a whole block. */
export function drawLayers(
  input: DrawingInput,
  solid: Solid,
  { block, limits }: { readonly block: SolidBlock; readonly limits: FigureLimits },
): Figure | null {
  const stack = stackOf(input, solid, block);
  if (stack === null) return null;
  const write = (sizes: readonly Mm[]) => formatSizes(sizes, input.project);
  const heights = stack.heights.map((height) => formatLength(height, input.project));
  const fitted = fitScale(
    (scale) => layersPicture(stack, { block, scale, heights }),
    pictureSize(stack.meshes, FRONT_VIEW),
    limits,
  );
  return finishFigure(
    {
      id: `layers/${solid.id}/${block.id}`,
      title: `${stack.layers.length} layers make the ${block.id.replaceAll("-", " ")}, ${write(block.size)}`,
      alt: `The layers apart, each over its place: ${heights.map((height, i) => `layer ${i + 1}, ${height} thick`).join("; ")}. The faces that take glue are hatched crosswise. Together they make ${write(block.size)}.`,
      scale: fitted.note,
    },
    fitted.picture,
    limits,
  );
}

function stackOf({ project, slabs }: DrawingInput, solid: Solid, block: SolidBlock): Stack | null {
  const layers = foamLayers(`${solid.id}/${block.id}`, slabs);
  if (layers.length === 0) return null;
  const found = ([2, 1, 0] as const).flatMap((axis) => {
    const heights = layers.map(({ size }) => heightAlong(size, block.size, axis));
    const sum = heights.reduce<Mm>((total, height) => total + (height ?? Infinity), 0);
    return Math.abs(sum - block.size[axis]) < 2 * same
      ? [{ axis, heights: heights.map((height) => height ?? 0) }]
      : [];
  })[0];
  // Layers that do not add up are shown one over the other, each an equal share.
  const { axis, heights } = found ?? {
    axis: 2 as const,
    heights: layers.map(() => block.size[2] / layers.length),
  };
  const isShaped = isCutInLayers(blockSpec(solid.id, block.id, project), block, layers);
  const whole = isShaped ? block.mesh : boxMesh(block.min, block.size);
  const gap = APART * Math.max(...block.size);
  const ends = heights.map((_, i) => heights.slice(0, i + 1).reduce((a, b) => a + b, 0));
  const meshes = heights.map((height, i): SceneMesh => ({
    mesh: sliceMesh(whole, block, axis, { from: (ends[i] ?? 0) - height, height }),
    body: `layer ${i + 1}`,
    shift: along(axis, gap * i),
  }));
  const middle: Point3 = [
    block.min[0] + block.size[0] / 2,
    block.min[1] + block.size[1] / 2,
    block.min[2] + block.size[2] / 2,
  ];
  const joints = ends.slice(0, -1).map((end, i) => {
    const at = (shift: Mm): Point3 => {
      const point: [Mm, Mm, Mm] = [...middle];
      point[axis] = block.min[axis] + end + shift;
      return point;
    };
    return [at(gap * (i + 1)), at(gap * i)] as const;
  });
  return { axis, heights, layers, meshes, joints };
}

/** The size of a layer that is left when its other two are those of the block; null when they are not. */
function heightAlong(size: readonly Mm[], block: Point3, axis: AxisIndex): Mm | null {
  const left = [...size];
  for (const side of block.filter((_, index) => index !== axis)) {
    const index = left.findIndex((one) => Math.abs(one - side) <= same);
    if (index < 0) return null;
    left.splice(index, 1);
  }
  return left[0] ?? null;
}

function along(axis: AxisIndex, by: Mm): Point3 {
  const shift: [Mm, Mm, Mm] = [0, 0, 0];
  shift[axis] = by;
  return shift;
}

/** One layer of a form that is the same all through: its ends are called `low` and `high`. */
function sliceMesh(
  { points, triangles, faces }: SolidMesh,
  { min, size }: SolidBlock,
  axis: AxisIndex,
  { from, height }: { readonly from: Mm; readonly height: Mm },
): SolidMesh {
  const share = (point: Point3): Ratio => (point[axis] - min[axis]) / size[axis];
  const isAll = (corners: readonly number[], value: Ratio) =>
    corners.every((i) => Math.abs(share(points[i] ?? [0, 0, 0]) - value) < 1e-6);
  return {
    points: points.map((point): Point3 => {
      const moved: [Mm, Mm, Mm] = [...point];
      moved[axis] = min[axis] + from + share(point) * height;
      return moved;
    }),
    triangles,
    faces: triangles.map((corners, i) =>
      isAll(corners, 1) ? "high" : isAll(corners, 0) ? "low" : (faces[i] ?? ""),
    ),
  };
}

function layersPicture(
  { axis, meshes, joints }: Stack,
  how: { readonly block: SolidBlock; readonly scale: Ratio; readonly heights: readonly string[] },
): Picture {
  const { scale, heights } = how;
  const scene = makeScene(meshes, spaceView(FRONT_VIEW[0], FRONT_VIEW[1], scale));
  const regions = visibleFaces(scene);
  const last = meshes.length - 1;
  // Of the two faces of a joint, the one turned towards the viewer shows.
  const side = nearness(scene.view, along(axis, 1)) > 0 ? "high" : "low";
  const bare = side === "high" ? last : 0;
  const glued = regions.filter(({ face }) =>
    meshes.some(({ body = "" }, i) => i !== bare && face === `${body}:${side}`),
  );
  const callouts = meshes.flatMap(({ body = "" }, i): Callout[] => {
    const own = regions.filter(
      ({ face }) => face.startsWith(`${body}:`) && !glued.some((one) => one.face === face),
    );
    const [to] = own
      .map(({ region }) => insidePoints(region, 1)[0])
      .filter((at) => at !== undefined);
    return to ? [{ lines: [body, `${heights[i] ?? ""} thick`], style: "label", to }] : [];
  });
  const inks: Ink[] = [
    ...glued.map(({ region }) => drawHatch(region, glueHatch)),
    drawBody(scene),
    ...joints.flatMap(([from, to]) => drawMotion(from, to, scene)),
  ];
  return {
    inks: [
      ...inks,
      ...placeBeside(callouts, boxOfInks(inks)),
      ...callouts.map(({ to }) => dotInk(to)),
    ],
    collisions: [],
  };
}
