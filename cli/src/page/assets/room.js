// A room: steps are sent one after another, the work is watched, and what other windows do is seen.
import { main, query, root } from "./address.js";
import { lookAt, put as putPart } from "./parts.js";

// How often it is looked whether something else has changed the file, ms.
const LOOK = 3000;
const at = (id) => document.getElementById(id);
const state = at("state");
const saved = at("saved");
const amiss = at("amiss");
const line = at("line");
const hooks = { stepped: [], solved: [] };
let step = Number(main.dataset.atStep);
let faults = [];
let watching = false;
let sending = 0;
let crossed = false;
let sent = Promise.resolve();
export const seen = { stage: state.dataset.stage };
export { main, query, root };

/** Has something done once a step is saved, or once there is a new answer. */
export const on = (what, hook) => hooks[what].push(hook);

/** Tells what is amiss where it is seen from everywhere, with what can be done about it; nothing: all is well. */
function tell(sentence, ...does) {
  const buttons = does.map(([label, done]) => {
    const button = document.createElement("button");
    button.type = "button";
    button.textContent = label;
    button.addEventListener("click", done);
    return button;
  });
  crossed = does.length > 0;
  amiss.replaceChildren(sentence, ...buttons.flatMap((button) => [" ", button]));
  amiss.hidden = sentence === "";
}

const loadAgain = () => [amiss.dataset.show, () => location.reload()];

async function asked(path, options) {
  try {
    return await fetch(`${root}/${path}`, options);
  } catch {
    tell(amiss.dataset.gone);
    return null;
  }
}

/** Sends what a script asks for, or asks for a length, and hands back what comes of it; null where that is nothing. */
export async function sentJson(path, body) {
  const text = typeof body === "string" ? body : JSON.stringify(body);
  const reply = await asked(path, body === undefined ? {} : { method: "POST", body: text });
  if (reply === null) return null;
  const value = await reply.json().catch(() => null);
  if (reply.ok) {
    if (!crossed) tell("");
    return value;
  }
  if (path === "step" && value?.there !== undefined) cross(body, value);
  else tell(value?.told ?? amiss.dataset.gone, ...(value?.look ? [loadAgain()] : []));
  return null;
}

// Something else has changed the same place: both are told, and whoever typed chooses.
function cross(body, value) {
  const { from, ...again } = body;
  const after = async () => {
    tell("");
    step = value.step;
    saved.textContent = saved.dataset.saved;
  };
  tell(value.told,
    [amiss.dataset.mine, () => { after(); take(again); }],
    [amiss.dataset.theirs, async () => { await after(); await taken({}, value.now); main.focus(); }]);
  amiss.querySelector("button").focus();
}

/** Takes a step: changes, or one taken back or again. Steps wait for each other. True once it is saved. */
export function take(body) {
  const next = sent.then(async () => {
    sending += 1;
    saved.textContent = saved.dataset.saving;
    const told = await sentJson("step", { from: step, ...body });
    sending -= 1;
    saved.textContent = told === null ? saved.dataset.unsaved : saved.dataset.saved;
    if (told === null) return false;
    if (!crossed) tell(told.beside ? amiss.dataset.beside : "");
    await taken(body, told);
    return true;
  });
  sent = next.catch(() => false);
  return next;
}

async function taken(body, told) {
  show(told);
  for (const hook of hooks.stepped) await hook(body, told);
  if (told.stage === "busy") watch();
  else await solved();
}

function show(told) {
  step = told.step;
  seen.stage = told.stage;
  state.dataset.stage = told.stage;
  if (line.textContent !== told.line) line.textContent = told.line;
  at("progress").hidden = told.stage !== "busy";
  // Whoever may only look has none of these.
  if (at("stop") !== null) {
    const [stop, goOn, undo, redo] = ["stop", "go-on", "undo", "redo"].map(at);
    // A button that goes hands the keyboard to the one that comes in its place.
    const was = document.activeElement;
    goOn.hidden = told.stage !== "stopped" && told.stage !== "failed";
    stop.hidden = told.stage !== "busy";
    [undo.disabled, redo.disabled] = told.can.map((can) => !can);
    if ([stop, goOn].includes(was) && was.hidden) (goOn.hidden ? (stop.hidden ? main : stop) : goOn).focus();
    if (was === undo && undo.disabled) redo.focus();
    if (was === redo && redo.disabled) undo.focus();
  }
  faults = told.faults;
  showFaults();
  for (const answers of document.querySelectorAll(".answers")) {
    answers.setAttribute("aria-busy", String(Number(answers.dataset.of) !== step && told.stage !== "done"));
  }
}

