import { PDFDocument, PDFName, PrintScaling } from "@cantoo/pdf-lib";
import { renumberTags } from "./renumber-tags.ts";

export interface PdfWords {
  readonly title: string;
  readonly author: string | null;
  readonly summary: string | null;
  readonly language: string;
}

/**
 * Say in a PDF what it is and who made it, ask readers to print it at its own size, and take out the
 * date and the chance numbers of tags, so that the same pages give the same bytes. Links and outline
 * stay as they are.
 */
export async function finishPdf(bytes: Uint8Array, words: PdfWords): Promise<Uint8Array> {
  const pdf = await PDFDocument.load(bytes, { updateMetadata: false });
  pdf.setTitle(words.title, { showInWindowTitleBar: true });
  if (words.author !== null) pdf.setAuthor(words.author);
  if (words.summary !== null) pdf.setSubject(words.summary);
  pdf.setLanguage(words.language);
  pdf.setCreator("Slipcase");
  pdf.setProducer("Slipcase");
  const info = pdf.context.lookup(pdf.context.trailerInfo.Info);
  if (info !== undefined && "delete" in info && typeof info.delete === "function") {
    for (const key of ["CreationDate", "ModDate"]) info.delete(PDFName.of(key));
  }
  renumberTags(pdf.context);
  pdf.catalog.getOrCreateViewerPreferences().setPrintScaling(PrintScaling.None);
  return pdf.save({ useObjectStreams: false, addDefaultPage: false });
}
