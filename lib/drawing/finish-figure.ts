import { boxesOverlap, boxOfInks, growBox, segmentMeetsBox, shiftInks } from "./boxes.ts";
import { obstacleStretches } from "./place-labels.ts";
import { textBox } from "./text-box.ts";
import type { Figure, FigureLimits, Ink, Picture } from "./types.ts";
import { writeSvg } from "./write-svg.ts";

export interface FigureWords {
  readonly id: string;
  readonly title: string;
  readonly alt: string;
  readonly scale: string;
}

/** White round the ink, so that wide lines are not cut at the edge. */
const MARGIN = 1;

/** Frame a picture tightly and write it. Reports text that meets text or lines, and over-size. */
export function finishFigure(words: FigureWords, picture: Picture, limits: FigureLimits): Figure {
  const box = growBox(boxOfInks(picture.inks), MARGIN);
  const inks = shiftInks(picture.inks, [-box.left, -box.top]);
  const width = box.right - box.left;
  const height = box.bottom - box.top;
  const collisions = [...picture.collisions, ...findCollisions(inks)];
  if (width > limits.width + 0.01) collisions.push(`Wider than ${limits.width} mm.`);
  if (height > limits.height + 0.01) collisions.push(`Higher than ${limits.height} mm.`);
  const svg = writeSvg({ ...words, width, height }, inks);
  return { ...words, svg, width, height, collisions };
}

/** Every pair of texts that overlap, and every text that a line runs through. */
export function findCollisions(inks: readonly Ink[]): string[] {
  const texts = inks.filter((ink) => ink.kind === "text");
  const boxes = texts.map(textBox);
  const stretches = obstacleStretches(inks);
  const found: string[] = [];
  texts.forEach((ink, index) => {
    const box = boxes[index];
    if (!box) return;
    for (let other = index + 1; other < texts.length; other += 1) {
      const otherBox = boxes[other];
      if (otherBox && boxesOverlap(box, otherBox))
        found.push(`"${ink.text}" overlaps "${texts[other]?.text}".`);
    }
    if (!ink.isGrounded && stretches.some(([a, b]) => segmentMeetsBox(a, b, box)))
      found.push(`"${ink.text}" stands on a line.`);
  });
  return found;
}
