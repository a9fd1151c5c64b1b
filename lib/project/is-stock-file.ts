/** Whether a file under content/ lists stock for several projects: `stock/<name>.yaml`. */
export const isStockFile = (path: string): boolean =>
  /(^|[\\/])stock[\\/][a-z0-9]+(-[a-z0-9]+)*\.yaml$/.test(path);

/** What projects call a stock file: its name without folders and `.yaml`. */
export const stockFileName = (path: string): string =>
  (path.split(/[\\/]/).at(-1) ?? "").replace(/\.yaml$/, "");
