// A piece tried elsewhere: by keys, by figures, by pointer; what that breaks is told as it moves.
import { main, on, sentJson } from "./room.js";

const SVG = "http://www.w3.org/2000/svg";
const STEP = 10;
const FAR = 100;
const QUARTER = 90;
const at = (id) => document.getElementById(id);
let room = null;
let key = "";
let asking = false;
let wanted = false;
let drag = null;

const made = (name, attributes, ...children) => {
  const element = document.createElementNS(SVG, name);
  for (const [attribute, value] of Object.entries(attributes)) element.setAttribute(attribute, value);
  element.append(...children);
  return element;
};
const html = (name, attributes, ...children) => {
  const element = document.createElement(name);
  Object.assign(element, attributes);
  element.append(...children);
  return element;
};
const points = (ring) => ring.map((place) => place.join(",")).join(" ");
const rounded = (figure) => Math.round(figure * 10) / 10;
// Places are kept in mm, and told and typed in the unit that the page is read in, to what a tape shows.
const told = (length) => Number((length / room.unit.mm).toFixed({ mm: 0, cm: 1, m: 3 }[room.unit.sign] ?? 2));

async function ask(path, body) {
  const told = await sentJson(path, body);
  if (told === null || told.pieces === undefined) return told;
  room = told;
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
    await ask("judge", { key, before: room.before, pieces: room.pieces });
  }
  asking = false;
}

function move(piece, across, down) {
  piece.x += across;
  piece.y += down;
  piece.moved = true;
  piece.wall = null;
  for (const part of piece.parts) for (const place of part) { place[0] += across; place[1] += down; }
  draw();
  judge();
}

function draw() {
  drawPlan();
  drawList();
  at("trial-score").textContent = room.score;
  const side = at("trial-told");
  const sound = room.broken.length === 0;
  const lines = (texts) => html("ul", {}, ...texts.map((text) => html("li", {}, text)));
  const heading = html("h3", {}, sound ? side.dataset.sound : side.dataset.broken);
  const next = [heading, ...(sound ? [] : [lines(room.broken.map((breach) => breach.told))]), lines(room.ways)];
  const text = next.map((element) => element.textContent).join("");
  if (side.textContent !== text) side.replaceChildren(...next);
}

function drawPlan() {
  const figure = at("trial-plan");
  const broken = new Set(room.broken.flatMap((breach) => breach.pieces));
  let svg = figure.querySelector("svg");
  if (svg === null) {
    const xs = room.outline.map((place) => place[0]);
    const ys = room.outline.map((place) => place[1]);
    const [left, top] = [Math.min(...xs) - 200, Math.min(...ys) - 200];
    const [wide, high] = [Math.max(...xs) + 200 - left, Math.max(...ys) + 200 - top];
    svg = made("svg", { viewBox: `${left} ${top} ${wide} ${high}`, role: "group", "aria-label": at("h-trial").textContent });
    svg.append(made("polygon", { class: "floor", points: points(room.outline) }));
    for (const fixed of room.fixed) svg.append(made("polygon", { class: "fixed", points: points(fixed) }));
    for (const item of room.items) svg.append(made("polyline", { class: "held", points: points(item) }));
    figure.replaceChildren(svg);
  }
  const size = Number(svg.getAttribute("viewBox").split(" ")[2]) / 36;
  for (const piece of room.pieces) {
    let group = svg.querySelector(`[data-piece="${piece.piece}"]`);
    if (group === null) {
      group = made("g", { "data-piece": piece.piece, id: `piece-${piece.piece}`, tabindex: "0", role: "button" });
      svg.append(group);
    }
    group.setAttribute("class", ["piece", piece.moved ? "moved" : "", broken.has(piece.piece) ? "broken" : ""].join(" ").trim());
    group.setAttribute("aria-label", `${piece.name}: ${told(piece.x)}, ${told(piece.y)} ${room.unit.sign}`);
    const corners = piece.parts.flat();
    const middle = [0, 1].map((axis) => corners.reduce((sum, place) => sum + place[axis], 0) / corners.length);
    group.replaceChildren(
      ...piece.parts.map((part) => made("polygon", { points: points(part) })),
      made("text", { x: middle[0], y: middle[1], "font-size": size, "text-anchor": "middle" }, piece.name),
    );
  }
}

