import type { Page } from "playwright-core";

/** How much ink lies on each cell of a page, in rows of digits from 0 (paper) to f (black). */
export type PageInk = readonly string[];

/** Cells of a page: about 5 mm wide and high. A letter is smaller, a figure much larger. */
const [across, down] = [42, 59] as const;

/** The ink of a page of a paged booklet, as a browser sees it. */
export async function readInk(page: Page, number: number): Promise<PageInk> {
  const sheet = page.locator(`.pagedjs_page[data-page-number="${number}"]`);
  const picture = (await sheet.screenshot()).toString("base64");
  return (await page.evaluate(`(${measure})("${picture}", ${across}, ${down})`)) as PageInk;
}

// Text of a function that runs in the page: the mean darkness of every cell, paper white being nought.
const measure = `async (picture, across, down) => {
  const image = new Image();
  image.src = "data:image/png;base64," + picture;
  await image.decode();
  const canvas = document.createElement("canvas");
  [canvas.width, canvas.height] = [image.width, image.height];
  const context = canvas.getContext("2d");
  context.drawImage(image, 0, 0);
  const dots = context.getImageData(0, 0, image.width, image.height).data;
  const rows = [];
  for (let row = 0; row < down; row++) {
    let text = "";
    for (let column = 0; column < across; column++) {
      const [left, right] = [column, column + 1].map((c) => Math.round((c * image.width) / across));
      const [top, bottom] = [row, row + 1].map((r) => Math.round((r * image.height) / down));
      let ink = 0;
      for (let y = top; y < bottom; y++)
        for (let x = left; x < right; x++) ink += 255 - dots[(y * image.width + x) * 4 + 1];
      const share = ink / (255 * (right - left) * (bottom - top));
      text += Math.min(15, Math.round(share * 30)).toString(16);
    }
    rows.push(text);
  }
  return rows;
}`;

/** Steps of ink by which a cell may differ: rasterisers thicken letters by less. @source our choice */
const slack = 2;

/** How many cells of a page hold another amount of ink than they did. */
export function cellsThatDiffer(now: PageInk, before: PageInk): number {
  let count = Math.abs(now.length - before.length) * across;
  now.forEach((row, y) => {
    [...row].forEach((digit, x) => {
      const was = Number.parseInt(before[y]?.[x] ?? "0", 16);
      if (Math.abs(Number.parseInt(digit, 16) - was) > slack) count += 1;
    });
  });
  return count;
}
