import { PDFArray, PDFDict, PDFString, type PDFContext, type PDFObject } from "@cantoo/pdf-lib";

/** How the browser names the tags that table cells point to; it numbers them by what it did before. */
const tagName = /^node\d+$/;

/**
 * Number the names of tags from 1 in their own order, wherever they stand. The browser's numbers
 * shift from run to run; in order they stay sorted, as the tree that finds them needs.
 */
export function renumberTags(context: PDFContext): void {
  const objects = context.enumerateIndirectObjects().map(([, object]) => object);
  const found = new Set<string>();
  objects.forEach((object) => visitNames(object, (name) => void found.add(name)));
  const numbers = new Map(
    [...found].sort().map((name, i) => [name, `node${String(i + 1).padStart(8, "0")}`]),
  );
  objects.forEach((object) => visitNames(object, (name) => numbers.get(name)));
}

/** Show every tag name in an object; a name given back takes its place. References are not followed. */
function visitNames(object: PDFObject, visit: (name: string) => string | undefined | void): void {
  const change = (value: PDFObject, put: (name: PDFString) => void): void => {
    if (!(value instanceof PDFString)) return visitNames(value, visit);
    const name = value.asString();
    const other = tagName.test(name) ? visit(name) : undefined;
    if (typeof other === "string") put(PDFString.of(other));
  };
  if (object instanceof PDFDict) {
    object.entries().forEach(([key, value]) => change(value, (name) => object.set(key, name)));
  } else if (object instanceof PDFArray) {
    object.asArray().forEach((value, i) => change(value, (name) => object.set(i, name)));
  }
}
