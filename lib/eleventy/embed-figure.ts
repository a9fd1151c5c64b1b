import type { Figure } from "../drawing/types.ts";

/**
 * The SVG of a figure with every id in it made its own to one place on the page, so that a drawing
 * shown twice repeats no id.
 */
export const embedFigure = ({ svg }: Figure, place: string): string =>
  svg
    .replace(/\sid="([^"]+)"/g, ` id="${place}-$1"`)
    .replace(/url\(#([^)]+)\)/g, `url(#${place}-$1)`)
    .replace(/href="#([^"]+)"/g, `href="#${place}-$1"`)
    .replace(/aria-(labelledby|describedby)="([^"]+)"/g, (_, kind: string, ids: string) => {
      const own = ids.split(/\s+/).map((id) => `${place}-${id}`);
      return `aria-${kind}="${own.join(" ")}"`;
    });