// Each fault in the list and at its field.
function showFaults() {
  at("faults").replaceChildren(...faults.map((fault) => {
    const item = document.createElement("li");
    item.textContent = `${fault.message} ${fault.remedy}`;
    return item;
  }));
  at("faults").hidden = faults.length === 0;
  for (const old of main.querySelectorAll("#part .fault")) old.remove();
  for (const field of document.querySelectorAll("[aria-invalid]")) {
    field.removeAttribute("aria-invalid");
    const hint = (field.getAttribute("aria-describedby") ?? "").split(" ").filter((id) => !id.startsWith("fault-")).join(" ");
    if (hint === "") field.removeAttribute("aria-describedby");
    else field.setAttribute("aria-describedby", hint);
  }
  faults.forEach((fault, place) => {
    const field = fault.at === "" ? null : at(fault.at);
    if (field === null || !field.matches("input, select, textarea")) return;
    const told = document.createElement("p");
    told.className = "fault";
    told.id = `fault-${place}`;
    told.textContent = `${fault.message} ${fault.remedy}`;
    field.setAttribute("aria-invalid", "true");
    field.setAttribute("aria-describedby", `${field.getAttribute("aria-describedby") ?? ""} ${told.id}`.trim());
    field.after(told);
  });
}

/** Puts a part in the place of an old one, with what is wrong at its fields. */
export async function put(element, part) {
  await putPart(element, part);
  if (faults.length > 0) showFaults();
}

async function watch() {
  if (watching) return;
  watching = true;
  while (seen.stage === "busy") {
    const reply = await asked("stage");
    if (reply === null || !reply.ok) break;
    const told = await reply.json();
    // A step that was taken meanwhile knows better.
    if (told.step < step || sending > 0) continue;
    if (told.step > step) {
      watching = false;
      await elsewhere(told);
      return;
    }
    show(told);
  }
  watching = false;
  await solved();
}

async function solved() {
  for (const hook of hooks.solved) await hook();
}

// Another window, or something else on this machine, may have changed the file.
async function look() {
  if (document.visibilityState !== "visible" || sending > 0 || crossed) return;
  const reply = await fetch(`${root}/news`).catch(() => null);
  if (!reply?.ok) return;
  const told = await reply.json();
  if (sending === 0 && !crossed && told.step > step) await elsewhere(told);
}

// What is tried is not thrown away by it; all else shows what is there now.
async function elsewhere(told) {
  if (main.dataset.screen === "try") {
    tell(amiss.dataset.elsewhere, loadAgain());
    return;
  }
  await taken({ elsewhere: true }, told);
  tell(amiss.dataset.elsewhere);
}

main.addEventListener("click", async (event) => {
  const button = event.target.closest("button[data-do]");
  if (button === null) return;
  const told = await sentJson("work", button.dataset.do);
  if (told === null) return;
  show(told);
  if (told.stage === "busy") watch();
});

document.addEventListener("click", (event) => {
  const button = event.target.closest("button[data-step]");
  if (button !== null) take({ step: button.dataset.step });
});

document.addEventListener("keydown", (event) => {
  if (!(event.ctrlKey || event.metaKey) || event.altKey || event.target.matches("input[type=text], textarea")) return;
  // What is taken back there is what was tried.
  if (main.dataset.screen === "try") return;
  const key = event.key.toLowerCase();
  const back = key === "z" && !event.shiftKey;
  const again = key === "y" || (key === "z" && event.shiftKey);
  const button = back ? at("undo") : again ? at("redo") : null;
  if ((button ?? null) === null || button.disabled) return;
  event.preventDefault();
  button.click();
});

/** Begins once all that waits for an answer is there: a quick one would come before it. */
export async function begin() {
  lookAt(main);
  setInterval(look, LOOK);
  document.addEventListener("visibilitychange", look);
  const wasBusy = seen.stage === "busy";
  const begun = await asked("stage");
  if (!begun?.ok) return;
  show(await begun.json());
  if (wasBusy || seen.stage === "busy") watch();
}
