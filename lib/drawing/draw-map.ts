import type { Panel } from "../panels/types.ts";
import type { Degrees, Mm, Polygon, Ratio } from "../plane/types.ts";
import type { Cover } from "../seams/types.ts";
import type { Solid } from "../solids/types.ts";
import { formatSizes } from "../units/index.ts";
import { boxOfInks, growBox, shiftInks } from "./boxes.ts";
import { dotInk } from "./dot-ink.ts";
import { drawBody } from "./draw-body.ts";
import { fillPanel, layPanel } from "./draw-flat-panel.ts";
import { finishFigure } from "./finish-figure.ts";
import { fitScale } from "./fit-scale.ts";
import { flowBoxes } from "./flow-boxes.ts";
import { insidePoints } from "./inside-point.ts";
import { makeScene } from "./mesh-scene.ts";
import { pictureSize } from "./picture-size.ts";
import { type Callout, placeBeside } from "./place-beside.ts";
import { placeLabels } from "./place-labels.ts";
import { BEHIND_VIEW, FRONT_VIEW, spaceView } from "./space-view.ts";
import { textBox } from "./text-box.ts";
import type { DrawingInput, Figure, FigureLimits, Ink, Label, Picture } from "./types.ts";
import { visibleFaces } from "./visible-faces.ts";

/** Share of the page's height for the two views; the flat panels take the rest. */
const VIEWS: Ratio = 0.42;
const GAP: Mm = 8;

/** The solid in two views with every panel hatched and named, above the panels laid flat. */
export function drawMap(
  input: DrawingInput,
  cover: Cover,
  { solid, limits }: { readonly solid: Solid; readonly limits: FigureLimits },
): Figure {
  const half = { width: (limits.width - GAP) / 2, height: limits.height * VIEWS };
  const view = (angles: readonly [Degrees, Degrees]) =>
    fitScale(
      (scale) => mapView(solid, cover.panels, angles, scale),
      pictureSize([{ mesh: solid.mesh }], angles),
      half,
    );
  // Both views at one scale: the smaller of the two.
  const scale = Math.min(view(FRONT_VIEW).scale, view(BEHIND_VIEW).scale);
  const views = [FRONT_VIEW, BEHIND_VIEW].map((angles) =>
    mapView(solid, cover.panels, angles, scale),
  );
  const above = besideEachOther(views, limits.width);
  const used = boxOfInks(above.inks);
  const rest = { width: limits.width, height: limits.height - (used.bottom - used.top) - GAP };
  const flat = fitScale((ratio) => flatPanels(cover.panels, ratio, limits.width), [0, 0], rest);
  const flatBox = boxOfInks(flat.picture.inks);
  const moved = shiftInks(flat.picture.inks, [
    used.left - flatBox.left,
    used.bottom + GAP - flatBox.top,
  ]);
  const sizes = cover.panels.map(
    ({ id, label, size }) => `${id} ${label} ${formatSizes(size, input.project)}`,
  );
  return finishFigure(
    {
      id: `map/${cover.solid}`,
      title: "Which panel goes where",
      alt: `${cover.solid} from the front above and from behind below, every panel with a hatch and number of its own, and the panels laid flat: ${sizes.join("; ")}.`,
      scale: `Panels laid flat: ${flat.note.toLowerCase()}`,
    },
    {
      inks: [...above.inks, ...moved],
      collisions: [...above.collisions, ...flat.picture.collisions],
    },
    limits,
  );
}

