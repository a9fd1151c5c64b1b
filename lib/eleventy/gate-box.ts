import { editions } from "../booklet/editions.ts";
import type { Booklet } from "../booklet/pages.ts";
import type { Mm } from "../plane/types.ts";
import { squash } from "./gate-common.ts";
import type { Box } from "./path-boxes.ts";
import type { PdfFacts, PdfPage, Type } from "./read-pdf.ts";

/** How far ink may stand over the margin: the width of a line, and what a page is off by. */
const boxTolerance: Mm = 0.9;
/** How much of a line may be cut off: half the width of the heaviest, which runs round a box. */
const cutTolerance: Mm = 0.9;

/**
 * What of a print stands where it is lost: words outside the room between the margins that are no
 * running head, lines that run out of that room, and lines that were cut off at the edge of something.
 */
export function gateBox({ pages }: PdfFacts, booklet: Booklet): readonly string[] {
  const heads = headsOf(booklet);
  return pages.flatMap((page, i) => {
    const room = roomOf(page, booklet);
    const strays = page.type.filter((each) => !isWithin(each, room) && !isHead(each, page, heads));
    const drawn = page.paths.filter((path) => !isGround(path, page));
    const over = drawn.filter((path) => !isWithin(path, room));
    const cut = drawn.filter(({ lost }) => lost > cutTolerance);
    return [
      ...strays
        .slice(0, 3)
        .map(({ text }) => `page ${i + 1}: "${text}" stands outside the margins`),
      ...over
        .slice(0, 1)
        .map((box) => `page ${i + 1}: a line ${placeOf(box)} runs over the margins`),
      ...cut.slice(0, 1).map((box) => `page ${i + 1}: a line ${placeOf(box)} is cut off`),
    ];
  });
}

/** The words that stand between the margins of a page, in the order they are read. */
export const flowText = (page: PdfPage, booklet: Booklet): string =>
  page.type
    .filter((each) => isWithin(each, roomOf(page, booklet)))
    .map(({ text }) => text)
    .join("");

/** The room between the margins of a page. */
function roomOf({ width, height }: PdfPage, { edition }: Booklet): Box {
  const { top, right, bottom, left } = editions[edition].margins;
  return { left, low: bottom, width: width - left - right, height: height - top - bottom };
}

const isWithin = (box: Box, room: Box): boolean =>
  box.left >= room.left - boxTolerance &&
  box.low >= room.low - boxTolerance &&
  box.left + box.width <= room.left + room.width + boxTolerance &&
  box.low + box.height <= room.low + room.height + boxTolerance;

/** What may stand over and under the room: title, part, number of the page, lines to write a name on. */
const headsOf = ({ title, pages }: Booklet): readonly string[] =>
  [title, ...pages.map((page) => page.title), "Name", "Date", "Answers"].map(squash);

function isHead({ text, ...box }: Type, page: PdfPage, heads: readonly string[]): boolean {
  const word = squash(text);
  // A browser may join the heads at the left and at the right into one stretch of text.
  const rests = heads
    .filter((head) => word.startsWith(head))
    .map(({ length }) => word.slice(length));
  const isKnown = [word, ...rests].some((each) => heads.some((head) => head.includes(each)));
  const isOnPage = isWithin(box, { left: 0, low: 0, width: page.width, height: page.height });
  return isOnPage && (isKnown || /^(page)?\d*(of)?\d*$/.test(word));
}

/** The white that a browser lays under a whole page. */
const isGround = (box: Box, { width, height }: PdfPage): boolean =>
  box.width > width - 1 && box.height > height - 1;

const placeOf = ({ left, low }: Box): string =>
  `${left.toFixed(0)} mm from the left, ${low.toFixed(0)} mm from the foot`;
