/* Shows the booklets of the front page that have every word and every tick. Without it all are shown. */
(function () {
  "use strict";
  const form = document.querySelector(".sieve");
  const cards = Array.from(document.querySelectorAll(".shelf > li[data-work]"));
  const found = form.querySelector(".found");
  if (cards.length < 2) return;
  form.hidden = false;

  function sieve() {
    const words = form.querySelector("#words").value.toLowerCase().split(/\s+/).filter(Boolean);
    const ticks = Array.from(form.querySelectorAll("input:checked"), (box) => box.value);
    const shown = cards.filter(function (card) {
      const text = card.querySelector(".about").textContent.toLowerCase();
      const works = card.dataset.work.split(" ");
      const isShown =
        words.every((word) => text.includes(word)) && ticks.every((tick) => works.includes(tick));
      card.hidden = !isShown;
      return isShown;
    });
    found.textContent = shown.length + " of " + cards.length + " booklets";
  }

  form.addEventListener("input", sieve);
  sieve();
})();
