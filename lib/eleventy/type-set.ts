/** Text made safe for HTML. */
export const escapeHtml = (text: string): string =>
  text
    .replaceAll("&", "&amp;")
    .replaceAll("<", "&lt;")
    .replaceAll(">", "&gt;")
    .replaceAll('"', "&quot;");

const fraction = /(?<![\d/.])(?:(\d+)[ \u00a0])?(\d{1,3})\/(\d{1,3})(?![\d/])/g;
const unitAfter = /(\d(?:<\/span>)?) (mm|cm|m|in|ft|yd|kg|g|lb|oz|l|m²|ft²|%|×)(?![\p{L}\d])/gu;
const times = / × /g;

const written = /`([^`]+)`/;

/**
 * Escaped text with its fractions set as fractions, and no line break between a figure and its unit
 * or round a multiplication sign. What stands between backticks is set as it is written in a file.
 */
export const setType = (text: string): string =>
  escapeHtml(text)
    .split(written)
    .map((part, i) => (i % 2 === 1 ? `<code>${part}</code>` : setFigures(part)))
    .join("");

/** The same for text that is HTML already. Text inside tags is left alone. */
export const setTypeInHtml = (html: string): string =>
  html
    .split(/(<[^>]+>)/)
    .map((part) => (part.startsWith("<") ? part : setFigures(part)))
    .join("");

const setFigures = (text: string): string =>
  text
    .replace(fraction, (_, whole: string | undefined, top: string, bottom: string) => {
      const part = `<span class="fraction">${top}\u2044${bottom}</span>`;
      return whole === undefined ? part : `${whole}\u00a0${part}`;
    })
    .replace(times, "\u00a0×\u00a0")
    .replace(unitAfter, "$1\u00a0$2");
