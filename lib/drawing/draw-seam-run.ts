import type { Degrees, Ratio } from "../plane/types.ts";
import type { Cover, Seam } from "../seams/types.ts";
import type { Solid, SolidEdge } from "../solids/types.ts";
import { formatLength } from "../units/index.ts";
import { drawBody } from "./draw-body.ts";
import { drawEdges } from "./draw-edges.ts";
import { finishFigure } from "./finish-figure.ts";
import { fitScale } from "./fit-scale.ts";
import { flowPictures } from "./flow-pictures.ts";
import { hideLines } from "./hide-lines.ts";
import { makeScene } from "./mesh-scene.ts";
import { edgeLines } from "./open-view.ts";
import { placeLabels } from "./place-labels.ts";
import { seamLetters } from "./seam-letters.ts";
import { spaceView } from "./space-view.ts";
import type { DrawingInput, Figure, FigureLimits, Ink, Picture } from "./types.ts";

type Angles = readonly [Degrees, Degrees];

/** Pairs of views that between them show a form from all sides; the first of a pair is the usual one. */
const pairs: readonly (readonly [Angles, Angles])[] = [
  [
    [32, 26],
    [212, 26],
  ],
  [
    [32, 26],
    [212, -24],
  ],
  [
    [-32, 26],
    [148, 26],
  ],
];

/**
 * Where a long run of seams goes on the finished form, from the front and from behind: for a pass that
 * joins more panels than can be laid out beside each other.
 */
export function drawSeamRun(
  input: DrawingInput,
  cover: Cover,
  {
    solid,
    seams,
    limits,
  }: { readonly solid: Solid; readonly seams: readonly Seam[]; readonly limits: FigureLimits },
): Figure {
  const own = new Set(seams.flatMap(({ edges }) => edges));
  const edges = solid.edges.filter(({ id }) => own.has(id));
  const letters = seams.map(({ id }) => id);
  const views = fewestViews(edges, solid);
  const fitted = fitScale(
    (scale) => runPicture(cover, letters, { solid, edges, views, scale, width: limits.width }),
    [0, 0],
    limits,
  );
  const length = formatLength(
    edges.reduce((sum, edge) => sum + edge.length, 0),
    input.project,
  );
  const last = letters.at(-1) ?? "";
  return finishFigure(
    {
      id: `seam/${cover.solid}/${letters.join("+")}`,
      title: `Where seams ${letters.slice(0, -1).join(", ")} and ${last} go`,
      alt: `The ${cover.solid} as it will be, ${views.length > 1 ? "from the front and from behind" : "from the side that shows them"}. Seams ${letters.join(", ")}, ${length} in all, are drawn heavy.`,
      scale: fitted.note,
    },
    fitted.picture,
    limits,
  );
}

/** One view where it shows all the edges, else the pair that shows most. */
function fewestViews(edges: readonly SolidEdge[], solid: Solid): readonly Angles[] {
  const shownIn = (angles: Angles) =>
    new Set(
      edges
        .filter((edge) => {
          const scene = makeScene([{ mesh: solid.mesh }], spaceView(angles[0], angles[1]));
          return hideLines(edgeLines(edge), scene).some(({ isVisible }) => isVisible);
        })
        .map(({ id }) => id),
    );
  const single = pairs.flat().find((angles) => shownIn(angles).size === edges.length);
  if (single !== undefined) return [single];
  const shown = ([one, other]: (typeof pairs)[number]) =>
    new Set([...shownIn(one), ...shownIn(other)]).size;
  return pairs.toSorted((a, b) => shown(b) - shown(a))[0]!;
}

interface Run {
  readonly solid: Solid;
  readonly edges: readonly SolidEdge[];
  readonly views: readonly Angles[];
  readonly scale: Ratio;
  readonly width: number;
}

function runPicture(cover: Cover, letters: readonly string[], run: Run): Picture {
  const named = new Set<string>();
  const pictures = run.views.map((angles): Picture => {
    const scene = makeScene([{ mesh: run.solid.mesh }], spaceView(angles[0], angles[1], run.scale));
    const inks: Ink[] = [
      { ...drawBody(scene), className: "line ghost", isObstacle: true },
      drawEdges(run.edges, scene, "line seam heavy"),
    ];
    // Each letter stands once, in the first view in which its seam is seen.
    const seen = letters.filter((letter) => {
      const own = cover.seams.find(({ id }) => id === letter)?.edges ?? [];
      const lines = run.edges.filter(({ id }) => own.includes(id)).flatMap(edgeLines);
      return !named.has(letter) && hideLines(lines, scene).some(({ isVisible }) => isVisible);
    });
    seen.forEach((letter) => named.add(letter));
    const placed = placeLabels(seamLetters(cover, seen, { solid: run.solid, scene }), inks);
    return { inks: [...inks, ...placed.inks], collisions: placed.collisions };
  });
  return flowPictures(pictures, run.width, 10);
}

/** Whether a pass joins more panels than a reader can follow laid out flat. @source our choice */
export const isLongRun = (seams: readonly Seam[]): boolean =>
  new Set(seams.flatMap(({ panels }) => panels)).size > 5;
