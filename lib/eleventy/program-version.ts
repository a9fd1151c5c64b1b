import { createHash } from "node:crypto";
import { readFileSync, readdirSync } from "node:fs";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";

const root = join(dirname(fileURLToPath(import.meta.url)), "..", "..");
/** Whatever a plan or a drawing can depend on besides its project. */
const parts: readonly string[] = ["lib", "shared/tables", "package-lock.json"];

let known: string | null = null;

/** A digest of the program itself: what an older program worked out is not taken for its own. */
export function programVersion(): string {
  if (known !== null) return known;
  const hash = createHash("sha256");
  for (const part of parts) {
    const path = join(root, part);
    const files = part.includes(".")
      ? [path]
      : readdirSync(path, { recursive: true, encoding: "utf8" })
          .filter((name) => /\.(ts|json)$/.test(name))
          .sort()
          .map((name) => join(path, name));
    for (const file of files) hash.update(file.slice(root.length)).update(readFileSync(file));
  }
  known = hash.digest("hex");
  return known;
}
