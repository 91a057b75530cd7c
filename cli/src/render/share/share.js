"use strict";
// The answer as a text, made anew with each mark and each letter; it goes nowhere by itself.
(() => {
  const at = (id) => document.getElementById(id);
  const [form, line, text, told] = ["form", "line", "text", "told"].map(at);
  form.hidden = false;

  function made() {
    const which = form.querySelector("input:checked");
    const note = line.value.trim();
    const lines = [form.dataset.room, which?.dataset.chosen, which?.dataset.key, note === "" ? null : `${form.dataset.note}${note}`];
    text.value = `${lines.filter((part) => part).join("\n")}\n`;
    told.textContent = "";
  }

  form.addEventListener("input", made);
  form.addEventListener("submit", (event) => event.preventDefault());
  at("copy").addEventListener("click", async (event) => {
    const { done, byHand } = event.target.dataset;
    try {
      await navigator.clipboard.writeText(text.value);
      told.textContent = done;
    } catch {
      text.focus();
      text.select();
      told.textContent = document.execCommand("copy") ? done : byHand;
    }
  });
  at("save").addEventListener("click", (event) => {
    const link = document.createElement("a");
    link.href = URL.createObjectURL(new Blob([text.value], { type: "text/plain" }));
    link.download = form.dataset.file;
    link.click();
    URL.revokeObjectURL(link.href);
    told.textContent = event.target.dataset.done;
  });
  made();
})();
