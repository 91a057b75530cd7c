// A piece tried elsewhere: by keys, by figures, by pointer; what that breaks is told as it moves.
import { main, on, sentJson, take } from "./room.js";
import { drawPlan } from "./trial-plan.js";
import { drawRows, fault, html } from "./trial-rows.js";

const STEP = 10;
const FAR = 100;
const QUARTER = 90;
// Keys pressed in so short a time are one move to take back, ms.
const ONE_MOVE = 700;
const at = (id) => document.getElementById(id);
let room = null;
let key = "";
// Rises with each edit: what comes back knows of no later one.
let edits = 0;
// Rises where all pieces are put elsewhere at once: what was asked for before that is of no more use.
let era = 0;
let asking = false;
let wanted = false;
let drag = null;
let drags = 0;
let kept = false;
let last = { tag: "", time: 0 };
const before = [];
const after = [];

const state = () => ({ pieces: structuredClone(room.pieces), stands: room.stands, base: room.base });

/** Keeps how the pieces stand, so that what comes next can be taken back; moves of one tag in a row are one. */
function remember(tag) {
  const now = performance.now();
  const goes = tag !== "" && tag === last.tag && (tag.startsWith("drag") || now - last.time < ONE_MOVE);
  last = { tag, time: now };
  if (goes) return;
  before.push(state());
  after.length = 0;
}

function back(from, to) {
  const next = from.pop();
  if (next === undefined || room === null) return;
  to.push(state());
  last = { tag: "", time: 0 };
  era += 1;
  edits += 1;
  Object.assign(room, { stands: next.stands, base: next.base });
  room.pieces = next.pieces.map((piece) => ({ ...piece, edit: edits }));
  note("");
  draw();
  judge();
}

function note(text) {
  const line = at("trial-note");
  if (line !== null && line.textContent !== text) line.textContent = text;
}

// What somebody did since it was asked for is newer than what comes back.
async function ask(path, body) {
  const [sent, since] = [edits, era];
  const told = await sentJson(path, body);
  if (told === null || told.pieces === undefined || since !== era) return told;
  const newer = new Map((room?.pieces ?? []).filter((piece) => piece.edit > sent).map((piece) => [piece.piece, piece]));
  told.pieces = told.pieces.map((piece) => newer.get(piece.piece) ?? piece);
  room = { stands: body.stands ?? false, base: body.base, ...told };
  draw();
  return told;
}

// The last place counts: what was asked for meanwhile is asked once more.
async function judge() {
  wanted = true;
  if (asking) return;
  asking = true;
  while (wanted) {
    wanted = false;
    const { before, stands, base, pieces } = room;
    await ask("judge", { key, before, stands, base, pieces });
  }
  asking = false;
}

function edit(piece, tag, how) {
  remember(tag);
  how(piece);
  edits += 1;
  Object.assign(piece, { moved: true, wall: null, edit: edits });
  note("");
  draw();
  judge();
}

const move = (piece, across, down, tag) => edit(piece, tag, () => {
  piece.x += across;
  piece.y += down;
  for (const part of piece.parts) for (const place of part) { place[0] += across; place[1] += down; }
});

const turn = (piece, to) => edit(piece, "", () => { piece.facing = ((to % 360) + 360) % 360; });

const size = (piece, what, to, tag) => edit(piece, tag, () => {
  piece[what] = Math.max(STEP, to);
  piece.sized = true;
});

function draw() {
  drawPlan(at("trial-plan"), room);
  drawRows(at("trial-pieces"), room);
  at("trial-score").textContent = room.score;
  const side = at("trial-told");
  const sound = room.broken.length === 0;
  const lines = (texts) => html("ul", {}, ...texts.map((text) => html("li", {}, text)));
  const heading = html("h3", {}, sound ? side.dataset.sound : side.dataset.broken);
  const next = [heading, ...(sound ? [] : [lines(room.broken.map((breach) => breach.told))]), lines(room.ways)];
  const text = next.map((element) => element.textContent).join("");
  if (side.textContent !== text) side.replaceChildren(...next);
  at("trial-undo").disabled = before.length === 0;
  at("trial-redo").disabled = after.length === 0;
}

const pieceOf = (element) => {
  const group = element?.closest?.("[data-piece]");
  return group === null || group === undefined ? null : room?.pieces.find((piece) => String(piece.piece) === group.dataset.piece);
};

main.addEventListener("keydown", (event) => {
  const piece = pieceOf(event.target);
  if (!piece || event.ctrlKey || event.metaKey || event.altKey) return;
  const by = event.shiftKey ? FAR : STEP;
  const ways = { ArrowLeft: [-by, 0], ArrowRight: [by, 0], ArrowUp: [0, -by], ArrowDown: [0, by] };
  const sizes = { w: ["width", by], n: ["width", -by], d: ["depth", by], s: ["depth", -by] };
  const pressed = event.key.toLowerCase();
  if (ways[event.key] !== undefined) {
    event.preventDefault();
    move(piece, ...ways[event.key], `move ${piece.piece}`);
  } else if (pressed === "t") {
    turn(piece, piece.facing + (event.shiftKey ? -QUARTER : QUARTER));
  } else if (sizes[pressed] !== undefined) {
    const [what, more] = sizes[pressed];
    size(piece, what, piece[what] + more, `${what} ${piece.piece}`);
  }
});

