import { createHash } from "node:crypto";
import { mkdirSync, readFileSync, renameSync, rmSync, writeFileSync } from "node:fs";
import { basename, dirname, join, relative, sep } from "node:path";
import { archivePage } from "./archive-page.ts";
import { listFiles } from "./list-files.ts";
import type { SiteBooklet } from "./open-site.ts";

const checksums = "manifest-sha512.txt";

/**
 * Put a booklet up for keeping: one page that holds everything, the project file, plan.json, the PDFs
 * there are, and the checksum of each file. The same booklet gives the same bytes.
 *
 * @source RFC 8493, The BagIt File Packaging Format: form and name of the list of checksums
 */
export function writeArchive({ slug, project }: SiteBooklet, output: string): string {
  const folder = join(output, slug);
  const archive = join(folder, "archive");
  const fresh = `${archive}.part`;
  rmSync(fresh, { recursive: true, force: true });
  const source = readFileSync(project.file, "utf8");
  const plan = readFileSync(join(folder, "plan.json"), "utf8");
  const put = (name: string, content: string | Buffer): void => {
    mkdirSync(dirname(join(fresh, name)), { recursive: true });
    writeFileSync(join(fresh, name), content);
  };
  put("bagit.txt", "BagIt-Version: 1.0\nTag-File-Character-Encoding: UTF-8\n");
  put(`data/${slug}.html`, archivePage(folder, { source, plan }));
  put("data/plan.json", plan);
  put(`data/${basename(project.file)}`, source);
  for (const file of listFiles(folder).filter((each) => isPrint(each, folder))) {
    put(`data/${basename(file)}`, readFileSync(file));
  }
  put(checksums, listChecksums(fresh));
  rmSync(archive, { recursive: true, force: true });
  renameSync(fresh, archive);
  return archive;
}

const isPrint = (file: string, folder: string): boolean =>
  dirname(file) === folder && file.endsWith(".pdf");

/** A line for each file: its SHA-512, two spaces, its path. */
function listChecksums(folder: string): string {
  const lines = listFiles(join(folder, "data")).map((file) => {
    const sum = createHash("sha512").update(readFileSync(file)).digest("hex");
    return `${sum}  ${relative(folder, file).split(sep).join("/")}\n`;
  });
  return lines.join("");
}
