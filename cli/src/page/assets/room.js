// A room: steps are sent one after another, the work is watched, parts are put in place of old ones.
export const main = document.getElementById("main");
export const root = `/room/${main.dataset.room}`;
const at = (id) => document.getElementById(id);
const state = at("state");
const saved = at("saved");
const amiss = at("amiss");
const line = at("line");
const plans = new Map();
const hooks = { stepped: [], solved: [] };
let step = Number(main.dataset.atStep);
let faults = [];
let watching = false;
let sent = Promise.resolve();
export const seen = { stage: state.dataset.stage };

/** Has something done once a step is saved, or once there is a new answer. */
export const on = (what, hook) => hooks[what].push(hook);

/** What parts are asked for by, beside their path. */
export const query = new URLSearchParams(location.search);
query.set("at", main.dataset.wall);

/** Pins an option, or takes its pin off, in this address and in those of the other screens. */
export function pin(key) {
  const pins = query.getAll("pin");
  query.delete("pin");
  for (const known of pins.filter((known) => known !== key)) query.append("pin", known);
  if (!pins.includes(key)) query.append("pin", key);
  const here = new URLSearchParams(query);
  here.delete("at");
  history.replaceState(null, "", `?${here}`);
  for (const link of document.querySelectorAll(".head nav a")) {
    const url = new URL(link.href);
    url.searchParams.delete("pin");
    for (const known of query.getAll("pin")) url.searchParams.append("pin", known);
    link.href = url.href;
  }
}

function tell(sentence, look = false) {
  amiss.replaceChildren(sentence);
  amiss.hidden = sentence === "";
  if (look) {
    const button = document.createElement("button");
    button.type = "button";
    button.textContent = amiss.dataset.show;
    button.addEventListener("click", () => location.reload());
    amiss.append(" ", button);
  }
}

async function asked(path, options) {
  try {
    return await fetch(`${root}/${path}`, options);
  } catch {
    tell(amiss.dataset.gone);
    return null;
  }
}

/** Sends what a script asks for, and hands back what comes of it; null where that is nothing. */
export async function sentJson(path, body) {
  const reply = await asked(path, { method: "POST", body: typeof body === "string" ? body : JSON.stringify(body) });
  if (reply === null) return null;
  const value = await reply.json().catch(() => null);
  if (reply.ok) return value;
  tell(value?.told ?? amiss.dataset.gone, value?.look ?? false);
  return null;
}

/** Takes a step: changes, or one taken back or again. Steps wait for each other. */
export function take(body) {
  sent = sent.then(async () => {
    const was = saved.textContent;
    saved.textContent = saved.dataset.saving;
    const told = await sentJson("step", { from: step, ...body });
    saved.textContent = was;
    if (told === null) return;
    tell("");
    show(told);
    for (const hook of hooks.stepped) await hook(body);
    if (told.stage === "busy") watch();
    else await solved();
  });
  return sent;
}

function show(told) {
  step = told.step;
  seen.stage = told.stage;
  state.dataset.stage = told.stage;
  if (line.textContent !== told.line) line.textContent = told.line;
  at("progress").hidden = told.stage !== "busy";
  // Whoever may only look has none of these.
  if (at("stop") !== null) {
    at("stop").hidden = told.stage !== "busy";
    at("go-on").hidden = told.stage !== "stopped" && told.stage !== "failed";
    at("undo").disabled = !told.can[0];
    at("redo").disabled = !told.can[1];
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
  for (const old of document.querySelectorAll(".fault")) old.remove();
  for (const field of document.querySelectorAll("[aria-invalid]")) {
    field.removeAttribute("aria-invalid");
    const hint = (field.getAttribute("aria-describedby") ?? "").split(" ").filter((id) => !id.startsWith("fault-")).join(" ");
    if (hint === "") field.removeAttribute("aria-describedby");
    else field.setAttribute("aria-describedby", hint);
  }
  faults.forEach((fault, place) => {
    const field = fault.at === "" ? null : at(fault.at);
    if (field === null || !field.matches("input, select")) return;
    const told = document.createElement("p");
    told.className = "fault";
    told.id = `fault-${place}`;
    told.textContent = `${fault.message} ${fault.remedy}`;
    field.setAttribute("aria-invalid", "true");
    field.setAttribute("aria-describedby", `${field.getAttribute("aria-describedby") ?? ""} ${told.id}`.trim());
    field.after(told);
  });
}

async function watch() {
  if (watching) return;
  watching = true;
  while (seen.stage === "busy") {
    const reply = await asked("stage");
    if (reply === null || !reply.ok) break;
    const told = await reply.json();
    // A step that was taken meanwhile knows better.
    if (told.step < step) continue;
    show(told);
  }
  watching = false;
  await solved();
}

async function solved() {
  for (const hook of hooks.solved) await hook();
}

/** Puts a part in the place of an old one; who types in it goes on typing. */
export async function put(element, part) {
  const reply = await asked(`part/${part}?${query}`);
  if (reply === null || !reply.ok) return;
  const html = await reply.text();
  const active = element.contains(document.activeElement) ? document.activeElement : null;
  const typed = active?.matches("input[type=text]") && active.value !== active.defaultValue ? active.value : null;
  const caret = active?.matches("input[type=text]") ? [active.selectionStart, active.selectionEnd] : null;
  const open = [...element.querySelectorAll("details[open][id]")].map((details) => details.id);
  element.innerHTML = html;
  for (const id of open) at(id)?.setAttribute("open", "");
  if (active?.id) {
    const again = at(active.id);
    again?.focus({ preventScroll: true });
    if (again !== null && typed !== null) again.value = typed;
    if (again !== null && caret !== null && again.matches("input[type=text]")) again.setSelectionRange(...caret);
  }
  showFaults();
  lookAt(element);
}

// Plans are drawn once they come into sight, and kept.
const sight = new IntersectionObserver((entries) => {
  for (const entry of entries.filter((entry) => entry.isIntersecting)) {
    sight.unobserve(entry.target);
    draw(entry.target);
  }
}, { rootMargin: "300px" });

async function draw(figure) {
  const { plan, of } = figure.dataset;
  const name = `${of} ${plan}`;
  if (!plans.has(name)) {
    const reply = await asked(`plan?${new URLSearchParams({ option: plan })}`);
    if (reply === null || !reply.ok) return;
    plans.set(name, await reply.text());
  }
  figure.innerHTML = plans.get(name);
}

function lookAt(element) {
  for (const figure of element.querySelectorAll("figure[data-plan]")) {
    const known = plans.get(`${figure.dataset.of} ${figure.dataset.plan}`);
    if (known === undefined) sight.observe(figure);
    else figure.innerHTML = known;
  }
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
  if (!(event.ctrlKey || event.metaKey) || event.altKey || event.target.matches("input[type=text]")) return;
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
  const wasBusy = seen.stage === "busy";
  const begun = await asked("stage");
  if (!begun?.ok) return;
  show(await begun.json());
  if (wasBusy || seen.stage === "busy") watch();
}
