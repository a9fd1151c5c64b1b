import { encode } from "uqr";
import { escapeXml } from "./escape-xml.ts";
import { paperNumber } from "./paper-number.ts";

/** Side of one module on the paper: a phone at arm's length still reads it from a grey copy. */
const MODULE = 0.7;
/** White round the code, in modules. @source ISO/IEC 18004:2015, 6.3.8 (from memory): four. */
const QUIET = 4;

/**
 * A web address as a QR code, one path of dark runs, so that it prints as lines and not as a picture.
 * Level M of error correction.
 *
 * @source ISO/IEC 18004:2015
 */
export function drawCode(address: string): string {
  const { data } = encode(address, { ecc: "M", border: 0 });
  const side = paperNumber((data.length + 2 * QUIET) * MODULE);
  return (
    `<svg xmlns="http://www.w3.org/2000/svg" class="code" width="${side}mm" height="${side}mm" ` +
    `viewBox="${-QUIET} ${-QUIET} ${data.length + 2 * QUIET} ${data.length + 2 * QUIET}" role="img">` +
    `<title>${escapeXml(`Code to ${address}`)}</title>` +
    `<path d="${data.map(darkRuns).join("")}"/></svg>`
  );
}

function darkRuns(row: readonly boolean[], y: number): string {
  let runs = "";
  for (let x = 0; x < row.length; x += 1) {
    if (row[x] !== true || row[x - 1] === true) continue;
    let end = x;
    while (row[end] === true) end += 1;
    runs += `M${x} ${y}h${end - x}v1h${x - end}Z`;
  }
  return runs;
}
