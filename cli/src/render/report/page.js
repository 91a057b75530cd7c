"use strict";
// Sliders that put the options in another order. Without this script the page stands as it was written.
(() => {
  const data = JSON.parse(document.getElementById("scores").textContent);
  const sliders = [...document.querySelectorAll("input[type=range]")];
  const rows = data.options.map((option) => document.getElementById(`row-${option}`));
  const cards = data.options.map((option) => document.getElementById(`option-${option}`));
  const table = document.getElementById("order");
  const list = document.getElementById("options");
  const told = document.getElementById("told");
  let waiting = 0;

  const share = (part) => {
    if (part <= 0) return "0 %";
    if (part < 0.01) return "under 1 %";
    if (part >= 1) return "100 %";
    return part > 0.99 ? "over 99 %" : `${Math.round(part * 100)} %`;
  };

  function show() {
    const wishes = sliders.map((slider) => Number(slider.value));
    const { order, scores, shares } = ranking.ranked(data.scores, wishes);
    order.forEach((option, place) => {
      const [rank, score, first] = rows[option].querySelectorAll("[data-told]");
      rank.textContent = String(place + 1);
      score.textContent = scores[option].toFixed(0);
      first.textContent = share(shares[option]);
      table.append(rows[option]);
      const card = cards[option];
      if (card !== null) {
        card.querySelector("[data-rank]").textContent = String(place + 1);
        card.querySelector("[data-score]").textContent = scores[option].toFixed(0);
        card.querySelector("[data-share]").textContent = share(shares[option]);
        list.append(card);
      }
    });
    const best = order[0];
    told.textContent = told.dataset.pattern
      .replace("{title}", () => rows[best].querySelector("[data-title]").textContent)
      .replace("{score}", scores[best].toFixed(0))
      .replace("{share}", share(shares[best]));
  }

  for (const slider of sliders) {
    const output = document.getElementById(`${slider.id}-told`);
    slider.addEventListener("input", () => {
      output.textContent = slider.value;
      clearTimeout(waiting);
      waiting = setTimeout(show, 80);
    });
  }
  document.getElementById("reset").addEventListener("click", () => {
    for (const slider of sliders) {
      slider.value = slider.dataset.asked;
      document.getElementById(`${slider.id}-told`).textContent = slider.value;
    }
    show();
  });
  document.getElementById("wishes").hidden = false;
})();
