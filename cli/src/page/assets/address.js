// What the address keeps of what is chosen: the option, the pins, the filters. They hold on every screen and when it is loaded again.
export const main = document.getElementById("main");
export const root = `/room/${main.dataset.room}`;

const KEPT = ["option", "pin", "wall", "way", "hand"];

/** What parts are asked for by, beside their path. */
export const query = new URLSearchParams(location.search);
query.set("at", main.dataset.wall);

/** Has the address and the ways to the other screens keep what is chosen now. */
export function keep() {
  const here = new URLSearchParams(query);
  here.delete("at");
  history.replaceState(null, "", here.size === 0 ? location.pathname : `?${here}`);
  for (const link of document.querySelectorAll(".head nav a")) {
    const url = new URL(link.href);
    for (const name of KEPT) {
      url.searchParams.delete(name);
      for (const value of query.getAll(name)) url.searchParams.append(name, value);
    }
    link.href = url.href;
  }
}

/** Pins an option, or takes its pin off. */
export function pin(key) {
  const pins = query.getAll("pin");
  query.delete("pin");
  for (const known of pins.filter((known) => known !== key)) query.append("pin", known);
  if (!pins.includes(key)) query.append("pin", key);
  keep();
}
