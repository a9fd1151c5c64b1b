import { join, resolve } from "node:path";
import { pathToFileURL } from "node:url";
import type { Browser } from "playwright-core";
import decodeQR from "qr/decode.js";
import { afterAll, beforeAll, expect, test } from "vitest";
import { buildSite } from "../../lib/eleventy/build-site.ts";
import { findBrowser } from "../../lib/eleventy/find-browser.ts";
import { openBrowser } from "../../lib/eleventy/open-browser.ts";
import { openSite } from "../../lib/eleventy/open-site.ts";
import { smallStages } from "../fixtures/small-stages.ts";
import { goodFile, makeTempSite } from "../fixtures/temp-site.ts";

const folder = makeTempSite({ "kneeling-pad.md": goodFile });
let browser: Browser;

beforeAll(async () => {
  const site = openSite(folder.content, smallStages, "https://example.org/shelf");
  await buildSite(site, folder);
  browser = await openBrowser(findBrowser()!);
});
afterAll(async () => {
  await browser.close();
  folder.remove();
});

// Read by the decoder of the `qr` package, which shares no code with the encoder.
test.each(["kneeling-pad", "kneeling-pad-small"])(
  "the code on the cover of %s leads to its own page on the web",
  async (slug) => {
    const page = await browser.newPage();
    await page.goto(pathToFileURL(resolve(join(folder.output, slug, "print/index.html"))).href);
    await page.emulateMedia({ media: "print" });
    const shot = await page.locator(".cover-link .code").first().screenshot({ scale: "css" });
    const { data, ...size } = await page.evaluate<Pixels>(pixelsOf(shot.toString("base64")));
    const image = { ...size, data: Uint8Array.from(data) };
    expect(decodeQR(image)).toBe(`https://example.org/shelf/${slug}/`);
    await page.close();
  },
);

interface Pixels {
  readonly width: number;
  readonly height: number;
  readonly data: readonly number[];
}

/** Runs in the browser, which alone reads pictures here. */
const pixelsOf = (png: string): string => `(async () => {
  const bytes = await fetch("data:image/png;base64,${png}");
  const bitmap = await createImageBitmap(await bytes.blob());
  const { width, height } = bitmap;
  const canvas = new OffscreenCanvas(width, height).getContext("2d");
  canvas.drawImage(bitmap, 0, 0);
  return { width, height, data: [...canvas.getImageData(0, 0, width, height).data] };
})()`;
