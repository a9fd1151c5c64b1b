import type { Degrees, Mm, Point } from "../plane/types.ts";
import type { Cover } from "../seams/types.ts";
import type { Face, Point3, Solid, SolidEdge } from "../solids/types.ts";
import { formatLength } from "../units/index.ts";
import { boxOfInks } from "./boxes.ts";
import { drawBody } from "./draw-body.ts";
import { finishFigure } from "./finish-figure.ts";
import { fitScale } from "./fit-scale.ts";
import { hideLines } from "./hide-lines.ts";
import { drawArrow } from "./mark-arrow.ts";
import { makeScene } from "./mesh-scene.ts";
import { pathOf } from "./paper-path.ts";
import { pictureSize } from "./picture-size.ts";
import { placeLabels } from "./place-labels.ts";
import { dot, nearness, project, type SpaceView, spaceView } from "./space-view.ts";
import type {
  Candidate,
  DrawingInput,
  Figure,
  FigureLimits,
  Ink,
  Label,
  Picture,
} from "./types.ts";

/** Views tried for an opening: the first that shows most of it wins. */
const views: readonly (readonly [Degrees, Degrees])[] = [
  [32, 26],
  [-32, 26],
  [212, 26],
  [148, 26],
  [32, -24],
  [212, -24],
];

/** The solid with the seams left open drawn heavy and an arrow the way the foam goes in. */
export function drawOpening(
  input: DrawingInput,
  cover: Cover,
  { solid, limits }: { readonly solid: Solid; readonly limits: FigureLimits },
): Figure {
  const edges = solid.edges.filter(({ id }) => cover.opening?.edges.includes(id));
  const away = pushAxis(solid, edges);
  const angles = bestView(edges, away, solid);
  const fitted = fitScale(
    (scale) => openingPicture(solid, edges, away, spaceView(angles[0], angles[1], scale)),
    pictureSize([{ mesh: solid.mesh }], angles),
    limits,
  );
  const run = formatLength(cover.opening?.run ?? 0, input.project);
  const names = edges.map(({ faces }) => faces.map((id) => faceLabel(solid, id)).join(" to "));
  return finishFigure(
    {
      id: `opening/${solid.id}`,
      title: "Where the cover stays open",
      alt: `${run} of seam is left open, drawn heavy: ${names.join(", ")}. The arrow shows the way the foam goes in.`,
      scale: fitted.note,
    },
    fitted.picture,
    limits,
  );
}

function faceLabel(solid: Solid, id: string): string {
  return solid.faces.find((face) => face.id === id)?.label ?? id;
}

/** Outward from the face with most of its rim open: the foam goes in the other way. */
function pushAxis(solid: Solid, edges: readonly SolidEdge[]): Point3 {
  const openRim = (face: Face) =>
    edges.reduce((sum, { faces, length }) => sum + (faces.includes(face.id) ? length : 0), 0);
  const rim = (face: Face) =>
    solid.edges.reduce((sum, { faces, length }) => sum + (faces.includes(face.id) ? length : 0), 0);
  const share = (face: Face) => openRim(face) / Math.max(1, rim(face)) + openRim(face) / 1e6;
  const [best] = [...solid.faces].sort((a, b) => share(b) - share(a));
  const normal = best?.normal ?? [0, 0, 0];
  return Math.hypot(...normal) > 0.5 ? normal : [0, -1, 0];
}

function bestView(
  edges: readonly SolidEdge[],
  away: Point3,
  solid: Solid,
): readonly [Degrees, Degrees] {
  const scored = views.map((angles) => {
    const view = spaceView(angles[0], angles[1]);
    const scene = makeScene([{ mesh: solid.mesh }], view);
    const seen = hideLines(edges.flatMap(edgeLines), scene)
      .filter(({ isVisible }) => isVisible)
      .reduce((sum, { from, to }) => sum + Math.hypot(from[0] - to[0], from[1] - to[1]), 0);
    return { angles, score: seen * (1 + 0.5 * Math.max(0, dot(away, view.towards))) };
  });
  const [best] = scored.sort((a, b) => b.score - a.score);
  return best?.angles ?? [32, 26];
}

function edgeLines({ path }: SolidEdge): { from: Point3; to: Point3 }[] {
  return path.flatMap((from, index) => {
    const to = path[index + 1];
    return to ? [{ from, to }] : [];
  });
}

function openingPicture(
  solid: Solid,
  edges: readonly SolidEdge[],
  away: Point3,
  view: SpaceView,
): Picture {
  const scene = makeScene([{ mesh: solid.mesh }], view);
  const body = drawBody(scene);
  const seen = hideLines(edges.flatMap(edgeLines), scene);
  const paths = (isVisible: boolean) =>
    seen.filter((line) => line.isVisible === isVisible).map(({ from, to }) => pathOf([from, to]));
  const open: Ink[] = [
    { kind: "path", className: "line open hidden", paths: paths(false), isObstacle: false },
    { kind: "path", className: "line open", paths: paths(true), isObstacle: true },
  ];
  const arrow = pushArrow(edges, away, view);
  const inks = [body, ...open, ...arrow.inks];
  const box = boxOfInks(inks);
  const label: Label = {
    lines: ["push the foam in this way"],
    style: "label",
    candidates: roundPlaces(arrow.tail, box),
  };
  const placed = placeLabels([label], inks);
  return { inks: [...inks, ...placed.inks], collisions: placed.collisions };
}

/** An arrow that ends short of the middle of the opening. */
function pushArrow(
  edges: readonly SolidEdge[],
  away: Point3,
  view: SpaceView,
): { inks: Ink[]; tail: Point } {
  const points = edges.flatMap(({ path }) => path);
  const sum = points.reduce((a, b): Point3 => [a[0] + b[0], a[1] + b[1], a[2] + b[2]], [
    0, 0, 0,
  ] as Point3);
  const count = Math.max(1, points.length);
  const middle = project(view, [sum[0] / count, sum[1] / count, sum[2] / count]);
  const direction = project({ ...view, scale: 1 }, away);
  const reach = Math.hypot(...direction);
  // Looking straight along the arrow: let it come from below.
  const out: Point =
    reach > 0.2
      ? [direction[0] / reach, direction[1] / reach]
      : [0, nearness(view, away) > 0 ? 1 : -1];
  const at = (by: Mm): Point => [middle[0] + out[0] * by, middle[1] + out[1] * by];
  return { inks: drawArrow(at(22), at(5), "stock"), tail: at(22) };
}

function roundPlaces(tail: Point, box: { left: Mm; right: Mm; top: Mm; bottom: Mm }): Candidate[] {
  const near = [5, 8, 12].flatMap((reach): Candidate[] => [
    { at: [tail[0], tail[1] + reach], anchor: "middle", leader: null },
    { at: [tail[0], tail[1] - reach], anchor: "middle", leader: null },
    { at: [tail[0] + reach, tail[1]], anchor: "start", leader: null },
    { at: [tail[0] - reach, tail[1]], anchor: "end", leader: null },
  ]);
  const below: Candidate = { at: [tail[0], box.bottom + 6], anchor: "middle", leader: null };
  return [...near, below];
}