/** One view: panels hatched where they are seen, their numbers on them or beside. */
export function mapView(
  solid: Solid,
  panels: readonly Panel[],
  [azimuth, elevation]: readonly [Degrees, Degrees],
  scale: Ratio,
): Picture {
  const scene = makeScene([{ mesh: solid.mesh }], spaceView(azimuth, elevation, scale));
  const faces = visibleFaces(scene);
  const body = drawBody(scene);
  const labels: Label[] = [];
  const callouts: Callout[] = [];
  const regions: { region: readonly Polygon[]; index: number }[] = [];
  panels.forEach((panel, index) => {
    const own = faces.filter(({ face }) => panel.faces.some((part) => part.face === face));
    for (const { region } of own) {
      if (region.length === 0) continue;
      regions.push({ region, index });
      const candidates = insidePoints(region, 30).map(
        (at) => ({ at, anchor: "middle", leader: null }) as const,
      );
      const label: Label = { lines: [panel.id], style: "name", candidates };
      const [to] = insidePoints(region, 1);
      if (placeLabels([label], [body]).collisions.length === 0) labels.push(label);
      else if (to) callouts.push({ lines: [panel.id], style: "name", to });
    }
  });
  const box = boxOfInks([body]);
  // A number that a leader leaves no room for goes beside the body too.
  const crossed = labels.filter(
    (label) => placeLabels([label], [body, ...placeBeside(callouts, box)]).collisions.length > 0,
  );
  callouts.push(
    ...crossed.flatMap(({ lines, style, candidates: [first] }) =>
      first ? [{ lines, style, to: first.at }] : [],
    ),
  );
  const beside = placeBeside(callouts, box);
  const kept = labels.filter((label) => !crossed.includes(label));
  const placed = placeLabels(kept, [body, ...beside]);
  const clear = placed.inks.flatMap((ink) =>
    ink.kind === "text" ? [growBox(textBox(ink), 0.8)] : [],
  );
  const fills = regions.flatMap(({ region, index }) => fillPanel(region, index, clear));
  const named = [...beside, ...callouts.map(({ to }) => dotInk(to))];
  return { inks: [...fills, body, ...placed.inks, ...named], collisions: placed.collisions };
}

function besideEachOther(views: readonly Picture[], width: Mm): Picture {
  const boxes = views.map(({ inks }) => boxOfInks(inks));
  const shifts = flowBoxes(boxes, width, GAP);
  return {
    inks: views.flatMap(({ inks }, index) => shiftInks(inks, shifts[index] ?? [0, 0])),
    collisions: views.flatMap(({ collisions }) => collisions),
  };
}

/** The panels laid flat in rows at one scale, hatched as in the views, each with its name. */
export function flatPanels(panels: readonly Panel[], scale: Ratio, width: Mm): Picture {
  const items = panels.map((panel, index) => flatPanel(panel, index, scale));
  const shifts = flowBoxes(
    items.map((inks) => boxOfInks(inks)),
    width - 3,
    6,
  );
  return {
    inks: items.flatMap((inks, index) => shiftInks(inks, shifts[index] ?? [0, 0])),
    collisions: [],
  };
}

function flatPanel(panel: Panel, index: number, scale: Ratio): Ink[] {
  const { region, lines, box } = layPanel(panel, scale);
  const candidates = insidePoints(region, 60).map(
    (at) => ({ at, anchor: "middle", leader: null }) as const,
  );
  const twin = panel.mirrorOf ? `, mirror of ${panel.mirrorOf}` : "";
  const wordings = [[panel.id, `${panel.label}${twin}`], [`${panel.id}${twin}`]];
  for (const wording of wordings) {
    const placed = placeLabels([{ lines: wording, style: "name", candidates }], lines);
    if (candidates.length === 0 || placed.collisions.length > 0) continue;
    const clear = placed.inks.flatMap((ink) =>
      ink.kind === "text" ? [growBox(textBox(ink), 0.8)] : [],
    );
    return [...fillPanel(region, index, clear), ...lines, ...placed.inks];
  }
  // Too small to write on: the name stands under it.
  const under: Ink = {
    kind: "text",
    style: "name",
    text: `${panel.id}${twin}`,
    at: [box.left, box.bottom + 4],
    anchor: "start",
    isUpright: false,
  };
  return [...fillPanel(region, index, []), ...lines, under];
}
