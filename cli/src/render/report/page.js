"use strict";
// Sliders that put the options in another order. Without this script the page stands as it was written.
(() => {
  const data = JSON.parse(document.getElementById("scores").textContent);
  const sliders = [...document.querySelectorAll("input[type=range]")];
  const rows = data.options.map((option) => document.getElementById(`row-${option}`));
  const cards = data.options.map((option) => document.getElementById(`option-${option}`));
  const blocks = data.options.map((option) => document.getElementById(`way-${option}`));
  const table = document.getElementById("order");
  // Not there where nothing is folded, or each family has but one option; nothing is then put in it.
  const later = document.getElementById("order-more");
  const others = document.getElementById("others");
  const UNFOLDED = table.rows.length;
  const answer = document.getElementById("answer-now");
  const ways = document.getElementById("ways");
  const kept = document.getElementById("kept");
  const was = document.getElementById("was");
  const asFiled = answer.querySelector("[data-title]").textContent;
  const firstFiled = answer.firstElementChild.id;
  const shown = ways === null ? 0 : ways.children.length;
  const list = document.getElementById("options");
  const told = document.getElementById("told");
  let waiting = 0;

  const share = (part) => {
    if (part <= 0) return "0";
    if (part < 0.01) return "under 1";
    if (part >= 1) return "100";
    return part > 0.99 ? "over 99" : `${Math.round(part * 100)}`;
  };

  // The block of an option, or its entry at length, where the page has them.
  function tell(card, place, score, first, lapse) {
    card.querySelector("[data-rank]").textContent = String(place + 1);
    card.querySelector("[data-score]").textContent = score.toFixed(0);
    card.querySelector("[data-share]").textContent = share(first);
    const aside = card.querySelector("[data-aside]");
    aside.textContent = lapse === null ? "" : lapse.told;
    aside.hidden = lapse === null;
  }

  // The answer and its plan, then the best of the other families that the page has plans of, as many as it shows.
  function placeBlocks(order) {
    const plans = order.filter((option) => blocks[option] !== null);
    const seen = new Set([data.families[plans[0]]]);
    answer.append(blocks[plans[0]]);
    let placed = 0;
    for (const option of plans.slice(1)) {
      const stands = placed < shown && !seen.has(data.families[option]);
      seen.add(data.families[option]);
      (stands ? ways : kept).append(blocks[option]);
      if (stands) placed += 1;
    }
    document.getElementById("no-plan").hidden = blocks[order[0]] !== null;
    was.hidden = blocks[plans[0]].id === firstFiled;
    was.textContent = was.hidden ? "" : was.dataset.pattern.replace("{title}", () => asFiled);
  }

  // The best of each family stands in the first part of the table, the others in the second.
  function tellFamilies(order) {
    const members = new Map();
    for (const option of order) {
      const family = data.families[option];
      members.set(family, [...(members.get(family) ?? []), option]);
      const best = members.size <= UNFOLDED ? table : later;
      (members.get(family).length === 1 ? best : others).append(rows[option]);
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
      for (const told of [cards[option], blocks[option]]) {
        if (told !== null) tell(told, place, scores[option], shares[option], lapses[option]);
      }
      if (cards[option] !== null) list.append(cards[option]);
    });
    tellFamilies(order);
    placeBlocks(order);
    const best = order[0];
    const now = told.dataset.pattern
      .replace("{title}", () => rows[best].querySelector("[data-title]").textContent)
      .replace("{score}", scores[best].toFixed(0))
      .replace("{share}", share(shares[best]));
    told.textContent = [now, lapses[best]?.told ?? "", was.textContent].filter((part) => part !== "").join(" ");
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

  // A plan as large as it reads, by a tap or a key; the browser's own dialog keeps the keyboard within and closes on Escape.
  const large = document.createElement("dialog");
  large.className = "large";
  const close = document.createElement("button");
  close.type = "button";
  close.textContent = answer.dataset.close;
  close.addEventListener("click", () => large.close());
  const sheet = document.createElement("div");
  sheet.className = "plan sheet";
  sheet.tabIndex = 0;
  large.append(close, sheet);
  document.getElementById("main").append(large);
  for (const plan of document.querySelectorAll(".way .plan")) {
    const button = plan.querySelector(".open");
    const open = () => {
      const drawing = plan.querySelector("svg");
      large.setAttribute("aria-label", drawing.getAttribute("aria-label"));
      sheet.setAttribute("role", "group");
      sheet.setAttribute("aria-label", drawing.getAttribute("aria-label"));
      sheet.replaceChildren(drawing.cloneNode(true));
      large.showModal();
    };
    button.hidden = false;
    button.addEventListener("click", open);
    plan.querySelector("svg").addEventListener("click", open);
  }

  // What is folded is printed too, and folded again afterwards.
  let unfolded = [];
  addEventListener("beforeprint", () => {
    unfolded = [...document.querySelectorAll("details:not([open])")];
    for (const part of unfolded) part.open = true;
  });
  addEventListener("afterprint", () => { for (const part of unfolded) part.open = false; });
  // A link to an option opens what it leads to.
  addEventListener("hashchange", () => document.getElementById(location.hash.slice(1))?.querySelector("details")?.setAttribute("open", ""));
})();
