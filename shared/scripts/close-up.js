/*
 * Before the steps are laid out in pages: the lower of two arrangements for each step, and less air
 * where that alone lets one more step on to a page. Sizes of type and figures stay as they are.
 */
(function () {
  "use strict";

  /** What the sum of many measured heights may be out by, in px. */
  const slack = 2;
  /** One page less is worth any white; air is worth as much as a page a sixth of which is white. */
  const wholePage = 1000;
  const airWorth = 0.03;

  /** A check goes beside the figure of its step where that is lower than below both. */
  function chooseLower(body) {
    body.querySelectorAll(".step.beside").forEach(function (step) {
      const before = step.getBoundingClientRect().height;
      step.classList.toggle("all");
      if (step.getBoundingClientRect().height >= before - slack) step.classList.toggle("all");
    });
  }

  /** Each step, with the heading it stays with, and the height from its top to its foot and to the next. */
  function measure(blocks) {
    const boxes = blocks.map((block) => block.getBoundingClientRect());
    return boxes.map(function (box, i) {
      const next = boxes[i + 1];
      return { own: box.height, withGap: next ? next.top - box.top : box.height };
    });
  }

  /** Height of some steps one below the other on a page of their own. */
  function heightOf(sizes) {
    const last = sizes[sizes.length - 1];
    return sizes.slice(0, -1).reduce((sum, { withGap }) => sum + withGap, last.own);
  }

  /**
   * The steps from one to another as a page of their own: how full it is, and whether it takes less air.
   * Null for more than a page holds; one step alone is a page however long it is.
   */
  function pageOf({ usual, close, room }, from, to) {
    const fill = (sizes) => (heightOf(sizes.slice(from, to)) + slack) / room;
    if (fill(usual) <= 1 || to === from + 1) return { from, to, fill: fill(usual), isClose: false };
    return fill(close) <= 1 ? { from, to, fill: fill(close), isClose: true } : null;
  }

  /**
   * The fewest pages, and of those the most even: what is left white counts by its square. The last page
   * counts only where nothing may follow on it. Air is worth a little, so that it goes only for a reason.
   */
  function choosePages(flow) {
    const count = flow.usual.length;
    const best = [{ cost: 0, pages: [] }];
    for (let to = 1; to <= count; to += 1) {
      for (let from = to - 1; from >= 0; from -= 1) {
        const page = pageOf(flow, from, to);
        if (page === null) break;
        const isOpen = to === count && flow.mayGoOn;
        const white = isOpen ? 0 : Math.max(0, 1 - page.fill) ** 2;
        const cost = best[from].cost + wholePage + white + (page.isClose ? airWorth : 0);
        const known = best[to];
        if (!known || cost < known.cost) best[to] = { cost, pages: [...best[from].pages, page] };
      }
    }
    return best[count].pages;
  }

  /** Fill the pages of the steps, each page with as much air as it has room for. */
  function closeUp(body, room) {
    const blocks = Array.from(body.querySelectorAll(".page.steps > .keep, .page.steps > .step"));
    const isWhole = (block) => getComputedStyle(block).breakInside === "avoid";
    if (blocks.length === 0 || !blocks.every(isWhole)) return;
    const usual = measure(blocks);
    blocks.forEach((block) => block.classList.add("close"));
    const close = measure(blocks);
    blocks.forEach((block) => block.classList.remove("close"));
    const after = blocks[blocks.length - 1].closest(".page").nextElementSibling;
    const mayGoOn = after !== null && !after.matches(".starts");
    // The rule over a step stands as far from the head of its page as from the step before.
    const step = blocks.find((block) => block.matches(".step"));
    const top = step ? parseFloat(getComputedStyle(step).marginTop) : 0;
    const flow = { usual, close, room: room - top, mayGoOn };
    const pages = choosePages(flow);
    pages.forEach(function ({ from, to, isClose }) {
      if (isClose) blocks.slice(from, to).forEach((block) => block.classList.add("close"));
      // Would the next step still go on this page? Then it is told to turn.
      const next = blocks[to];
      const sizes = isClose ? close : usual;
      const withNext = next && heightOf([...sizes.slice(from, to), usual[to]]) - slack;
      if (next && withNext <= flow.room)
        (next.matches(".keep") ? next.parentNode : next).classList.add("turn");
    });
  }

  window.SlipcaseSteps = { chooseLower, closeUp };
})();
