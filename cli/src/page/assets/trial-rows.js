// The figures of each tried piece: where it stands, which way it faces, how large it is.
const at = (id) => document.getElementById(id);

/** An element of the page. */
export const html = (name, attributes, ...children) => {
  const element = document.createElement(name);
  Object.assign(element, attributes);
  element.append(...children);
  return element;
};

const SIZES = ["width", "depth", "return", "second_return", "return_depth"];
const rounded = (figure) => Math.round(figure * 10) / 10;

/** A length in the unit that the page is read in, to what a tape shows: lengths are kept in mm. */
export const told = (length, unit) => Number((length / unit.mm).toFixed({ mm: 0, cm: 1, m: 3 }[unit.sign] ?? 2));

/** What is wrong with a field, at the field; nothing where all is well. */
export function fault(input, sentence) {
  const id = `fault-of-${input.id}`;
  at(id)?.remove();
  if (sentence === "") {
    input.removeAttribute("aria-invalid");
    input.removeAttribute("aria-describedby");
    return;
  }
  input.setAttribute("aria-invalid", "true");
  input.setAttribute("aria-describedby", id);
  const line = html("p", { className: "fault", id }, sentence);
  line.setAttribute("role", "alert");
  input.after(line);
}

function row(piece, list, unit) {
  const words = list.dataset;
  const field = (what, label) => {
    const id = `${what}-${piece.piece}`;
    const input = html("input", { type: "text", id, autocomplete: "off" });
    Object.assign(input.dataset, { what, of: piece.piece });
    return html("div", { className: "field" }, html("label", { htmlFor: id }, label), input);
  };
  const turning = (by, label) => {
    const button = html("button", { type: "button", id: `turn-${by}-${piece.piece}` }, label);
    button.setAttribute("aria-label", `${piece.name}: ${label}`);
    Object.assign(button.dataset, { turnBy: by, of: piece.piece });
    return button;
  };
  const sizes = SIZES.filter((what) => piece[what] !== null).map((what) => field(what, `${words[what]}, ${unit.sign}`));
  return html("fieldset", { className: "card", id: `row-${piece.piece}` }, html("legend", {}, `${piece.number}. ${piece.name}`),
    html("div", { className: "fields" }, field("x", `${words.across}, ${unit.sign}`), field("y", `${words.down}, ${unit.sign}`), ...sizes, field("facing", words.faces)),
    html("div", { className: "turn" }, turning(90, words.turnLeft), turning(-90, words.turnRight)));
}

/** A row of figures for each piece, made once and filled anew; what somebody types in is left alone. */
export function drawRows(list, room) {
  const known = new Set(room.pieces.map((piece) => `row-${piece.piece}`));
  for (const old of [...list.children]) if (!known.has(old.id)) old.remove();
  for (const piece of room.pieces) {
    if (at(`row-${piece.piece}`) === null) list.append(row(piece, list, room.unit));
    for (const what of ["x", "y", "facing", ...SIZES]) {
      const input = at(`${what}-${piece.piece}`);
      if (input === null || input === document.activeElement || input.hasAttribute("aria-invalid")) continue;
      input.value = String(what === "facing" ? rounded(piece[what]) : told(piece[what], room.unit));
    }
  }
}
