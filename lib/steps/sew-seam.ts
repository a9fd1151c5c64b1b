import { countOf } from "../estimate/count-of.ts";
import type { Work } from "../estimate/types.ts";
import type { Cover, Seam } from "../seams/types.ts";
import { isShortJoin } from "./batch-seams.ts";
import { clipSpacing } from "./clip-spacing.ts";
import { countWords, mostWords, shortEnough } from "./count-words.ts";
import { listWords } from "../units/list-words.ts";
import { makeStep } from "./make-step.ts";
import { panelName, panelWithLabel, seamName } from "./name-parts.ts";
import { endNotches, isCurved, notchNumbers, notchWords } from "./seam-edges.ts";
import type { Step } from "./types.ts";

/** Edges nearer in length than this are sewn without easing, in mm. */
const equal = 0.5;

/** What a seam needs beyond the method that all share: see `sew-method.ts`. */
export function sewSeam(
  seam: Seam,
  cover: Cover,
  { group, work }: { readonly group: string; readonly work: Work },
): Step {
  const name = seamName(cover, seam.id, work);
  const panels = [...new Set(seam.panels.map((panel) => panelName(cover, panel, work)))];
  const clipped = clippedPanels(seam);
  const straight = straightToCurve(seam, cover);
  const isTube = panels.length === 1;
  const isOpened = isTube || isShortJoin(seam, cover);
  return makeStep({
    id: `sew-${cover.solid}-${seam.id}`,
    group,
    title: `Sew ${name}: ${isTube ? `close ${panels[0]}` : `${panels[1]} to ${panels[0]}`}`,
    actions: [
      layTogether(seam, cover, work),
      ...match(seam, cover),
      ...ease(seam, cover, work),
      ...(straight === null
        ? []
        : [
            `Clip ${panelName(cover, straight, work)} every ${clipSpacing(work)} where its straight edge meets a curve, half the allowance deep.`,
          ]),
      ...clipCorners(seam, cover, work),
      ...sew(seam, cover, straight, work),
      ...pivot(seam, work),
      ...(isOpened ? ["Press the allowances open with the iron."] : []),
    ],
    uses: [
      ...panels,
      ...(seam.isPiped ? ["piping", "zip foot"] : []),
      ...(clipped.length > 0 || straight !== null ? ["cloth scissors"] : []),
      ...(isOpened ? ["iron"] : []),
    ],
    makes: [name, seam.makes],
    check: checkOf(seam, name, work),
    figure: `seam/${cover.solid}/${seam.id}`,
  });
}

/** "Lay panel P2 (back) on panel P1 (top).", with as many labels as there is room for. */
export function layTogether(seam: Seam, cover: Cover, work: Work, end = ""): string {
  const [one, other] = seam.panels;
  if (one === other)
    return `Fold ${panelName(cover, one, work)} until its two edges of seam ${seam.id} meet.`;
  const say = (a: string, b: string) => `Lay ${b} on ${a}${end}.`;
  return shortEnough(
    say(panelWithLabel(cover, one, work), panelWithLabel(cover, other, work)),
    say(panelName(cover, one, work), panelWithLabel(cover, other, work)),
    say(panelName(cover, one, work), panelName(cover, other, work)),
  );
}

function match(seam: Seam, cover: Cover): string[] {
  const numbers = notchNumbers(seam, cover);
  if (numbers.length === 0) return [];
  // Four places on a ring stand a quarter of the way round from one another, some of them notched twice.
  const isQuartered = seam.isRing && numbers.length > 4;
  return [`Match ${isQuartered ? "the quarter marks, " : ""}${notchWords(numbers)}.`];
}

function ease(seam: Seam, cover: Cover, work: Work): string[] {
  const [first, second] = seam.length;
  if (Math.abs(first - second) <= equal) return [];
  const longer = first > second ? seam.panels[0] : seam.panels[1];
  return [`Ease the longer edge of ${panelName(cover, longer, work)} evenly between the pins.`];
}

/** The panel whose straight edge goes round the other's curve, or null. */
function straightToCurve(seam: Seam, cover: Cover): string | null {
  const [one, other] = seam.panels;
  const [first, second] = [isCurved(seam, one, cover), isCurved(seam, other, cover)];
  return one === other || first === second ? null : first ? other : one;
}

function clippedPanels({ corners }: Seam): string[] {
  return [...new Set(corners.flatMap(({ clip }) => clip ?? []))];
}

function clipCorners(seam: Seam, cover: Cover, work: Work): string[] {
  return clippedPanels(seam).map((panel) => {
    const count = seam.corners.filter(({ clip }) => clip === panel).length;
    const which = count === 1 ? "the corner" : `the ${count} corners`;
    return `Clip ${which} of ${panelName(cover, panel, work)} to just short of the seam line.`;
  });
}

function sew(seam: Seam, cover: Cover, straight: string | null, work: Work): string[] {
  const foot = seam.isPiped ? " with the zip foot, close to the cord" : "";
  if (seam.isRing) {
    return [
      ...(straight === null ? [] : [`Keep ${panelName(cover, straight, work)} on top.`]),
      `Sew all the way round${foot}, on over the first stitches.`,
    ];
  }
  const numbers = notchNumbers(seam, cover);
  const [from, to] = endNotches(seam, cover);
  if (from !== undefined && to !== undefined) {
    // Two ends on a circle leave two ways round: the notches between tell which.
    const past = numbers.length === 0 ? "" : ` past ${notchWords(numbers)}`;
    return [`Sew from notch ${from}${past} to notch ${to}, no further${foot}.`];
  }
  const [first] = numbers;
  const start =
    seam.corners.length > 0 && first !== undefined
      ? ` from the end nearer notch ${first}`
      : " from end to end";
  return [`Sew${start}${foot}.`];
}

function pivot({ corners }: Seam, { format }: Work): string[] {
  if (corners.length === 0) return [];
  const [first, ...others] = corners;
  const isAtStart = first!.along < equal;
  const places = listWords((isAtStart ? others : corners).map(({ along }) => format.length(along)));
  if (isAtStart && others.length === 0)
    return ["Start at the corner, and pivot when you are back."];
  const exact = isAtStart
    ? `Start at a corner; pivot ${places} from there.`
    : `Pivot ${places} from the start.`;
  return [
    countWords(exact) <= mostWords
      ? exact
      : `Pivot at each of the ${countOf(corners.length, "corner")}.`,
  ];
}

function checkOf(seam: Seam, name: string, work: Work): string {
  const length = work.format.length(Math.max(...seam.length));
  const [first] = seam.corners;
  const corners =
    first === undefined
      ? ""
      : `, with no pucker at the ${seam.corners.length === 1 ? "corner" : "corners"}`;
  return `${capital(name)} should measure ${length}${seam.isRing ? " round" : ""}${corners}.`;
}

function capital(words: string): string {
  return words.charAt(0).toUpperCase() + words.slice(1);
}
