import { facesNamed } from "../panels/find-face.ts";
import type { Panel } from "../panels/types.ts";
import type { CoverSpec, Fault } from "../project/types.ts";
import { anchoredEdges } from "../solids/anchored-edges.ts";
import { upByAuthor } from "../solids/face-up.ts";
import type { Solid, SolidEdge } from "../solids/types.ts";
import { hiddenFace, type NamedEdges } from "./name-edges.ts";
import type { LostChoice } from "./types.ts";

/** What was asked for, and the panels it is looked for on. */
export interface Asked {
  readonly cover: CoverSpec;
  readonly solid: Solid;
  readonly panels: readonly Panel[];
  readonly named: NamedEdges;
}

/** Choices of the author that this cover cannot show, each with the reason; nothing is dropped in silence. */
export function findLostChoices({ cover, solid, panels, named }: Asked): LostChoice[] {
  const folded = new Set(panels.flatMap(({ folds }) => folds.map(({ edge }) => edge)));
  const label = (id: string) => solid.faces.find((face) => face.id === id)!.label;
  const places = (edges: readonly SolidEdge[]) =>
    edges.map(({ faces: [a, b] }) => `${label(a)} and ${label(b)}`).join("; ");
  const shut = (wanted: ReadonlySet<string>) =>
    solid.edges.filter(({ id }) => wanted.has(id) && folded.has(id));
  const lost: LostChoice[] = [];
  const unpiped = shut(named.piped);
  if (unpiped.length > 0)
    lost.push({
      field: "piping",
      message: `No piping runs between ${places(unpiped)}: the panels listed are folded there.`,
      remedy: "List those faces in panels of their own, or pipe another face.",
    });
  const unseamed = shut(named.anchored);
  if (unseamed.length > 0)
    lost.push({
      field: "anchor",
      message: `There is no seam to catch down between ${places(unseamed)}: the panels listed are folded there.`,
      remedy: "List those faces in panels of their own, or write anchor: tacks.",
    });
  if (cover.anchor !== null && anchoredEdges(solid).length === 0)
    lost.push({
      field: "anchor",
      message: `anchor: ${cover.anchor} has nothing to hold down: the form has no inward corner at a seat.`,
      remedy: "Take anchor out.",
    });
  const isZip = cover.closing.kind === "zip";
  const unused = [
    ...(cover.allowances?.zip != null && !isZip && cover.closing.across == null ? ["zip"] : []),
    ...(cover.allowances?.opening != null && isZip ? ["opening"] : []),
  ];
  for (const kind of unused)
    lost.push({
      field: `allowances.${kind}`,
      message: `allowances.${kind} is not used: the cover closes with ${isZip ? "a zip" : cover.closing.kind}.`,
      remedy: `Write it under ${isZip ? "zip" : "opening"}, or take it out.`,
    });
  return lost;
}

/** Directions of the print that no face can show. */
export function findUpFaults({ up }: CoverSpec, solid: Solid, field: string): Fault[] {
  return Object.entries(up).flatMap(([name, way]): Fault[] => {
    const at = `${field}.up.${name}`;
    const faces = facesNamed(solid, name);
    if (faces.length === 0) return [hiddenFace(at, name)];
    const isShown = faces.some(
      ({ isCurved, normal }) => isCurved || upByAuthor(way, normal) !== null,
    );
    return isShown
      ? []
      : [
          {
            field: at,
            fault: `is ${way}, which points straight into ${name} or out of it`,
            fix: "Name a direction that lies in the face",
          },
        ];
  });
}
