import { embedFigure } from "./embed-figure.ts";
import type { SiteBooklet } from "./open-site.ts";
import { readShared } from "./read-shared.ts";
import { escapeHtml } from "./type-set.ts";

export interface Proof {
  readonly html: string;
  readonly figures: number;
  /** Labels that meet one another or run over the edge, a line each. */
  readonly collisions: readonly string[];
}

/** Every figure of every booklet on one page, those with colliding labels marked. */
export function proofPage(booklets: readonly SiteBooklet[]): Proof {
  const drawn = booklets.flatMap(({ slug, figures }) =>
    figures.ids.map((id) => ({ slug, figure: figures.draw(id) })),
  );
  const styles = ["fonts", "tokens", "figures", "matter", "screen"].map((name) =>
    readShared(`styles/${name}.css`).replaceAll("@root/", "../"),
  );
  const cards = drawn.map(({ slug, figure }, i) => {
    const faults = figure.collisions.map((line) => `<li>${escapeHtml(line)}</li>`).join("");
    return (
      `<figure class="drawing"><div class="drawing-box">${embedFigure(figure, `f${i}`)}</div>` +
      `<figcaption><span class="said">${escapeHtml(`${slug}: ${figure.id}`)}</span> <span class="scale">${escapeHtml(figure.scale)}</span></figcaption>` +
      `<p>${escapeHtml(figure.alt)}</p>${faults === "" ? "" : `<ul class="collisions">${faults}</ul>`}</figure>`
    );
  });
  const html =
    `<!doctype html><html lang="en-GB"><head><meta charset="utf-8"><title>Proof of figures</title>` +
    `<style>${styles.join("\n")}</style></head><body><main><h1>Proof of figures</h1>${cards.join("\n")}</main></body></html>\n`;
  const collisions = drawn.flatMap(({ slug, figure }) =>
    figure.collisions.map((line) => `${slug} ${figure.id}: ${line}`),
  );
  return { html, figures: drawn.length, collisions };
}
