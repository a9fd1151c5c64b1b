import type { Work } from "../estimate/types.ts";
import type { Cover, Seam, SeamCorner } from "../seams/types.ts";
import { countOf } from "../estimate/count-of.ts";
import { shortEnough } from "./count-words.ts";
import { makeStep } from "./make-step.ts";
import { panelName, panelWithLabel, seamName } from "./name-parts.ts";
import type { Step } from "./types.ts";

/** Edges nearer in length than this are sewn without easing, in mm. */
const equal = 0.5;

/** One seam: lay together, match, clip, sew with its pivots, press, measure. */
export function sewSeam(
  seam: Seam,
  cover: Cover,
  { group, work }: { readonly group: string; readonly work: Work },
): Step {
  const name = seamName(cover, seam.id, work);
  const [one, other] = seam.panels.map((panel) => panelName(cover, panel, work));
  const clips = seam.corners.filter(({ clip }) => clip !== null);
  const length = work.format.length(Math.max(...seam.length));
  return makeStep({
    id: `sew-${cover.solid}-${seam.id}`,
    group,
    title: `Sew ${name}: ${one === other ? `close ${one}` : `${other ?? ""} to ${one ?? ""}`}`,
    actions: [
      ...layTogether(seam, cover, work),
      `Match the ends and the notches of ${name}.`,
      `Pin ${name} from the ends to the middle.`,
      ...ease(seam, cover, work),
      ...cutClips(clips, cover, work),
      ...startSeam(seam, cover, work),
      `Sew ${name} on the seam line with the sewing machine.`,
      ...pivot(seam.corners, work),
      ...endSeam(seam, cover, work),
      `Press the allowances of ${name} with the iron.`,
    ],
    uses: [
      ...new Set(seam.panels.map((panel) => panelName(cover, panel, work))),
      ...clips.flatMap(({ clip }) => (clip === null ? [] : [panelName(cover, clip, work)])),
      ...(seam.isPiped ? ["piping", "zip foot"] : []),
      ...(clips.length > 0 ? ["cloth scissors"] : []),
      "pins",
      "sewing machine",
      "iron",
      "thread",
    ],
    makes: [name, seam.makes],
    check: `${capital(name)} should now measure ${length}${seam.isRing ? " round" : ""}, with no pucker at the corners.`,
    remedy:
      "Unpick where it puckers, match the notches again, and sew that stretch afresh. Do not stretch the cloth.",
    figure: `seam/${cover.solid}/${seam.id}`,
  });
}

function layTogether(seam: Seam, cover: Cover, work: Work): string[] {
  const [one, other] = seam.panels;
  const name = seamName(cover, seam.id, work);
  if (one === other)
    return [
      `Fold ${panelName(cover, one, work)} until its two edges of ${name} meet, right sides together.`,
    ];
  const long = (a: string, b: string) => `Lay ${b} on ${a}, right sides together.`;
  return [
    shortEnough(
      long(panelWithLabel(cover, one, work), panelWithLabel(cover, other, work)),
      long(panelName(cover, one, work), panelWithLabel(cover, other, work)),
      long(panelName(cover, one, work), panelName(cover, other, work)),
    ),
  ];
}

function ease(seam: Seam, cover: Cover, work: Work): string[] {
  const [first, second] = seam.length;
  if (Math.abs(first - second) <= equal) return [];
  const longer = first > second ? seam.panels[0] : seam.panels[1];
  return [`Ease the longer edge of ${panelName(cover, longer, work)} evenly between the pins.`];
}

function cutClips(clips: readonly SeamCorner[], cover: Cover, work: Work): string[] {
  const panels = [...new Set(clips.flatMap(({ clip }) => clip ?? []))];
  return panels.map((panel) => {
    const count = clips.filter(({ clip }) => clip === panel).length;
    const which = count === 1 ? "the clip" : `the ${count} clips`;
    return `Cut ${which} of ${panelName(cover, panel, work)} to a thread from the seam line with the cloth scissors.`;
  });
}

function startSeam(seam: Seam, cover: Cover, work: Work): string[] {
  if (seam.isRing) return ["Start away from corners and crossing seams."];
  return [
    `Start ${work.format.length(cover.seamAllowance)} from the end, where the seam lines cross.`,
  ];
}

function pivot(corners: readonly SeamCorner[], { format }: Work): string[] {
  if (corners.length === 0) return [];
  const places = corners.map(({ along }) => format.length(along));
  const where =
    places.length <= 3
      ? `at ${places.join(", ")} from the start`
      : `at each of the ${countOf(corners.length, "corner")}`;
  return [
    `Stop with the needle down ${where}.`,
    "Pivot the cloth round the needle at each corner.",
  ];
}

function endSeam(seam: Seam, cover: Cover, work: Work): string[] {
  if (seam.isRing) return ["Sew over the first stitches where the ring closes."];
  return [
    `Stop ${work.format.length(cover.seamAllowance)} from the other end.`,
    "Backstitch at both ends.",
  ];
}

function capital(words: string): string {
  return words.charAt(0).toUpperCase() + words.slice(1);
}
