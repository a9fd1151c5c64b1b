import { readFileSync } from "node:fs";

/**
 * Where the site will stand on the web, without a slash at its end: `homepage` of package.json; null
 * where none is set.
 *
 * @throws Error where it is not an address of the web.
 */
export function siteAddress(file = "package.json"): string | null {
  const { homepage } = JSON.parse(readFileSync(file, "utf8")) as { readonly homepage?: unknown };
  if (homepage === undefined) return null;
  if (typeof homepage !== "string" || !URL.canParse(homepage) || !/^https?:/.test(homepage)) {
    const got = JSON.stringify(homepage);
    const example = '"https://example.org/booklets"';
    throw new Error(`${file}: homepage: expected an address such as ${example}, got ${got}.`);
  }
  return homepage.replace(/\/+$/, "");
}
