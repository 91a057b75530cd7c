// The plan of an option: what it shows; nearer or farther by buttons and keys, moved by the pointer.
import { main, root } from "./address.js";

const MOST = 8;
const STEP = 0.15;
const whole = new WeakMap();
let drag = null;
let dragged = false;
// Whoever touches moves a finger by so little, in dots.
const STILL = 6;
let began = [0, 0];

// The one of them that is seen on this screen.
const plan = () => [...document.querySelectorAll("#first .plan svg")].find((svg) => svg.getClientRects().length > 0) ?? null;

function shown(svg) {
  const [x, y, wide, high] = svg.getAttribute("viewBox").split(/[ ,]+/).map(Number);
  if (!whole.has(svg)) whole.set(svg, { x, y, wide, high });
  return { x, y, wide, high };
}

// No more is shown than there is.
function show(svg, { x, y, wide, high }) {
  const all = whole.get(svg);
  const within = (at, size, from, most) => Math.min(Math.max(at, from), from + most - size);
  svg.setAttribute("viewBox", [within(x, wide, all.x, all.wide), within(y, high, all.y, all.high), wide, high].join(" "));
  svg.classList.toggle("closer", wide < all.wide);
}

/** Shows the plan nearer by so much; 0: all of it. */
export function zoom(by) {
  const svg = plan();
  if (svg === null) return;
  const { x, y, wide, high } = shown(svg);
  const all = whole.get(svg);
  if (by === 0) {
    show(svg, all);
    return;
  }
  const next = Math.min(Math.max(wide / by, all.wide / MOST), all.wide);
  const [middle, level] = [x + wide / 2, y + high / 2];
  const tall = next * all.high / all.wide;
  show(svg, { x: middle - next / 2, y: level - tall / 2, wide: next, high: tall });
}

function move(across, down) {
  const svg = plan();
  if (svg === null) return;
  const now = shown(svg);
  show(svg, { ...now, x: now.x + across * now.wide, y: now.y + down * now.high });
}

main.addEventListener("keydown", (event) => {
  if (!event.target.matches(".zoom button") || event.ctrlKey || event.metaKey || event.altKey) return;
  const ways = { ArrowLeft: [-STEP, 0], ArrowRight: [STEP, 0], ArrowUp: [0, -STEP], ArrowDown: [0, STEP] };
  if (ways[event.key] === undefined) return;
  event.preventDefault();
  move(...ways[event.key]);
});

main.addEventListener("pointerdown", (event) => {
  const svg = event.target.closest?.("#first .plan svg.closer");
  dragged = false;
  if ((svg ?? null) === null) return;
  drag = [event.clientX, event.clientY];
  began = drag;
  svg.setPointerCapture(event.pointerId);
});

main.addEventListener("pointermove", (event) => {
  const svg = plan();
  if (drag === null || svg === null) return;
  const box = svg.getBoundingClientRect();
  if (Math.hypot(event.clientX - began[0], event.clientY - began[1]) > STILL) dragged = true;
  move((drag[0] - event.clientX) / box.width, (drag[1] - event.clientY) / box.height);
  drag = [event.clientX, event.clientY];
});

for (const ended of ["pointerup", "pointercancel"]) main.addEventListener(ended, () => { drag = null; });

// What was touched of which option, and what the plan shows: both hold when the answers are put there anew.
let touched = null;
let chosen = null;
let asked = 0;
const plains = new Map();

const first = () => document.getElementById("first");
const told = () => document.getElementById("touched");
const boxes = () => [...document.querySelectorAll(".shows input")];

function look() {
  const link = document.createElement("link");
  [link.rel, link.href] = ["stylesheet", "/closer.css"];
  document.head.append(link);
}
look();

// Plans without marks are kept as they first came, by what they are of.
function plain(figure) {
  const { of } = first().closest(".answers").dataset;
  const name = `${of} ${first().dataset.key}`;
  if (!plains.has(name) && figure.querySelector(".at-desk") !== null) {
    plains.clear();
    plains.set(name, [...figure.childNodes]);
  }
  return plains.get(name);
}

