// Fields that stand for values of the file: what is typed or chosen is a step.
import { keep, main, pin, query, root } from "./address.js";
import { focusOn } from "./parts.js";
import { on, put, take } from "./room.js";

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
      // Two figures are feet and inches.
      const feet = unit === "ft" ? typed.match(/^(\d+)[\s-]+(\d+(?:\.\d+)?(?:\s+\d+\/\d+)?)$/) : null;
      if (feet !== null) return `${feet[1]} ft ${feet[2]} in`;
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
    const cleared = field.dataset.keeps === undefined ? { do: "remove", at } : { do: "set", at, to: null };
    take({ changes: [field.value.trim() === "" ? cleared : { do: "set", at, to: value(field) }] });
  }
});

// How many rows of a list there are.
const rows = (list) => [...document.querySelectorAll("[data-remove]")].filter((button) => button.dataset.remove.replace(/\.\d+$/, "") === list).length;

main.addEventListener("click", (event) => {
  const button = event.target.closest("button");
  if (button === null) return;
  const { remove, addTo, row, before, wall, unpin } = button.dataset;
  if (unpin !== undefined) {
    pin(unpin);
    put(part, screen).then(() => main.focus());
  }
  if (remove !== undefined) {
    const [, list, row] = remove.match(/^(.*)\.(\d+)$/);
    take({ changes: [{ do: "remove", at: remove }] }).then(() => {
      if (list === "walls") document.getElementById("h-wall")?.focus();
      else focusOn(list, Math.max(0, Number(row) - 1));
    });
  }
  if (addTo !== undefined) {
    const change = { do: "add", at: addTo, row: JSON.parse(row) };
    if (before !== undefined) {
      change.before = Number(before);
      query.set("at", before);
    }
    const place = rows(addTo);
    take({ changes: [change] }).then(() => {
      if (addTo === "walls") document.getElementById("h-wall")?.focus();
      else focusOn(addTo, place);
    });
  }
  if (wall !== undefined) {
    query.set("at", wall);
    put(part, screen).then(() => document.getElementById("h-wall")?.focus());
  }
});

// A row with what a form has for it.
function filled(form, row) {
  for (const field of form.elements) {
    if (field.name === "" || (field.type === "radio" && !field.checked)) continue;
    if (field.name === "merge") Object.assign(row, JSON.parse(field.value));
    else row[field.name] = value(field);
  }
  return row;
}

// Something new is put into the file once its figures are in.
main.addEventListener("click", (event) => {
  const { draft, leave } = event.target.closest("button")?.dataset ?? {};
  const kind = draft ?? leave;
  if (kind === undefined) return;
  const [form, button] = [document.getElementById(`new-${kind}`), document.getElementById(`add-${kind}`)];
  form.hidden = leave !== undefined;
  button.setAttribute("aria-expanded", String(!form.hidden));
  if (form.hidden) {
    form.reset();
    button.focus();
  } else {
    form.querySelector("input").focus();
  }
});

main.addEventListener("submit", (event) => {
  const form = event.target;
  event.preventDefault();
  const { add, row: begun } = form.dataset;
  if (add === undefined) return;
  const place = rows(add);
  const row = begun === undefined ? JSON.parse(new FormData(form).get("row")) : filled(form, JSON.parse(begun));
  take({ changes: [{ do: "add", at: add, row }] }).then(() => focusOn(add, place));
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

on("stepped", async (body, told) => {
  const typesHere = screen === "measure" || screen === "furnish";
  if (typesHere || body.step !== undefined || body.elsewhere || told.beside) await put(part, screen);
});

on("solved", async () => {
  if (screen === "furnish" && answers() !== null) await put(answers(), "first");
  if (["compare", "sheets", "try"].includes(screen)) await put(part, screen);
});

// Sheets follow the option and the paper that are chosen.
main.addEventListener("change", (event) => {
  const form = event.target.closest("#sheet-of");
  if (form !== null) {
    const chosen = new URLSearchParams([...form.querySelectorAll("select")].map((field) => [field.name, field.value]));
    query.set("option", chosen.get("option"));
    keep();
    for (const link of document.querySelectorAll("a[data-sheet]")) link.href = `${link.dataset.sheet}?${chosen}`;
  }
  // A client is told prices where that is chosen, and else none.
  const prices = document.getElementById("sheet-prices");
  if (prices === null || (form === null && event.target !== prices)) return;
  const link = document.getElementById("for-client");
  if (link === null) return;
  const url = new URL(link.href);
  url.searchParams.delete("list");
  if (prices.value !== "") url.searchParams.set("list", prices.value);
  link.href = url.href;
});
