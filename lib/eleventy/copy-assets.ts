import { cpSync } from "node:fs";
import { join } from "node:path";

const fontFolder = "node_modules/@fontsource/source-sans-3";
const fonts = ["latin-400", "latin-600", "latin-ext-400", "latin-ext-600"];

/** Files of others that the pages need, each with its licence, and where they go. */
const assets: readonly (readonly [from: string, to: string])[] = [
  ...fonts.map(
    (font) =>
      [
        `${fontFolder}/files/source-sans-3-${font}-normal.woff2`,
        `fonts/source-sans-3-${font}.woff2`,
      ] as const,
  ),
  [`${fontFolder}/LICENSE`, "fonts/LICENSE.txt"],
  ["node_modules/pagedjs/dist/paged.polyfill.min.js", "scripts/paged.polyfill.min.js"],
  ["node_modules/pagedjs/LICENSE.md", "scripts/paged.LICENSE.md"],
  ["shared/scripts/paginate.js", "scripts/paginate.js"],
];

/** Put fonts and scripts beside the pages, so that they work from a file with no network. */
export const copyAssets = (output: string): void =>
  assets.forEach(([from, to]) => cpSync(from, join(output, to)));
