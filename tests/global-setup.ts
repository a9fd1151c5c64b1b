import { ensureBrowser } from "./ensure-browser.ts";

/** Print tests always run: a browser is found or fetched before the first of them. */
export default function setup(): void {
  process.env["CHROME_PATH"] = ensureBrowser();
}
