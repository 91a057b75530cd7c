"use strict";
// Sliders that put the options in another order. Without this script the page stands as it was written.
(() => {
  const data = JSON.parse(document.getElementById("scores").textContent);
  const sliders = [...document.querySelectorAll("input[type=range]")];
  const rows = data.options.map((option) => document.getElementById(`row-${option}`));
  const cards = data.options.map((option) => document.getElementById(`option-${option}`));
  const table = document.getElementById("order");
  // Not there where each family has but one option; nothing is then put in it.
  const others = document.getElementById("others");
  const list = document.getElementById("options");
  const told = document.getElementById("told");
  let waiting = 0;

  const share = (part) => {
    if (part <= 0) return "0";
    if (part < 0.01) return "under 1";
    if (part >= 1) return "100";
    return part > 0.99 ? "over 99" : `${Math.round(part * 100)}`;
  };

  // The card of an option, where it is drawn.
  function tellCard(card, place, score, first, lapse) {
    card.querySelector("[data-rank]").textContent = String(place + 1);
    card.querySelector("[data-score]").textContent = score.toFixed(0);
    card.querySelector("[data-share]").textContent = share(first);
    const aside = card.querySelector("[data-aside]");
    aside.textContent = lapse === null ? "" : lapse.told;
    aside.hidden = lapse === null;
    list.append(card);
  }

  // The best of each family stands in the first part of the table, the others in the second.
  function tellFamilies(order) {
    const members = new Map();
    for (const option of order) {
      const family = data.families[option];
      members.set(family, [...(members.get(family) ?? []), option]);
      (members.get(family).length === 1 ? table : others).append(rows[option]);
    }
    for (const [best, ...rest] of members.values()) {
      const told = table.dataset.pattern.replace("{count}", String(rest.length));
      rows[best].querySelector("[data-like]").textContent = rest.length === 0 ? "" : ` ${told}`;
      for (const option of rest) rows[option].querySelector("[data-like]").textContent = "";
    }
  }

  function show() {
    const wishes = sliders.map((slider) => Number(slider.value));
    const { order, scores, lapses, tiers, shares } = ranking.ranked(data, wishes);
    order.forEach((option, place) => {
      const [rank, score, first] = rows[option].querySelectorAll("[data-told]");
      rank.textContent = String(place + 1);
      score.textContent = scores[option].toFixed(0);
      first.textContent = share(shares[option]);
      rows[option].dataset.tier = lapses[option] === null ? String(tiers[option]) : "aside";
      const card = cards[option];
      if (card !== null) tellCard(card, place, scores[option], shares[option], lapses[option]);
    });
    tellFamilies(order);
    const best = order[0];
    const now = told.dataset.pattern
      .replace("{title}", () => rows[best].querySelector("[data-title]").textContent)
      .replace("{score}", scores[best].toFixed(0))
      .replace("{share}", share(shares[best]));
    told.textContent = lapses[best] === null ? now : `${now} ${lapses[best].told}`;
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
