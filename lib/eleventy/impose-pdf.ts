import { PDFDocument } from "@cantoo/pdf-lib";
import type { Paper } from "../booklet/paper.ts";
import type { Count } from "../plane/types.ts";

/** Pages side by side on one face of a sheet, counted from 1; null where the face stays blank. */
export type Face = readonly [left: Count | null, right: Count | null];

/**
 * Faces in the order a printer takes them, front then back of each sheet, outermost sheet first: printed
 * on both sides, turned on the short edge, stacked and folded, the pages run in order.
 *
 * @source common practice, no source: with 4s pages, sheet i carries 4s − 2i, 2i + 1 on its front and
 * 2i + 2, 4s − 2i − 1 on its back, i counted from 0
 */
export function imposeFaces(pages: Count): readonly Face[] {
  const whole = Math.ceil(pages / 4) * 4;
  const known = (page: Count): Count | null => (page <= pages ? page : null);
  return Array.from({ length: whole / 4 }, (_, i): readonly Face[] => [
    [known(whole - 2 * i), known(2 * i + 1)],
    [known(2 * i + 2), known(whole - 2 * i - 1)],
  ]).flat();
}

const pointsPerMm = 72 / 25.4;

/** Put half-size pages two and two on sheets of paper that lie on their side, at their own size. */
export async function imposePdf(pages: Uint8Array, { width, height }: Paper): Promise<Uint8Array> {
  const source = await PDFDocument.load(pages, { updateMetadata: false });
  const sheet = await PDFDocument.create();
  const [across, up] = [height * pointsPerMm, width * pointsPerMm];
  const embedded = await sheet.embedPages(source.getPages());
  for (const face of imposeFaces(embedded.length)) {
    const page = sheet.addPage([across, up]);
    face.forEach((number, side) => {
      const half = number === null ? undefined : embedded[number - 1];
      if (half === undefined) return;
      const spare = across / 2 - half.width;
      page.drawPage(half, { x: (side * across) / 2 + spare / 2, y: (up - half.height) / 2 });
    });
  }
  return sheet.save({ useObjectStreams: false, addDefaultPage: false });
}
