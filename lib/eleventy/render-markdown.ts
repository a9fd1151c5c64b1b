import MarkdownIt from "markdown-it";
import { setTypeInHtml } from "./type-set.ts";

/** No raw HTML, and links only to the web, to mail or within the page. */
const markdown = new MarkdownIt({ html: false, linkify: false, typographer: false });
markdown.validateLink = (url) => /^(?:https?:|mailto:|#|[^:]*$)/i.test(url.trim());

/** The author's Markdown as HTML, headings begun at level three because the page has its own. */
export const renderMarkdown = (text: string): string =>
  setTypeInHtml(markdown.render(text).replace(/<(\/?)h([1-6])>/g, lowerHeading));

const lowerHeading = (_: string, stroke: string, level: string): string =>
  `<${stroke}h${Math.min(6, Number(level) + 2)}>`;