// What is undone here is what was tried: the file has its own buttons.
document.addEventListener("keydown", (event) => {
  if (!(event.ctrlKey || event.metaKey) || event.altKey || event.target.matches("input[type=text]") || at("trial") === null) return;
  const pressed = event.key.toLowerCase();
  if (pressed !== "z" && pressed !== "y") return;
  event.preventDefault();
  if (pressed === "z" && !event.shiftKey) back(before, after);
  else back(after, before);
});

// A figure is read in any unit, by the program that reads the file.
async function typed(input, piece, what) {
  const text = input.value.trim();
  if (text === "") {
    fault(input, "");
    return draw();
  }
  if (what === "facing") {
    const degrees = Number(text.replace(/\s*°$/, ""));
    if (!Number.isFinite(degrees) || Math.abs(degrees) > 360) return fault(input, `${text}: ${at("trial-pieces").dataset.noAngle}`);
    fault(input, "");
    return turn(piece, degrees);
  }
  const asked = new URLSearchParams({ text, ...(["x", "y"].includes(what) ? {} : { size: "1" }) });
  const told = await sentJson(`length?${asked}`);
  if (told === null) return undefined;
  fault(input, told.told ?? "");
  const now = room.pieces.find((one) => one.piece === piece.piece);
  if (told.mm === undefined || now === undefined) return undefined;
  if (what === "x") return move(now, told.mm - now.x, 0, "");
  if (what === "y") return move(now, 0, told.mm - now.y, "");
  return size(now, what, told.mm, "");
}

main.addEventListener("change", (event) => {
  const { what, of } = event.target.dataset;
  const piece = room?.pieces.find((piece) => String(piece.piece) === of);
  if (what !== undefined && piece !== undefined) typed(event.target, piece, what);
});

const placeOf = (event) => {
  const svg = at("trial-plan").querySelector("svg");
  const place = new DOMPoint(event.clientX, event.clientY).matrixTransform(svg.getScreenCTM().inverse());
  return [place.x, place.y];
};

main.addEventListener("pointerdown", (event) => {
  const piece = pieceOf(event.target);
  if (!piece) return;
  event.preventDefault();
  at(`piece-${piece.piece}`).focus({ preventScroll: true });
  drags += 1;
  drag = { piece: piece.piece, from: placeOf(event), tag: `drag ${drags}` };
  at("trial-plan").setPointerCapture(event.pointerId);
});

main.addEventListener("pointermove", (event) => {
  if (drag === null) return;
  const piece = room.pieces.find((piece) => piece.piece === drag.piece);
  const place = placeOf(event);
  const by = [0, 1].map((axis) => Math.round((place[axis] - drag.from[axis]) / STEP) * STEP);
  if (piece === undefined || (by[0] === 0 && by[1] === 0)) return;
  drag.from = [drag.from[0] + by[0], drag.from[1] + by[1]];
  move(piece, ...by, drag.tag);
});

for (const ended of ["pointerup", "pointercancel"]) main.addEventListener(ended, () => { drag = null; });

// All pieces elsewhere at once.
async function all(path, body) {
  const was = state();
  era += 1;
  const told = await ask(path, body);
  if (told?.pieces !== undefined) {
    before.push(was);
    after.length = 0;
    last = { tag: "", time: 0 };
    draw();
  }
  note(told?.told ?? "");
}

// The file then says where each piece stands; a step as any other, so that it can be taken back.
async function keep() {
  const told = await sentJson("keep", { key, pieces: room.pieces });
  if (told?.changes === undefined) return note(told?.told ?? "");
  if (told.changes.length > 0) {
    kept = true;
    kept = await take({ changes: told.changes });
  }
  return undefined;
}

const buttons = {
  "trial-undo": () => back(before, after),
  "trial-redo": () => back(after, before),
  "trial-back": () => all("judge", { key }),
  "trial-stands": () => all("judge", { key, before: room.before, stands: true }),
  "trial-settle": () => all("settle", { key, before: room.before, pieces: room.pieces }),
  "trial-keep": keep,
};

main.addEventListener("click", async (event) => {
  const button = event.target.closest("button");
  const { turnBy, of } = button?.dataset ?? {};
  const piece = room?.pieces.find((piece) => String(piece.piece) === of);
  if (turnBy !== undefined && piece !== undefined) turn(piece, piece.facing + Number(turnBy));
  const does = buttons[button?.id];
  if (does === undefined || room === null || button.getAttribute("aria-busy") === "true") return;
  // It keeps the keyboard while it works.
  button.setAttribute("aria-busy", "true");
  await does();
  button.removeAttribute("aria-busy");
});

addEventListener("resize", () => { if (room !== null && at("trial-plan") !== null) draw(); });

async function begin() {
  const trial = at("trial");
  if (trial === null || (trial.dataset.key === key && room !== null && at("trial-plan").firstChild !== null)) return;
  key = trial.dataset.key;
  room = null;
  era += 1;
  before.length = 0;
  after.length = 0;
  await ask("judge", { key });
  if (kept && at("trial-note") !== null) note(at("trial-note").dataset.kept);
  kept = false;
}

on("solved", begin);
await begin();
