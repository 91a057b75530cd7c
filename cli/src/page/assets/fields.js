// Fields that stand for values of the file: what is typed or chosen is a step.
import { main, on, put, query, seen, take } from "./room.js";

const screen = main.dataset.screen;
const part = document.getElementById("part");
const answers = () => document.querySelector("[data-live=answers]");

function value(field) {
  const typed = field.value.trim();
  switch (field.dataset.as) {
    case "number": return Number(typed);
    case "flag": return typed === "true";
    case "figure": return /^-?\d+(\.\d+)?$/.test(typed) ? Number(typed) : typed;
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
  const { remove, addTo, row, before, wall } = button.dataset;
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

on("stepped", async (body) => {
  if (screen === "measure" || screen === "furnish") await put(part, screen);
  else if (body.step !== undefined) await put(part, screen);
});

on("solved", async () => {
  if (screen === "furnish" && answers() !== null) await put(answers(), "answers");
  if (screen === "sheets" || screen === "try") await put(part, screen);
  if (screen === "measure" && seen.stage === "faulty") return;
});

// Sheets follow the option and the paper that are chosen.
main.addEventListener("change", (event) => {
  const form = event.target.closest("#sheet-of");
  if (form === null) return;
  const chosen = new URLSearchParams(new FormData(form));
  query.set("option", chosen.get("option"));
  for (const link of document.querySelectorAll("a[data-sheet]")) link.href = `${link.dataset.sheet}?${chosen}`;
});
