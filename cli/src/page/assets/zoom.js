// The plan of an option: what it shows; nearer or farther by buttons and keys, moved by the pointer.
import { main, root } from "./address.js";

const MOST = 8;
const STEP = 0.15;
const whole = new WeakMap();
let drag = null;

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
  if ((svg ?? null) === null) return;
  drag = [event.clientX, event.clientY];
  svg.setPointerCapture(event.pointerId);
});

main.addEventListener("pointermove", (event) => {
  const svg = plan();
  if (drag === null || svg === null) return;
  const box = svg.getBoundingClientRect();
  move((drag[0] - event.clientX) / box.width, (drag[1] - event.clientY) / box.height);
  drag = [event.clientX, event.clientY];
});

for (const ended of ["pointerup", "pointercancel"]) main.addEventListener(ended, () => { drag = null; });

let shows = "";
let plain = "";

/** Has the plan show what was chosen, after it was put there anew. */
export async function dress() {
  plain = document.querySelector("#first .plan")?.innerHTML ?? "";
  const [field, first] = [document.getElementById("plan-shows"), document.getElementById("first")];
  if (field === null || shows === "") return;
  field.value = shows;
  const reply = await fetch(`${root}/plan-in-full?${new URLSearchParams({ option: first.dataset.key })}`).catch(() => null);
  if (reply?.ok && first.isConnected && shows !== "") first.querySelector(".plan").innerHTML = await reply.text();
}

/** Has the plan show this from now on. */
export function choose(what) {
  const figure = document.querySelector("#first .plan");
  shows = what;
  if (shows === "") figure.innerHTML = plain;
  else dress();
}
