import { cpSync, existsSync } from "node:fs";
import { dirname, join } from "node:path";
import type { Site } from "./open-site.ts";

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
  ["shared/scripts/close-up.js", "scripts/close-up.js"],
  ["shared/scripts/paginate.js", "scripts/paginate.js"],
];

/** Put fonts and scripts beside the pages, so that they work from a file with no network. */
export const copyAssets = (output: string): void =>
  assets.forEach(([from, to]) => cpSync(from, join(output, to)));

/** Photos of what was made, from beside the project file to the folder of its booklet. */
export function copyPhotos({ booklets }: Site, output: string): void {
  for (const { slug, project } of booklets) {
    const photo = project.made?.photo;
    if (photo == null) continue;
    const from = join(dirname(project.file), photo);
    if (existsSync(from)) cpSync(from, join(output, slug, photo));
  }
}
