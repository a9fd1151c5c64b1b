/** Whether a file under content/ is a project: Markdown, not a README, not set aside with `_`. */
export function isProjectFile(path: string): boolean {
  const name = path.split(/[\\/]/).at(-1) ?? "";
  return name.endsWith(".md") && !name.startsWith("_") && !/^readme\.md$/i.test(name);
}
