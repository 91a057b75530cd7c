// The options: wishes that put them in another order as they are moved, and filters.
import { keep, main, pin, query } from "./address.js";
import { on, put, take } from "./room.js";

const answers = () => document.getElementById("answers");
const line = document.getElementById("line");
const first = () => answers().querySelector("#first [data-title]")?.textContent ?? "";
const moved = new Map();
let sending = false;
let dress = null;

async function shown() {
  const was = first();
  await put(answers(), "answers");
  await dress?.();
  if (was !== "" && first() !== "" && first() !== was) line.textContent = `${line.textContent} ${line.dataset.nowFirst} ${first()}.`;
}

function told(slider) {
  const { must, none } = slider.dataset;
  document.getElementById(`${slider.id}-told`).textContent = { 5: must, 0: none }[slider.value] ?? slider.value;
}

// What is moved while a step is on its way waits for it, and only its last value counts.
async function send() {
  if (sending) return;
  sending = true;
  while (moved.size > 0) {
    const changes = [...moved].map(([at, to]) => ({ do: "set", at, to }));
    moved.clear();
    await take({ changes });
  }
  sending = false;
}

main.addEventListener("input", (event) => {
  const slider = event.target;
  if (slider.type !== "range") return;
  told(slider);
  moved.set(slider.dataset.at, Number(slider.value));
  send();
});

main.addEventListener("change", async (event) => {
  const form = event.target.closest("#filters");
  if (form === null) return;
  for (const { name, value } of form.querySelectorAll("input:checked")) {
    if (value === "") query.delete(name);
    else query.set(name, value);
  }
  query.delete("option");
  keep();
  await put(answers(), "answers");
  await dress?.();
  line.textContent = answers().querySelector("[data-told]")?.dataset.told ?? line.textContent;
});

// A pin is kept in the address, so that it holds on every screen.
main.addEventListener("click", async (event) => {
  const button = event.target.closest("[data-pin]");
  if (button === null) return;
  pin(button.dataset.pin);
  await put(answers(), "answers");
  await dress?.();
});

on("solved", shown);
on("stepped", async (body, told) => {
  if (body.step === undefined && !body.elsewhere && !told.beside) return;
  await put(document.getElementById("part"), "options");
  await dress?.();
});

// What few need is fetched once somebody wants it.
async function nearer() {
  const plan = await import("./zoom.js");
  dress = plan.dress;
  return plan;
}

main.addEventListener("click", async (event) => {
  const { zoom, touch, done } = event.target.closest("button")?.dataset ?? {};
  if (zoom !== undefined) (await nearer()).zoom(Number(zoom));
  if (touch !== undefined) (await nearer()).touch(touch);
  if (done !== undefined) (await nearer()).touch(null);
  if (event.target.closest("#first .plan svg")) (await nearer()).touchAt(event);
});

main.addEventListener("change", async (event) => {
  if (event.target.closest(".shows")) (await nearer()).dress();
});

main.addEventListener("toggle", async (event) => {
  if (event.target.id === "closer" && event.target.open) (await nearer()).closer(event.target);
}, true);
