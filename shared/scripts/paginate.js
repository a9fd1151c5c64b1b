/*
 * Lays the booklet out in pages with paged.js, then says on the root element whether everything of
 * the source is on paper: data-paged is "done" or "failed", data-missing lists ids that got lost.
 */
(function () {
  "use strict";

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

  function idsIn(root) {
    return Array.from(root.querySelectorAll("[id]"), function (each) {
      return each.id;
    });
  }

  async function paginate() {
    const root = document.documentElement;
    await document.fonts.ready;
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
