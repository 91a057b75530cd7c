// A shop's list, chosen or dropped: what fits of it is asked of the program, which keeps it nowhere.
import { main, root } from "./address.js";
import { on } from "./room.js";

const at = (id) => document.getElementById(id);
const say = (what, name) => {
  const state = at("shop-state");
  state.textContent = name === undefined ? state.dataset[what] : `${name}: ${state.dataset[what]}`;
};
let last = null;
let kept = "";
let under = null;

async function ask(file) {
  last = file;
  under?.abort();
  if (file.size > Number(at("shop").dataset.most)) {
    say("large", file.name);
    return;
  }
  const run = new AbortController();
  under = run;
  at("shop-again").hidden = true;
  say("busy", file.name);
  const asked = new URLSearchParams({ name: file.name, sets: at("shop-sets").checked ? "1" : "" });
  try {
    const reply = await fetch(`${root}/shop?${asked}`, { method: "POST", body: file, signal: run.signal });
    const text = await reply.text();
    if (at("shop-told") === null || under !== run) return;
    if (!reply.ok) {
      say(reply.status === 413 ? "large" : "gone", file.name);
      return;
    }
    kept = text;
    at("shop-told").innerHTML = kept;
    say(document.querySelector("#shop-told .list-faults") === null ? "done" : "amiss", file.name);
  } catch (error) {
    if (error.name !== "AbortError") say("gone");
  }
}

main.addEventListener("change", (event) => {
  if (event.target.id === "shop-list" && event.target.files.length > 0) ask(event.target.files[0]);
  if (event.target.id === "shop-sets" && last !== null) ask(last);
});

main.addEventListener("click", (event) => {
  if (event.target.id === "shop-again" && last !== null) ask(last);
});

// A file that misses its place is not opened instead of the page.
const carries = (event) => event.dataTransfer?.types.includes("Files") ?? false;
document.addEventListener("dragover", (event) => {
  if (!carries(event)) return;
  event.preventDefault();
  at("shop-drop")?.classList.toggle("over", event.target.closest?.("#shop") !== null);
});
document.addEventListener("dragleave", () => at("shop-drop")?.classList.remove("over"));
document.addEventListener("drop", (event) => {
  if (!carries(event)) return;
  event.preventDefault();
  at("shop-drop")?.classList.remove("over");
  const [file] = event.dataTransfer.files;
  if (file !== undefined && event.target.closest?.("#shop")) ask(file);
});

// The fields are put there anew after a step: what was told stays, and is told to be of the room as it was.
on("stepped", () => {
  if (last === null || at("shop-told") === null) return;
  at("shop-told").innerHTML = kept;
  at("shop-again").hidden = false;
  say("old", last.name);
});
