const entities: Readonly<Record<string, string>> = {
  "&": "&amp;",
  "<": "&lt;",
  ">": "&gt;",
  '"': "&quot;",
  "'": "&#39;",
};

/** Make text safe inside an element or an attribute. The one place where that is done. */
export function escapeXml(text: string): string {
  return text.replace(/[&<>"']/g, (character) => entities[character] ?? character);
}
