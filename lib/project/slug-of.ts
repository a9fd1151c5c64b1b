/** Name of a booklet: that of its file without folders and `.md`. */
export function slugOf(file: string): string {
  return (file.split(/[\\/]/).at(-1) ?? "").replace(/\.md$/, "");
}

/** Whether a name serves as a web address and a file name everywhere. */
export function isSlug(text: string): boolean {
  return /^[a-z0-9]+(-[a-z0-9]+)*$/.test(text) && text.length <= 80;
}
