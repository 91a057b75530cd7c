// Parts of a page: put in place of old ones with the keyboard where it was; plans drawn as they come into sight.
import { query, root } from "./address.js";

const plans = new Map();
const at = (id) => document.getElementById(id);
const fetched = (path) => fetch(`${root}/${path}`).catch(() => null);

/** Puts a part in the place of an old one; who types in it goes on typing. */
export async function put(element, part) {
  const reply = await fetched(`part/${part}?${query}`);
  if (reply === null || !reply.ok) return;
  const html = await reply.text();
  const active = element.contains(document.activeElement) ? document.activeElement : null;
  const text = active?.matches("input[type=text], textarea") ?? false;
  const typed = text && active.value !== active.defaultValue ? active.value : null;
  const caret = text ? [active.selectionStart, active.selectionEnd] : null;
  const open = [...element.querySelectorAll("details[open][id]")].map((details) => details.id);
  element.innerHTML = html;
  for (const id of open) at(id)?.setAttribute("open", "");
  if (active?.id) {
    const again = at(active.id);
    again?.focus({ preventScroll: true });
    if (again !== null && typed !== null) again.value = typed;
    if (again !== null && caret !== null && again.matches("input[type=text], textarea")) again.setSelectionRange(...caret);
  }
  lookAt(element);
}

/** Puts the keyboard on the row of a list, or on what adds to the list. */
export function focusOn(list, row) {
  const within = at(`${list}.${row}`)?.querySelector("input, select") ?? document.querySelector(`[id^="${list}.${row}."]`);
  const adds = list.endsWith(".holds") ? document.querySelector("[data-draft]") : document.querySelector(`[data-add="${list}"] select`);
  (within ?? adds ?? at("main")).focus();
}

const sight = new IntersectionObserver((entries) => {
  for (const entry of entries.filter((entry) => entry.isIntersecting)) {
    sight.unobserve(entry.target);
    draw(entry.target);
  }
}, { rootMargin: "300px" });

const named = ({ dataset: { of, plan, hand } }) => [of, plan, hand].join(" ");

async function draw(figure) {
  const { plan, hand } = figure.dataset;
  const name = named(figure);
  if (!plans.has(name)) {
    const reply = await fetched(`plan?${new URLSearchParams({ option: plan, hand: hand ?? "" })}`);
    if (reply === null || !reply.ok) return;
    plans.set(name, await reply.text());
  }
  figure.innerHTML = plans.get(name);
}

/** Has the plans of a part drawn once they come into sight, and kept. */
export function lookAt(element) {
  for (const figure of element.querySelectorAll("[data-plan]")) {
    const known = plans.get(named(figure));
    if (known === undefined) sight.observe(figure);
    else figure.innerHTML = known;
  }
}
