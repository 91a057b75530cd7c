// The page: which of its parts run on which screen.

// The unit that the page is read in is the browser's to keep; what stands on the page is made anew in it. It may be chosen
// before anything else of the page is there.
document.getElementById("told-in")?.addEventListener("change", (event) => {
  const age = event.target.value === "" ? 0 : 31536000;
  document.cookie = `elbowroom-units-${location.port}=${event.target.value}; path=/; max-age=${age}; samesite=strict`;
  sessionStorage.setItem("focus", event.target.id);
  location.reload();
});

const main = document.getElementById("main");
document.querySelector(".head nav [aria-current]")?.scrollIntoView({ block: "nearest", inline: "center" });

if (main?.dataset.room) {
  const { begin } = await import("./room.js");
  if (main.dataset.screen === "options") await import("./options.js");
  else await import("./fields.js");
  if (main.dataset.screen === "furnish") await import("./shop.js");
  if (main.dataset.screen === "try") await import("./trial.js");
  await begin();
}

// Whoever chose goes on where they were.
const focus = sessionStorage.getItem("focus");
sessionStorage.removeItem("focus");
if (focus !== null) document.getElementById(focus)?.focus();

// All rooms are being ranked: how far that is, until it is done or stopped.
let stopping = null;
document.getElementById("rank-no-more")?.addEventListener("click", async () => {
  const reply = await fetch("/rank-no-more", { method: "POST", body: "" }).catch(() => null);
  if (!reply?.ok) return;
  stopping = (await reply.json()).told;
  document.getElementById("ranking").textContent = stopping;
});
async function follow(ranking) {
  for (;;) {
    await new Promise((resolve) => { setTimeout(resolve, 500); });
    const reply = await fetch("/ranking").catch(() => null);
    if (!reply?.ok) return;
    const told = await reply.json();
    if (!told.busy) break;
    if (stopping === null && ranking.textContent !== told.told) ranking.textContent = told.told;
  }
  location.reload();
}
const ranking = document.getElementById("ranking");
if (ranking !== null) follow(ranking);

// A new room of a folder, one like another, another name.
for (const form of document.querySelectorAll("form[data-to]")) {
  form.addEventListener("submit", async (event) => {
    event.preventDefault();
    const amiss = document.getElementById("amiss");
    try {
      const body = JSON.stringify(Object.fromEntries(new FormData(form, event.submitter)));
      const reply = await fetch(form.dataset.to, { method: "POST", body });
      const told = await reply.json();
      if (reply.ok) location.assign(told.to);
      amiss.textContent = told.told ?? "";
    } catch {
      amiss.textContent = amiss.dataset.gone;
    }
    amiss.hidden = amiss.textContent === "";
    if (!amiss.hidden) amiss.scrollIntoView({ block: "nearest" });
  });
}
