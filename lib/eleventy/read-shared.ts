import { readFileSync } from "node:fs";
import { join } from "node:path";

/** Text of a file under shared/, such as "styles/print.css". */
export const readShared = (file: string): string => readFileSync(join("shared", file), "utf8");
