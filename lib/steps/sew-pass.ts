import { countOf } from "../estimate/count-of.ts";
import { listWords } from "../units/list-words.ts";
import type { Work } from "../estimate/types.ts";
import type { Cover, Seam, SewingPass } from "../seams/types.ts";
import { countWords, mostWords, shortEnough } from "./count-words.ts";
import { makeStep } from "./make-step.ts";
import { panelName, panelWithLabel, seamName } from "./name-parts.ts";
import { notchNumbers, notchWords } from "./seam-edges.ts";
import type { Step } from "./types.ts";

/** Several seams along one raw edge, sewn in one go: a plate on a frame of joined strips. */
export function sewPass(
  pass: SewingPass,
  cover: Cover,
  { group, work }: { readonly group: string; readonly work: Work },
): Step {
  const seams = pass.seams.map((id) => cover.seams.find((seam) => seam.id === id)!);
  const panels = [...new Set(seams.flatMap((seam) => seam.panels))];
  const whose = work.covers.length > 1 ? ` of ${cover.solid}` : "";
  const letters = listWords(pass.seams);
  const clipped = [...new Set(pass.corners.flatMap(({ clip }) => clip ?? []))];
  const isPiped = seams.some((seam) => seam.isPiped);
  return makeStep({
    id: `sew-${cover.solid}-${pass.seams.join("-")}`,
    alsoNamed: pass.seams.map((letter) => `sew-${cover.solid}-${letter}`),
    group,
    title: `Sew seams ${letters}${whose} in one go`,
    actions: [
      layOn(pass, seams, { cover, work }),
      ...matchNotches(seams, cover),
      ...clipped.map((panel) => clipCorner(panel, pass, { cover, work })),
      sewAlong(pass, isPiped),
      ...pivotAt(pass, work),
    ],
    uses: [
      ...panels.map((panel) => panelName(cover, panel, work)),
      ...(isPiped ? ["piping", "zip foot"] : []),
      ...(clipped.length > 0 ? ["cloth scissors"] : []),
    ],
    makes: [...pass.seams.map((id) => seamName(cover, id, work)), pass.makes],
    check: checkOf(pass, work),
    figure: `seam/${cover.solid}/${pass.seams.join("+")}`,
  });
}

interface Shown {
  readonly cover: Cover;
  readonly work: Work;
}

/** The one panel that lies along the whole pass, laid on the rest; else edge to edge. */
function layOn(pass: SewingPass, seams: readonly Seam[], { cover, work }: Shown): string {
  const shared = seams[0]!.panels.find((panel) =>
    seams.every(({ panels }) => panels.includes(panel)),
  );
  const [first, last] = [pass.seams[0]!, pass.seams.at(-1)!];
  if (shared === undefined) return `Lay the raw edges together from seam ${first} to seam ${last}.`;
  const others = [
    ...new Set(seams.flatMap(({ panels }) => panels.filter((panel) => panel !== shared))),
  ].map((panel) => panelName(cover, panel, work));
  const say = (panel: string, on: string) => `Lay ${panel} on ${on}.`;
  const named = panelWithLabel(cover, shared, work);
  const plain = panelName(cover, shared, work);
  const rest = `the raw edges from seam ${first} to seam ${last}`;
  return others.length === 0
    ? say(plain, rest)
    : shortEnough(say(named, listWords(others)), say(plain, listWords(others)), say(plain, rest));
}

function matchNotches(seams: readonly Seam[], cover: Cover): string[] {
  const numbers = [...new Set(seams.flatMap((seam) => notchNumbers(seam, cover)))].toSorted(
    (one, other) => one - other,
  );
  if (numbers.length === 0) return [];
  const isRun = numbers.every((number, i) => i === 0 || number === numbers[i - 1]! + 1);
  const all = isRun ? notchWords(numbers) : `notches ${listWords(numbers.map(String))}`;
  return [countWords(all) < mostWords ? `Match ${all}.` : "Match the letters, then the notches."];
}

function clipCorner(panel: string, pass: SewingPass, { cover, work }: Shown): string {
  const count = pass.corners.filter(({ clip }) => clip === panel).length;
  const which = count === 1 ? "the corner" : `the ${count} corners`;
  return `Clip ${which} of ${panelName(cover, panel, work)} to just short of the seam line.`;
}

function sewAlong(pass: SewingPass, isPiped: boolean): string {
  const foot = isPiped ? " with the zip foot" : "";
  const [first, last] = [pass.seams[0], pass.seams.at(-1)];
  return pass.isRing
    ? `Sew all the way round${foot}, on over the first stitches.`
    : `Sew from seam ${first} to the end of seam ${last}${foot}, without a stop.`;
}

function pivotAt({ corners }: SewingPass, { format }: Work): string[] {
  if (corners.length === 0) return [];
  const places = listWords(corners.map(({ along }) => format.length(along)));
  const exact = `Pivot ${places} from the start.`;
  const short = `Pivot at each of the ${countOf(corners.length, "corner")}, where the joins spread open.`;
  return [corners.length <= 2 && countWords(exact) <= mostWords ? exact : short];
}

function checkOf({ length, isRing, corners }: SewingPass, work: Work): string {
  const pucker =
    corners.length === 0
      ? ""
      : `, with no pucker at the ${corners.length === 1 ? "corner" : "corners"}`;
  return `The seams together should measure ${work.format.length(length)}${isRing ? " round" : ""}${pucker}.`;
}
