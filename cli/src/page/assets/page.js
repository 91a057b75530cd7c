// The page: which of its parts run on which screen.
const main = document.getElementById("main");

if (main?.dataset.room) {
  await import("./room.js");
  await import("./fields.js");
  if (main.dataset.screen === "options") await import("./options.js");
  if (main.dataset.screen === "try") await import("./trial.js");
}

// A new room of a folder.
document.querySelector("form[data-new]")?.addEventListener("submit", async (event) => {
  event.preventDefault();
  const amiss = document.getElementById("amiss");
  try {
    const name = new FormData(event.target).get("name");
    const reply = await fetch("/new", { method: "POST", body: JSON.stringify({ name }) });
    const told = await reply.json();
    if (reply.ok) location.assign(told.to);
    amiss.textContent = told.told ?? "";
  } catch {
    amiss.textContent = amiss.dataset.gone;
  }
  amiss.hidden = amiss.textContent === "";
});
