/*
 * Lays the booklet out in pages with paged.js, then says on the root element whether everything of
 * the source is on paper: data-paged is "done" or "failed", data-missing lists ids that got lost.
 */
(function () {
  "use strict";

  // As in print.css, in millimetres: margins of the page, and room for the title of a group of steps.
  const margins = { across: 45, down: 50 };
  const titleDepth = 18;

  /** paged.js 0.4.3 leaves the head of a table behind when the table runs on: set it again. */
  function repeatHeads(page) {
    page.querySelectorAll("table[data-split-from]").forEach(function (table) {
      const from = table.getAttribute("data-split-from");
      const first = document.querySelector('table[data-ref="' + from + '"]:not([data-split-from])');
      const head = first && first.querySelector("thead");
      if (!head || table.querySelector("thead")) return;
      const copy = head.cloneNode(true);
      copy.querySelectorAll("[id]").forEach(function (each) {
        each.removeAttribute("id");
      });
      table.insertBefore(copy, table.firstChild);
    });
  }

  /** A step that no page can hold is let run on: words first, then its figure. */
  function loosenLongSteps(body) {
    const { paperWidth, paperHeight } = document.documentElement.dataset;
    const width = body.style.width;
    body.style.width = paperWidth - margins.across + "mm";
    const ruler = document.createElement("div");
    ruler.style.height = paperHeight - margins.down - titleDepth + "mm";
    body.appendChild(ruler);
    const room = ruler.getBoundingClientRect().height;
    ruler.remove();
    body.querySelectorAll(".step").forEach(function (step) {
      if (step.getBoundingClientRect().height > room) step.classList.add("long");
    });
    body.style.width = width;
  }

  function idsIn(root) {
    return Array.from(root.querySelectorAll("[id]"), function (each) {
      return each.id;
    });
  }

  async function paginate() {
    const root = document.documentElement;
    await document.fonts.ready;
    loosenLongSteps(document.body);
    const wanted = idsIn(document.body);
    const counts = { rows: document.querySelectorAll("tbody tr").length };
    class Heads extends window.Paged.Handler {
      afterPageLayout(page) {
        repeatHeads(page);
      }
    }
    window.Paged.registerHandlers(Heads);
    const flow = await window.PagedPolyfill.preview();
    const found = new Set(idsIn(document.querySelector(".pagedjs_pages")));
    const missing = wanted.filter(function (id) {
      return !found.has(id);
    });
    const rows = document.querySelectorAll(".pagedjs_pages tbody tr:not([data-split-from])").length;
    if (rows < counts.rows) missing.push(counts.rows - rows + " table rows");
    root.dataset.pages = String(flow.total);
    root.dataset.missing = JSON.stringify(missing);
    root.dataset.paged = "done";
  }

  window.addEventListener("load", function () {
    paginate().catch(function (error) {
      document.documentElement.dataset.paged = "failed";
      document.documentElement.dataset.reason = String(error && error.message);
    });
  });
})();
