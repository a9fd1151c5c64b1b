import type { Mm, Point, Ratio } from "../plane/types.ts";
import type { Axis, PieceSpec, Project, Stock } from "../project/types.ts";
import type { Point3 } from "../solids/types.ts";
import { formatLength, formatSizes } from "../units/index.ts";
import { drawBody } from "./draw-body.ts";
import { drawBoxSizes } from "./draw-box-sizes.ts";
import { extrudeOutline, type Standing } from "./extrude-outline.ts";
import { finishFigure } from "./finish-figure.ts";
import { fitScale } from "./fit-scale.ts";
import { insidePoints } from "./inside-point.ts";
import { makeScene, type SceneMesh } from "./mesh-scene.ts";
import { flattenPath, pathOf, pathOfLoop } from "./paper-path.ts";
import { pictureSize } from "./picture-size.ts";
import type { Callout } from "./place-beside.ts";
import { sizeAndName } from "./size-and-name.ts";
import { FRONT_VIEW, spaceView } from "./space-view.ts";
import type { DrawingInput, Figure, FigureLimits, PathInk, Picture } from "./types.ts";
import { type VisibleFace, visibleFaces } from "./visible-faces.ts";

/** A board or sheet part and where it stands. */
interface StandingPart {
  readonly piece: PieceSpec;
  readonly mesh: SceneMesh;
}

/** Thickness a part is drawn with where its stock does not say. */
const CARD = 3;

/** Boards and sheets with a place of their own, put together; null where there are none. */
export function standingParts(project: Project): StandingPart[] {
  return project.pieces.flatMap((piece): StandingPart[] => {
    const standing = standPiece(
      piece,
      project.stock.find(({ id }) => id === piece.stock),
    );
    if (!standing) return [];
    const places = [standing.at, ...(piece.others ?? [])];
    const rings = [piece.outline.outer, ...piece.outline.holes].map((loop) =>
      flattenPath(
        pathOfLoop(loop, ([x, y]) => [x, y]),
        0.3,
      ).slice(0, -1),
    );
    return places.map((at, i) => ({
      piece,
      mesh: {
        mesh: extrudeOutline(rings, { ...standing, at }),
        body: i === 0 ? piece.id : `${piece.id} ${i + 1}`,
      },
    }));
  });
}

function standPiece(piece: PieceSpec, stock: Stock | undefined): Standing | null {
  if (!piece.at || !stock || (stock.kind !== "sheet" && stock.kind !== "board")) return null;
  const across: Axis = piece.along ?? "x";
  const thin: Axis =
    piece.thin ?? (stock.kind === "sheet" && across !== "z" ? "z" : across === "x" ? "y" : "x");
  const up = (["x", "y", "z"] as const).find((axis) => axis !== across && axis !== thin) ?? "z";
  const thickness = stock.kind === "sheet" ? stock.thickness : (stock.section[1] ?? CARD);
  return { across, up, thin, thickness, at: piece.at };
}

/** The whole thing put together from its boards and sheets, hidden lines removed. */
export function drawAssembly(
  input: DrawingInput,
  { id, limits }: { readonly id: string; readonly limits: FigureLimits },
): Figure {
  const parts = standingParts(input.project);
  const meshes = parts.map(({ mesh }) => mesh);
  const box = boxRound(meshes);
  const fitted = fitScale(
    (scale) => assemblyPicture(input, parts, { box, scale }),
    pictureSize(meshes, FRONT_VIEW),
    limits,
  );
  const names = [...new Set(parts.map(({ piece }) => piece))].map(
    (piece) => `${piece.cut} × ${piece.label} ${formatSizes(piece.size, input.project)}`,
  );
  return finishFigure(
    {
      id,
      title: "The parts put together",
      alt: `${formatSizes(box.size, input.project)} overall (length, depth, height), made of: ${names.join("; ")}.`,
      scale: fitted.note,
      // Drawn much shorter than a hand is wide, its parts are specks.
      drawn: (fitted.scale * Math.max(...box.size)) / 1.6,
    },
    fitted.picture,
    limits,
  );
}

function assemblyPicture(
  { project }: DrawingInput,
  parts: readonly StandingPart[],
  { box, scale }: { readonly box: { min: Point3; size: Point3 }; readonly scale: number },
): Picture {
  const view = spaceView(FRONT_VIEW[0], FRONT_VIEW[1], scale);
  const { body, faces } = seenAssembly(project, parts);
  const toScale = ([x, y]: Point): Point => [x * scale, y * scale];
  const write = (length: Mm) => formatLength(length, project);
  const sizes = (height: Ratio) => drawBoxSizes(box, view, write, [0.5, 0.5, height]);
  const pieces = [...new Set(parts.map(({ piece }) => piece))];
  const callouts = pieces.flatMap((piece): Callout[] => {
    const own = faces.filter(({ face }) => face.startsWith(`${piece.id}:`));
    const spots = own
      .map(
        ({ region }) =>
          insidePoints(
            region.map((ring) => ring.map(toScale)),
            1,
          )[0],
      )
      .filter((at) => at !== undefined);
    const [to] = spots;
    return to ? [{ lines: [piece.label], style: "label", to }] : [];
  });
  const runs = body.paths.map((path) => pathOf(flattenPath(path).map(toScale)));
  return sizeAndName({ ...body, paths: runs }, callouts, sizes);
}

interface SeenAssembly {
  readonly body: PathInk;
  readonly faces: readonly VisibleFace[];
}

/** What has been worked out: hiding the lines of many parts is slow, and every scale shows the same. */
const known = new WeakMap<Project, SeenAssembly>();

/** The lines and faces of the whole that show, at full size. */
function seenAssembly(project: Project, parts: readonly StandingPart[]): SeenAssembly {
  const before = known.get(project);
  if (before) return before;
  const view = spaceView(FRONT_VIEW[0], FRONT_VIEW[1]);
  const scene = makeScene(
    parts.map(({ mesh }) => mesh),
    view,
  );
  const seen = { body: drawBody(scene), faces: visibleFaces(scene) };
  known.set(project, seen);
  return seen;
}

function boxRound(meshes: readonly SceneMesh[]): { min: Point3; size: Point3 } {
  const points = meshes.flatMap(({ mesh }) => mesh.points);
  const least = (axis: 0 | 1 | 2) =>
    points.reduce((best, point) => Math.min(best, point[axis]), Infinity);
  const most = (axis: 0 | 1 | 2) =>
    points.reduce((best, point) => Math.max(best, point[axis]), -Infinity);
  const min: Point3 = [least(0), least(1), least(2)];
  return { min, size: [most(0) - min[0], most(1) - min[1], most(2) - min[2]] };
}
