// The plan on which pieces are tried: the room as it is, what is on its walls, the pieces to move.
import { told } from "./trial-rows.js";

const SVG = "http://www.w3.org/2000/svg";
// Letters, px on the screen, and how wide one is of that.
const LETTERS = 12.5;
const WIDE = 0.56;
// Room for the names of walls round the floor, letters.
const MARGIN = 2.4;

const made = (name, attributes, ...children) => {
  const element = document.createElementNS(SVG, name);
  for (const [attribute, value] of Object.entries(attributes)) element.setAttribute(attribute, value);
  element.append(...children);
  return element;
};
const points = (ring) => ring.map((place) => place.join(",")).join(" ");
const extent = (places, axis) => {
  const all = places.map((place) => place[axis]);
  return [Math.min(...all), Math.max(...all)];
};

// How large a letter is in the room, so that it is as large on the screen whatever the room and the screen.
function letters(figure, wide, high) {
  const margins = 2 * MARGIN * LETTERS;
  const most = Number.parseFloat(getComputedStyle(figure).getPropertyValue("--most")) || 0.75;
  const px = Math.max(wide / Math.max(figure.clientWidth - margins, 120), high / Math.max(innerHeight * most - margins, 120));
  return px * LETTERS;
}

function wallName(wall, size) {
  const [[x1, y1], [x2, y2]] = wall.ends;
  const length = Math.hypot(x2 - x1, y2 - y1);
  if (length === 0 || wall.name.length * size * WIDE > length * 1.1) return null;
  // Walls run clockwise: outside lies to the left.
  const [across, down] = [(y2 - y1) / length, -(x2 - x1) / length];
  const [x, y] = [(x1 + x2) / 2 + across * size * 1.1, (y1 + y2) / 2 + down * size * 1.1];
  const angle = Math.atan2(y2 - y1, x2 - x1) * 180 / Math.PI;
  const upright = angle > 90.5 || angle < -90.5 ? angle + 180 : angle;
  return made("text", { class: "wall-name", x, y, "font-size": size, "text-anchor": "middle", "dominant-baseline": "central", transform: `rotate(${upright} ${x} ${y})` }, wall.name);
}

function ground(room, size) {
  const margin = MARGIN * size;
  const [left, right] = extent(room.outline, 0);
  const [top, bottom] = extent(room.outline, 1);
  const view = [left - margin, top - margin, right - left + 2 * margin, bottom - top + 2 * margin];
  const svg = made("svg", { viewBox: view.join(" "), role: "group", class: "outline", "font-size": size, "aria-label": document.getElementById("h-trial").textContent });
  const line = (ring, of) => made(ring.length > 2 ? "polygon" : "polyline", { class: of, points: points(ring), "vector-effect": "non-scaling-stroke" });
  svg.append(line(room.outline, "floor"));
  for (const fixed of room.fixed) svg.append(line(fixed, "fixed"));
  for (const swing of room.swings) svg.append(line(swing, "swing"));
  for (const item of room.items) svg.append(line(item.ends, item.kind));
  for (const wall of room.walls) svg.append(wallName(wall, size) ?? "");
  return svg;
}

// The name in as many lines as there is room for, or else the piece's number.
function lines(piece, wide, high, size) {
  const most = Math.floor(wide / (size * WIDE));
  const found = [];
  for (const word of piece.name.split(" ")) {
    const line = found.at(-1);
    if (line !== undefined && line.length + 1 + word.length <= most) found[found.length - 1] = `${line} ${word}`;
    else found.push(word);
  }
  const fits = found.every((line) => line.length <= most) && found.length * size * 1.15 <= high;
  return fits ? found : [String(piece.number)];
}

function drawPiece(group, piece, size, unit) {
  // A corner sofa has its name on its main run.
  const main = piece.parts[0];
  const [[left, right], [top, bottom]] = [extent(main, 0), extent(main, 1)];
  const [x, y] = [(left + right) / 2, (top + bottom) / 2];
  const texts = lines(piece, right - left, bottom - top, size);
  const text = made("text", { "font-size": size, "text-anchor": "middle", "dominant-baseline": "central" });
  texts.forEach((line, place) => text.append(made("tspan", { x, y: y + (place - (texts.length - 1) / 2) * size * 1.15 }, place < texts.length - 1 ? `${line} ` : line)));
  group.setAttribute("aria-label", `${piece.number}. ${piece.name}: ${told(piece.x, unit)}, ${told(piece.y, unit)} ${unit.sign}`);
  group.replaceChildren(...piece.parts.map((part) => made("polygon", { points: points(part) })), text);
}

/** Draws the room; what is under comes first, what hangs last. */
export function drawPlan(figure, room) {
  const broken = new Set(room.broken.flatMap((breach) => breach.pieces));
  const [wide, high] = [0, 1].map((axis) => extent(room.outline, axis)).map(([least, most]) => most - least);
  const size = letters(figure, wide, high);
  room.pieces.forEach((piece, place) => { piece.number = place + 1; });
  const names = room.pieces.map((piece) => piece.piece).join(" ");
  let svg = figure.querySelector("svg");
  const active = document.activeElement?.id;
  if (svg === null || Number(figure.dataset.size) !== size || figure.dataset.pieces !== names) {
    svg = ground(room, size);
    const order = [...room.pieces].sort((one, other) => one.level - other.level);
    for (const piece of order) svg.append(made("g", { "data-piece": piece.piece, id: `piece-${piece.piece}`, tabindex: "0", role: "button" }));
    figure.replaceChildren(svg);
    Object.assign(figure.dataset, { size, pieces: names });
    if (active?.startsWith("piece-")) document.getElementById(active)?.focus({ preventScroll: true });
  }
  for (const piece of room.pieces) {
    const group = svg.querySelector(`[data-piece="${piece.piece}"]`);
    group.setAttribute("class", ["piece", piece.moved ? "moved" : "", broken.has(piece.piece) ? "broken" : ""].join(" ").trim());
    drawPiece(group, piece, size, room.unit);
  }
}
