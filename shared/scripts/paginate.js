/*
 * Lays the booklet out in pages with paged.js, then says on the root element whether everything of
 * the source is on paper: data-paged is "done" or "failed", data-missing lists ids that got lost.
 */
(function () {
  "use strict";

  /**
   * paged.js 0.4.3 leaves the head and the widths of a table behind when it runs on. They are set again
   * as soon as its first row is there, so that the page is measured with them.
   */
  function repeatHead(table) {
    const from = table.getAttribute("data-split-from");
    const first = document.querySelector('table[data-ref="' + from + '"]:not([data-split-from])');
    const head = first && first.querySelector("thead");
    if (!head || table.querySelector("thead")) return;
    const copy = head.cloneNode(true);
    copy.querySelectorAll("[id]").forEach(function (each) {
      each.removeAttribute("id");
    });
    table.insertBefore(copy, table.firstChild);
    const widths = first.querySelector("colgroup");
    if (widths && !table.querySelector("colgroup")) {
      table.insertBefore(widths.cloneNode(true), copy);
    }
  }

  /** What a page keeps whole, whether the styles or the browser say so. */
  function keptWhole(body) {
    return Array.from(body.querySelectorAll("*")).filter(function (part) {
      return !part.closest("svg") && getComputedStyle(part).breakInside === "avoid";
    });
  }

  /**
   * What no page can hold whole: the figure of a step goes from beside its words to below them, where
   * that is enough; else the part is let run on, and a step has its words first, then its figure.
   */
  function loosenLongParts(body) {
    const { paperWidth, paperHeight, marginsAcross, marginsDown } =
      document.documentElement.dataset;
    const width = body.style.width;
    body.style.width = paperWidth - marginsAcross + "mm";
    const ruler = document.createElement("div");
    ruler.style.height = paperHeight - marginsDown + "mm";
    body.appendChild(ruler);
    const room = ruler.getBoundingClientRect().height;
    ruler.remove();
    window.SlipcaseSteps.chooseLower(body);
    const above = (part) => parseFloat(getComputedStyle(part).marginTop) || 0;
    const isLong = (part) => above(part) + part.getBoundingClientRect().height > room;
    window.SlipcaseSteps.closeLong(body, isLong);
    body.querySelectorAll(".step.beside").forEach(function (step) {
      const whole = step.closest(".keep") || step;
      if (!isLong(whole)) return;
      step.classList.replace("beside", "below");
      if (isLong(whole)) step.classList.replace("below", "beside");
    });
    keptWhole(body)
      .filter(isLong)
      .forEach(function (part) {
        part.classList.add("long");
        // A heading stays with its step, so that a step just too long for both has to run on as well.
        part.querySelectorAll(".step").forEach((step) => step.classList.add("long"));
      });
    window.SlipcaseSteps.closeUp(body, room);
    body.style.width = width;
  }

  /** A part that comes first on its page needs no room between it and what was before. */
  function dropRoomAbove(part) {
    const isFirst = part.previousElementSibling === null && !part.hasAttribute("data-split-from");
    if (isFirst) part.classList.add("first");
  }

  /** Room for the number of a page, taken up before the pages are laid out, so that nothing moves after. */
  function addPlaceholders(body) {
    body.querySelectorAll("a.ref").forEach(function (link) {
      const number = document.createElement("span");
      number.className = "page-number";
      number.textContent = ", page\u00a000";
      link.appendChild(number);
    });
  }

  /** The page each link points at. One digit may stand where two had room, never the other way round. */
  function writePageNumbers(pages) {
    pages.querySelectorAll("a.ref").forEach(function (link) {
      const target = document.getElementById(link.getAttribute("href").slice(1));
      const page = target && target.closest(".pagedjs_page");
      const number = link.querySelector(".page-number");
      if (page && number) number.textContent = ", page\u00a0" + page.dataset.pageNumber;
    });
  }

  function idsIn(root) {
    return Array.from(root.querySelectorAll("[id]"), function (each) {
      return each.id;
    });
  }

  /**
   * paged.js measures drawings line by line while it fills a page, and takes words that stand upright
   * for words beyond the edge. A drawing that fits stays; one that does not goes over whole.
   */
  function keepDrawing(overflow, bounds) {
    const from = overflow && overflow.startContainer;
    const drawing = from && (from.closest ? from : from.parentElement).closest("figure, svg");
    if (!drawing || !(from.closest ? from : from.parentElement).closest("svg")) return undefined;
    const box = drawing.getBoundingClientRect();
    if (box.bottom <= bounds.bottom + 1 && box.right <= bounds.right + 1) return null;
    const whole = document.createRange();
    whole.selectNode(drawing);
    whole.setEndAfter(drawing.closest(".pagedjs_page_content > div").lastChild);
    return whole;
  }

  async function paginate() {
    const root = document.documentElement;
    await document.fonts.ready;
    addPlaceholders(document.body);
    loosenLongParts(document.body);
    const wanted = idsIn(document.body);
    const counts = { rows: document.querySelectorAll("tbody tr").length };
    class Heads extends window.Paged.Handler {
      onOverflow(overflow, rendered, bounds) {
        return keepDrawing(overflow, bounds);
      }
      renderNode(node) {
        const table = node.nodeName === "TR" && node.closest("table[data-split-from]");
        if (table) repeatHead(table);
        if (node.nodeName === "SECTION" && node.classList.contains("page")) dropRoomAbove(node);
      }
    }
    window.Paged.registerHandlers(Heads);
    const flow = await window.PagedPolyfill.preview();
    const pages = document.querySelector(".pagedjs_pages");
    pages.setAttribute("role", "main");
    writePageNumbers(pages);
    const found = new Set(idsIn(pages));
    const missing = wanted.filter(function (id) {
      return !found.has(id);
    });
    const rows = document.querySelectorAll(".pagedjs_pages tbody tr:not([data-split-from])").length;
    if (rows < counts.rows) missing.push(counts.rows - rows + " table rows");
    document.querySelectorAll("svg[data-split-from]").forEach(function (drawing) {
      missing.push(
        "a drawing in one piece on page " + drawing.closest(".pagedjs_page").dataset.pageNumber,
      );
    });
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
