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
  /** A last page less full than this looks left over. @source our choice, a little over the least of the design */
  const thin = 0.3;

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

  /** A step no page can hold whole may fit on one with less air. */
  function closeLong(body, isLong) {
    body.querySelectorAll(".step").forEach(function (step) {
      const whole = step.closest(".keep") || step;
      if (!isLong(whole)) return;
      whole.classList.add("close");
      if (isLong(whole)) whole.classList.remove("close");
    });
  }

  const isWhole = (block) => getComputedStyle(block).breakInside === "avoid";

  /** Pages for blocks that follow one another from the head of a page. Gives how far down they end, or null. */
  function placeBlocks(blocks, room, mayGoOn) {
    const count = blocks.findIndex((block) => !isWhole(block));
    const whole = count < 0 ? blocks : blocks.slice(0, count);
    if (whole.length === 0) return null;
    const set = (isOn) => whole.forEach((block) => block.classList.toggle("close", isOn));
    const before = whole.filter((block) => block.matches(".close"));
    const usual = measure(whole);
    set(true);
    const close = measure(whole);
    set(false);
    before.forEach((block) => block.classList.add("close"));
    // The rule over a step stands as far from the head of its page as from the step before.
    const step = whole.find((block) => block.matches(".step, .task"));
    const top = step ? parseFloat(getComputedStyle(step).marginTop) : 0;
    const flow = { usual, close, room: room - top, mayGoOn: mayGoOn || whole !== blocks };
    const pages = choosePages(flow);
    pages.forEach(function ({ from, to, isClose }) {
      if (isClose) whole.slice(from, to).forEach((block) => block.classList.add("close"));
      // Would the next step still go on this page? Then it is told to turn.
      const next = whole[to];
      const withNext =
        next && heightOf([...(isClose ? close : usual).slice(from, to), usual[to]]) - slack;
      if (next && withNext <= flow.room)
        (next.matches(".keep") ? next.parentNode : next).classList.add("turn");
    });
    return whole === blocks ? top + pages[pages.length - 1].fill * flow.room : null;
  }

  /** Parts of a page that stay whole: a heading with what it heads, a long table row by row. */
  function atomsOf(page) {
    const isRunning = (part) => part.querySelectorAll("tbody tr").length >= 10;
    const parts = Array.from(page.children).flatMap(function (part) {
      return isRunning(part) && !part.matches(".whole")
        ? Array.from(part.querySelectorAll("tbody tr"))
        : [part];
    });
    const foot = page.getBoundingClientRect().bottom;
    const tops = parts.map((part) => part.getBoundingClientRect().top);
    return parts
      .map((part, i) => ({ part, height: (tops[i + 1] || foot) - tops[i] }))
      .filter(({ part }) => part.nodeName !== "H2");
  }

  /** How full the pages are that it takes from so far down a page. */
  function runOn(page, start, room) {
    const box = page.getBoundingClientRect();
    const atoms = atomsOf(page);
    const taken = atoms.reduce((sum, { height }) => sum + height, 0);
    const result = { fills: [], at: start + box.height - taken };
    atoms.forEach(function ({ part, height }) {
      if (result.at + height > room) {
        const head = part.nodeName === "TR" ? part.closest("table").tHead.offsetHeight : 0;
        result.fills.push(result.at / room);
        result.at = head;
      }
      result.at += height;
    });
    return [...result.fills, result.at / room];
  }

  /** The last rows of a table alone on a page: less air, or the whole table there. */
  function drawTogether(page, start, room) {
    const tables = Array.from(page.children).filter((part) =>
      part.querySelector("tbody tr:nth-child(10)"),
    );
    const ways = [[], ["close"], ["whole"], ["close", "whole"]].map(function (names) {
      const set = (isOn) =>
        names.forEach((name) =>
          (name === "close" ? [page] : tables).forEach((part) => part.classList.toggle(name, isOn)),
        );
      set(true);
      const [, ...further] = runOn(page, start, room);
      set(false);
      return { set, pages: further.length, isThin: further.some((fill) => fill < thin) };
    });
    const fewest = Math.min(...ways.map(({ pages }) => pages));
    const best = ways[0].isThin ? ways.find((way) => way.pages === fewest && !way.isThin) : null;
    if (best) best.set(true);
  }

  /** Fill the pages of the steps and of the tasks of a class, each page with as much air as it has room for. */
  function closeUp(body, room) {
    const steps = Array.from(body.querySelectorAll(".page.steps > .keep, .page.steps > .step"));
    const after =
      steps.length > 0 ? steps[steps.length - 1].closest(".page").nextElementSibling : null;
    const mayGoOn = after !== null && !after.matches(".starts");
    const end = placeBlocks(steps, room, mayGoOn);
    const isLast = mayGoOn && after.matches(".finish:has(+ .starts), .finish:last-child");
    if (isLast && end !== null) drawTogether(after, end, room);
    body.querySelectorAll(".page.lesson").forEach(function (page) {
      placeBlocks(Array.from(page.querySelectorAll(":scope > .keep, :scope > .step")), room, false);
    });
    body.querySelectorAll(".page.worksheet").forEach(function (page) {
      const tasks = Array.from(page.querySelectorAll(":scope > .task"));
      if (tasks.length === 0) return;
      const head = tasks[0].getBoundingClientRect().top - page.getBoundingClientRect().top;
      placeBlocks(tasks, room - head, false);
    });
  }

  window.SlipcaseSteps = { chooseLower, closeLong, closeUp };
})();
