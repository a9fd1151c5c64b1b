import { boxesOverlap, segmentMeetsBox } from "./boxes.ts";
import { obstacleStretches } from "./place-labels.ts";
import { textBox } from "./text-box.ts";
import type { Ink } from "./types.ts";

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
