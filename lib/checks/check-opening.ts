import type { Mm } from "../plane/types.ts";
import type { Unit } from "../units/types.ts";
import { listWords } from "../units/list-words.ts";
import type { Opening, WayOut } from "../seams/types.ts";
import type { Solid } from "../solids/types.ts";
import { rules } from "./rules.ts";
import type { Check } from "./types.ts";

/** An opening through which the foam would not go, and the nearest one through which it would. */
export const checkOpening: Check = ({ covers, solids, project, format: { length } }) =>
  covers.flatMap(({ solid, opening }) => {
    if (opening === null || opening.fits) return [];
    const form = solids.find(({ id }) => id === solid);
    const spec = project.solids.find(({ id }) => id === solid)?.cover;
    const isAcross = (spec?.closing.across ?? null) !== null;
    // Where more of the same seam is no way out, all of it is too little.
    const hasLength =
      opening.wayOut?.kind !== "longer" &&
      (spec?.open ?? []).some((one) => one.kind === "between" && one.length !== undefined);
    return [
      {
        id: `opening-small/${solid}`,
        severity: "note",
        about: `solid/${solid}`,
        message:
          `The opening ${opening.isProposed ? "" : "you chose "}spans a girth of ${length(opening.girth)}. The foam is ${length(opening.needed)} round at its ` +
          `smallest, so it would have to be squeezed by ${Math.round(opening.give * 100)} %, which is too much.`,
        remedy: `${hasLength ? "Take `length` out. " : ""}${isAcross ? "Take `across` out: a strip lets through twice its own length and no more. " : ""}${remedyOf(opening, { form, units: project.units }, length)}`,
        source: rules["opening-small"].source,
      },
    ];
  });

function remedyOf(
  { wayOut, isProposed }: Opening,
  { form, units }: { readonly form: Solid | undefined; readonly units: Unit },
  length: (of: number) => string,
): string {
  if (wayOut === null || form === undefined)
    return isProposed
      ? "List the panels so that a longer seam runs round the largest face, or make the cover in two parts."
      : "Leave a longer seam open, or list the panels so that there is one.";
  if (wayOut.kind === "longer")
    return `Make \`length\` of that seam ${length(onRuler(wayOut, form, units))} or more: it then spans at least ${length(wayOut.girth)}.`;
  const opens = `It then spans ${length(wayOut.girth)}, along ${length(wayOut.run)} of seam.`;
  return wayOut.kind === "also"
    ? `Leave open under \`open\` as well ${seamsOf(wayOut, form)}. ${opens}`
    : `Leave open under \`open\` instead ${seamsOf(wayOut, form)}. ${opens}`;
}

/** Half an inch up where the author works in inches, unless the seam ends before. @source our choice */
function onRuler({ run, pairs }: WayOut, { edges }: Solid, units: Unit): Mm {
  if (units !== "in") return run;
  const up = Math.ceil(run / halfInch - 1e-6) * halfInch;
  const own = edges.filter(({ faces }) =>
    pairs.some((pair) => faces.every((face) => pair.includes(face))),
  );
  const whole = own.reduce((sum, edge) => sum + edge.length, 0);
  return up < whole ? up : run;
}

const halfInch: Mm = 12.7;

function seamsOf({ pairs }: WayOut, { faces }: Solid): string {
  const label = (id: string) => faces.find((face) => face.id === id)?.label ?? id;
  const each = pairs.map(([a, b]) => `between ${label(a)} and ${label(b)}`);
  return `the ${each.length === 1 ? "seam" : "seams"} ${listWords(each)}`;
}
