// Fields that stand for values of the file: what is typed or chosen is a step.
import { main, on, pin, put, query, root, seen, take } from "./room.js";

const screen = main.dataset.screen;
const part = document.getElementById("part");
const answers = () => document.querySelector("[data-live=answers]");

function value(field) {
  const typed = field.value.trim();
  switch (field.dataset.as) {
    case "number": return Number(typed);
    case "flag": return typed === "true";
    case "figure": {
      // Where the page is read in another unit than the file's, a figure without one is in the page's.
      const { unit } = field.dataset;
      if (unit !== undefined && /^[\d\s./-]+$/.test(typed)) return `${typed} ${unit}`;
      return /^-?\d+(\.\d+)?$/.test(typed) ? Number(typed) : typed;
    }
    default: return typed;
  }
}

main.addEventListener("change", (event) => {
  const field = event.target;
  if (field.dataset.changes) {
    take({ changes: JSON.parse(field.dataset.changes) });
  } else if (field.dataset.at && field.type !== "range") {
    const at = field.dataset.at;
    take({ changes: [field.value.trim() === "" ? { do: "remove", at } : { do: "set", at, to: value(field) }] });
  }
});

main.addEventListener("click", (event) => {
  const button = event.target.closest("button");
  if (button === null) return;
  const { remove, addTo, row, before, wall, unpin } = button.dataset;
  if (unpin !== undefined) {
    pin(unpin);
    put(part, screen).then(() => main.focus());
  }
  if (remove !== undefined) take({ changes: [{ do: "remove", at: remove }] });
  if (addTo !== undefined) {
    const change = { do: "add", at: addTo, row: JSON.parse(row) };
    if (before !== undefined) {
      change.before = Number(before);
      query.set("at", before);
    }
    take({ changes: [change] });
  }
  if (wall !== undefined) {
    query.set("at", wall);
    put(part, screen).then(() => document.getElementById("h-wall")?.focus());
  }
});

main.addEventListener("submit", (event) => {
  const form = event.target;
  event.preventDefault();
  if (form.dataset.add) take({ changes: [{ do: "add", at: form.dataset.add, row: JSON.parse(new FormData(form).get("row")) }] });
});

// The walls are drawn as one types; only what is left in a field is a step.
let drawing = false;
let typed = null;
main.addEventListener("input", async (event) => {
  if (screen !== "measure" || !event.target.matches("input[type=text][data-at]")) return;
  typed = event.target;
  if (drawing) return;
  drawing = true;
  while (typed !== null) {
    const asked = new URLSearchParams({ at: typed.dataset.at, to: JSON.stringify(value(typed)) });
    typed = null;
    const reply = await fetch(`${root}/outline?${asked}`).catch(() => null);
    const figure = document.querySelector(".drawing-beside figure");
    if (reply?.ok && figure !== null) figure.innerHTML = await reply.text();
  }
  drawing = false;
});

on("stepped", async (body) => {
  if (screen === "measure" || screen === "furnish") await put(part, screen);
  else if (body.step !== undefined) await put(part, screen);
});

on("solved", async () => {
  if (screen === "furnish" && answers() !== null) await put(answers(), "answers");
  if (["compare", "sheets", "try"].includes(screen)) await put(part, screen);
  if (screen === "measure" && seen.stage === "faulty") return;
});

// Sheets follow the option and the paper that are chosen.
main.addEventListener("change", (event) => {
  const form = event.target.closest("#sheet-of");
  if (form !== null) {
    const chosen = new URLSearchParams([...form.querySelectorAll("select")].map((field) => [field.name, field.value]));
    query.set("option", chosen.get("option"));
    for (const link of document.querySelectorAll("a[data-sheet]")) link.href = `${link.dataset.sheet}?${chosen}`;
  }
  // A client is told prices where that is chosen, and else none.
  const prices = document.getElementById("sheet-prices");
  if (prices === null || (form === null && event.target !== prices)) return;
  const link = document.getElementById("for-client");
  const url = new URL(link.href);
  url.searchParams.delete("list");
  if (prices.value !== "") url.searchParams.set("list", prices.value);
  link.href = url.href;
});