function showTouched(what) {
  for (const button of document.querySelectorAll("[data-touch]")) {
    button.setAttribute("aria-pressed", String(button.dataset.touch === what));
  }
}

function tell(part) {
  const place = told();
  if (place === null) return;
  if (part === null) {
    place.replaceChildren();
    return;
  }
  const done = document.createElement("button");
  [done.type, done.textContent, done.dataset.done] = ["button", document.querySelector("#closer [data-done]").dataset.done, ""];
  place.replaceChildren(part, done);
}

/** Has the plan show what is chosen and what is touched, after either changed or the answers were put there anew. */
export async function dress(at) {
  const figure = document.querySelector("#first .plan");
  if (figure === null) return;
  const own = plain(figure);
  const { key } = first().dataset;
  if (touched?.key !== key) touched = null;
  if (chosen !== null && boxes().some((box) => box.dataset.seen === undefined)) {
    for (const box of boxes()) box.checked = chosen.includes(box.value);
  }
  for (const box of boxes()) box.dataset.seen = "";
  chosen = boxes().filter((box) => box.checked).map((box) => box.value);
  asked += 1;
  const turn = asked;
  if (at === undefined && touched === null && chosen.join() === "sizes" && own !== undefined) {
    figure.replaceChildren(...own);
    tell(null);
    showTouched(null);
    return;
  }
  const question = new URLSearchParams([["option", key], ...chosen.map((show) => ["show", show])]);
  if (matchMedia("(max-width: 60rem)").matches) question.set("phone", "1");
  if (at !== undefined) for (const [name, value] of Object.entries(at)) question.set(name, value);
  else if (touched !== null) question.set("touched", touched.what);
  const reply = await fetch(`${root}/plan-with?${question}`).catch(() => null);
  if (!reply?.ok || turn !== asked || !figure.isConnected) return;
  const part = document.createElement("template");
  part.innerHTML = await reply.text();
  const said = part.content.querySelector(".told");
  said?.remove();
  const was = plan();
  const near = was !== null && was.classList.contains("closer") ? [whole.get(was), shown(was)] : null;
  figure.replaceChildren(part.content);
  const now = plan();
  if (near !== null && now !== null) {
    const all = shown(now);
    if (all.wide === near[0].wide && all.high === near[0].high) show(now, near[1]);
  }
  touched = said === null ? null : { key, what: said.dataset.of };
  tell(said);
  showTouched(touched?.what ?? null);
}

/** What is touched is told and marked; touched again, or null: nothing is. */
export function touch(what) {
  const again = touched !== null && touched.what === what;
  const had = document.activeElement?.dataset.done !== undefined ? touched?.what : null;
  touched = what === null || again ? null : { key: first().dataset.key, what };
  const dressed = dress();
  // Who took the marks off goes on where they touched.
  if (had !== null) (document.querySelector(`[data-touch="${had}"]`) ?? main).focus();
  return dressed;
}

/** What lies under the pointer is touched, where the plan was not moved by it. */
export function touchAt(event) {
  const svg = event.target.closest("svg") ?? plan();
  if (svg === null || dragged) return;
  const place = new DOMPoint(event.clientX, event.clientY).matrixTransform(svg.getScreenCTM().inverse());
  const hand = svg.closest(".in-hand") === null ? {} : { hand: "1" };
  dress({ at: `${place.x.toFixed(2)},${place.y.toFixed(2)}`, ...hand });
}

/** Fills in ways and reasons once somebody opens them. */
export async function closer(details) {
  const reply = await fetch(`${root}/closer?${new URLSearchParams({ option: first().dataset.key })}`).catch(() => null);
  if (!reply?.ok || !details.isConnected) return;
  details.querySelector("[data-done]").innerHTML = await reply.text();
  showTouched(touched?.what ?? null);
}