// A row of figures for each piece, made once and filled anew; what somebody types in is left alone.
function drawList() {
  const list = at("trial-pieces");
  const { across, down, faces } = list.dataset;
  for (const piece of room.pieces) {
    let row = at(`row-${piece.piece}`);
    if (row === null) {
      const field = (what, label) => {
        const id = `${what}-${piece.piece}`;
        const input = html("input", { type: "text", id, inputMode: "decimal", autocomplete: "off" });
        input.dataset.what = what;
        input.dataset.of = piece.piece;
        return html("div", { className: "field" }, html("label", { htmlFor: id }, label), input);
      };
      row = html("fieldset", { className: "card", id: `row-${piece.piece}` }, html("legend", {}, piece.name),
        html("div", { className: "fields" }, field("x", `${across}, ${room.unit.sign}`), field("y", `${down}, ${room.unit.sign}`), field("facing", faces)));
      list.append(row);
    }
    for (const what of ["x", "y", "facing"]) {
      const input = at(`${what}-${piece.piece}`);
      if (input !== document.activeElement) input.value = String(what === "facing" ? rounded(piece[what]) : told(piece[what]));
    }
  }
}

const pieceOf = (element) => {
  const group = element?.closest?.("[data-piece]");
  return group === null || group === undefined ? null : room?.pieces.find((piece) => String(piece.piece) === group.dataset.piece);
};

async function turn(piece, to) {
  piece.facing = ((to % 360) + 360) % 360;
  piece.moved = true;
  piece.wall = null;
  await judge();
}

main.addEventListener("keydown", (event) => {
  const piece = pieceOf(event.target);
  if (!piece || event.ctrlKey || event.metaKey || event.altKey) return;
  const by = event.shiftKey ? FAR : STEP;
  const ways = { ArrowLeft: [-by, 0], ArrowRight: [by, 0], ArrowUp: [0, -by], ArrowDown: [0, by] };
  if (ways[event.key] !== undefined) {
    event.preventDefault();
    move(piece, ...ways[event.key]);
  } else if (event.key.toLowerCase() === "t") {
    turn(piece, piece.facing + QUARTER);
  }
});

main.addEventListener("change", (event) => {
  const { what, of } = event.target.dataset;
  const piece = room?.pieces.find((piece) => String(piece.piece) === of);
  const figure = Number(event.target.value);
  if (what === undefined || piece === undefined || !Number.isFinite(figure)) return;
  if (what === "facing") turn(piece, figure);
  else move(piece, what === "x" ? figure * room.unit.mm - piece.x : 0, what === "y" ? figure * room.unit.mm - piece.y : 0);
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
  drag = { piece: piece.piece, from: placeOf(event) };
  at("trial-plan").setPointerCapture(event.pointerId);
});

main.addEventListener("pointermove", (event) => {
  if (drag === null) return;
  const piece = room.pieces.find((piece) => piece.piece === drag.piece);
  const place = placeOf(event);
  const by = [0, 1].map((axis) => Math.round((place[axis] - drag.from[axis]) / STEP) * STEP);
  if (piece === undefined || (by[0] === 0 && by[1] === 0)) return;
  drag.from = [drag.from[0] + by[0], drag.from[1] + by[1]];
  move(piece, ...by);
});

for (const ended of ["pointerup", "pointercancel"]) main.addEventListener(ended, () => { drag = null; });

main.addEventListener("click", async (event) => {
  if (event.target.id === "trial-back") await ask("judge", { key });
  if (event.target.id === "trial-settle") {
    event.target.disabled = true;
    const told = await ask("settle", { key, before: room.before, pieces: room.pieces });
    event.target.disabled = false;
    if (told?.told) at("trial-score").textContent = `${told.told} ${told.pieces ? room.score : ""}`.trim();
  }
});

async function begin() {
  const trial = at("trial");
  if (trial === null || (trial.dataset.key === key && room !== null && at("trial-plan").firstChild !== null)) return;
  key = trial.dataset.key;
  room = null;
  await ask("judge", { key });
}

on("solved", begin);
await begin();
