// Shows the rooms that are looked for, in the order that is asked for; without it all stand there in the order given.
"use strict";
(() => {
  const tools = document.getElementById("tools");
  if (tools === null) return;
  const list = document.getElementById("rooms");
  const rooms = [...list.children];
  const { find, fate, by, count } = tools.elements;
  const keys = {
    name: (one, other) => one.dataset.name.localeCompare(other.dataset.name, "en"),
    area: (one, other) => other.dataset.area - one.dataset.area,
    score: (one, other) => other.dataset.score - one.dataset.score,
    fits: (one, other) => other.dataset.fits - one.dataset.fits,
  };
  const show = () => {
    const words = find.value.toLowerCase().split(" ").filter((word) => word !== "");
    const wanted = (room) => (fate.value === "" || room.dataset.fate === fate.value)
      && words.every((word) => room.textContent.toLowerCase().includes(word));
    // Sorting is stable: what is alike stays in the order given.
    const ordered = by.value in keys ? rooms.toSorted(keys[by.value]) : rooms;
    ordered.forEach((room) => { room.hidden = !wanted(room); });
    list.replaceChildren(...ordered);
    const seen = rooms.filter((room) => !room.hidden).length;
    count.value = count.dataset.of.replace("{seen}", seen).replace("{all}", rooms.length);
  };
  tools.addEventListener("input", show);
  tools.addEventListener("submit", (event) => event.preventDefault());
  tools.hidden = false;
  show();
})();
