import type { Figure } from "./types.ts";
import { measureText } from "./measure-text.ts";
import type { TextStyle } from "./types.ts";

const text =
  /<text class="(label|name|letter) (start|middle|end)[^"]*" x="([-\d.]+)" y="([-\d.]+)"([^>]*)>(.*?)<\/text>/g;

/** The texts of a finished figure that do not lie wholly inside it, read back from its SVG. */
export function findOutside({ svg, width, height }: Figure): readonly string[] {
  return [...svg.matchAll(text)].flatMap(([, style, anchor, atX, atY, turn, inner]) => {
    const words = plainText(inner ?? "");
    const length = measureText(words, style as TextStyle);
    const back = anchor === "start" ? 0 : anchor === "middle" ? length / 2 : length;
    const [x, y] = [Number(atX), Number(atY)];
    const [low, most] = turn?.includes("rotate(-90")
      ? [y + back - length, y + back]
      : [x - back, x - back + length];
    const room = turn?.includes("rotate(-90") ? height : width;
    const isInside = low >= -slack && most <= room + slack && x >= -slack && x <= width + slack;
    return isInside && y >= -slack && y <= height + slack ? [] : [`"${words}" lies outside.`];
  });
}

/** Rounding of the numbers in the SVG, and of the baseline of upright text. */
const slack = 1.6;

const plainText = (inner: string): string =>
  inner
    .replace(/<[^>]+>/g, "")
    .replaceAll("&lt;", "<")
    .replaceAll("&gt;", ">")
    .replaceAll("&quot;", '"')
    .replaceAll("&#39;", "'")
    .replaceAll("&amp;", "&");
