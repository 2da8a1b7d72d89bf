// The program's own page of a result, in a frame: it keeps its style, its places and its paper.

// What a reader did to a node, or was told of it here, not the page: it stays.
const of_the_reader = ["open", "tabindex", "data-note"];

function take_attributes(here, there) {
  for (const { name, value } of there.attributes) if (here.getAttribute(name) !== value) here.setAttribute(name, value);
  for (const { name } of [...here.attributes]) {
    if (!there.hasAttribute(name) && !of_the_reader.includes(name)) here.removeAttribute(name);
  }
}

// Gives a node the children of another. What is the same is left alone, so that little is laid out anew.
function take_children(here, there) {
  const mine = [...here.childNodes];
  const theirs = [...there.childNodes];
  theirs.forEach((one, index) => {
    const own = mine[index];
    if (!own) here.append(one);
    else if (own.nodeName !== one.nodeName || own.type !== one.type) own.replaceWith(one);
    else if (own.nodeType !== Node.ELEMENT_NODE) { if (own.data !== one.data) own.data = one.data; }
    else if (!own.isEqualNode(one)) { take_attributes(own, one); take_children(own, one); }
  });
  mine.slice(theirs.length).forEach((one) => one.remove());
}

// The program's page is known by its marks: what a file says never is one of them, it is escaped.
const between = (html, begin, end) => html.slice(html.indexOf(begin) + begin.length, html.indexOf(end));
const style_of = (html) => html.match(/<style>[^]*?<\/style>/g)?.join("") ?? "";

// What stands above the first section, each section, and what stands below: one element each.
const pieces_of = (html) => between(html, "<main>", "</main>").split(/(?=<section[ >])|(?=<footer>)/);

function made_of(piece) {
  const place = document.createElement("template");
  place.innerHTML = piece;
  return place.content.firstElementChild;
}

// The boxes and blanks of a ticket take ticks and figures. Each is known by its table, its row and what
// it is.
function open_for_writing(part) {
  for (const cell of part.querySelectorAll("td.box, td.blank")) {
    const row = cell.closest("tr");
    const before = [...row.children].slice(0, [...row.children].indexOf(cell)).reverse();
    const name = (before.find((one) => one.textContent)?.textContent ??
                  row.previousElementSibling?.firstElementChild?.textContent ?? "").trim();
    const of_row = row.querySelector("th")?.textContent || name;
    const what = cell.className === "box" ? "weighed in" : cell.dataset.label || row.lastElementChild.textContent;
    const input = document.createElement("input");
    input.dataset.known = [cell.closest("table").getAttribute("aria-label"), of_row, name === of_row ? "" : name, what].join(" | ");
    input.dataset.row = of_row;
    input.setAttribute("aria-label", [...new Set([of_row, name, what])].filter(Boolean).join(", "));
    if (cell.className === "box") {
      input.type = "checkbox";
      input.style.cssText = "width:1.8rem;height:1.8rem;margin:.475rem";
      cell.dataset.label = what; // beside it on a narrow screen
    } else {
      input.autocomplete = "off";
      input.style.cssText = "font:inherit;color:inherit;background:transparent;border:0;" +
        "border-bottom:1px solid;flex:1 1 6rem;width:100%;min-width:0;max-width:14rem;min-height:2.75rem";
    }
    cell.classList.remove("box", "blank");
    cell.replaceChildren(input);
  }
}

// Keeps what is unfolded and where the reader is while figures change.
export class Result {
  constructor(frame, written) {
    this.frame = frame;
    this.written = written; // told where something was ticked or written down on a ticket
    this.style = "";
    this.html = "";
    this.pieces = new WeakMap(); // of what stands in the frame: of a page loaded anew nothing is known
    new ResizeObserver(() => this.fit()).observe(frame.parentElement);
  }

  get document() { return this.frame.contentDocument; }

  show(html, notes) {
    [this.html, this.notes] = [html, notes];
    const style = style_of(html);
    const main = this.document?.querySelector("main");
    if (style !== this.style || !main) {
      this.style = style;
      return new Promise((done) => {
        this.frame.onload = () => {
          // Something newer may have been shown meanwhile, in the page that is gone now.
          if (this.html !== html) return done(this.show(this.html, this.notes));
          this.settle(notes);
          done();
        };
        this.frame.srcdoc = html;
      });
    }
    const focused = this.document.activeElement?.dataset?.note;
    const is_ticket = Boolean(notes);
    this.document.title = made_of(`<title>${between(html, "<title>", "</title>")}</title>`).textContent;
    const pieces = pieces_of(html);
    const before = this.pieces.get(main);
    const known = before?.is_ticket === is_ticket ? before.pieces : [];
    pieces.forEach((piece, index) => {
      if (piece === known[index]) return;
      const [own, made] = [main.children[index], made_of(piece)];
      if (is_ticket) open_for_writing(made);
      if (own?.nodeName !== made.nodeName) main.insertBefore(made, own ?? null);
      else { take_attributes(own, made); take_children(own, made); }
    });
    while (main.children.length > pieces.length) main.lastElementChild.remove();
    this.pieces.set(main, { pieces, is_ticket });
    this.settle(notes);
    if (focused) this.document.querySelector(`[data-note="${CSS.escape(focused)}"]`)?.focus();
    return Promise.resolve();
  }

  settle(notes) {
    if (!this.document.body.dataset.settled) {
      this.document.body.dataset.settled = "yes";
      if (notes) open_for_writing(this.document.body);
      this.document.addEventListener("click", (event) => this.follow(event));
      this.document.addEventListener("toggle", () => this.fit(), true);
      this.document.addEventListener("input", (event) => this.note(event.target));
    }
    if (notes) this.write_down(notes);
    this.fit();
  }

  // What was ticked and written stands where it was. Of blanks that are known by the same words, each is
  // told by how many stand before it.
  write_down(notes) {
    const seen = new Map();
    for (const input of this.document.querySelectorAll("[data-known]")) {
      const { known } = input.dataset;
      const count = seen.get(known) ?? 0;
      seen.set(known, count + 1);
      const id = count ? `${known} | ${count + 1}` : known;
      if (input.dataset.note !== id) input.dataset.note = id;
      const [said, now] = input.type === "checkbox" ? ["checked", notes[id] === "yes"] : ["value", notes[id] ?? ""];
      if (input[said] !== now) input[said] = now;
    }
  }

  fit() {
    const root = this.document?.documentElement;
    if (!root?.querySelector("main")) return;
    // What the page itself takes, not what it scrolls: the frame need not be folded to measure it.
    const height = `${Math.ceil(root.getBoundingClientRect().height) + 2}px`;
    if (this.frame.style.height !== height) this.frame.style.height = height;
  }

  // A link of the headline leads to its check, unfolded.
  follow(event) {
    const link = event.target.closest("a[href^='#']");
    if (!link) return;
    event.preventDefault();
    this.go_to(link.getAttribute("href").slice(1));
  }

  go_to(id) {
    const target = this.document.getElementById(id);
    const fold = target?.closest(".folded")?.previousElementSibling;
    if (fold) { fold.open = true; this.fit(); }
    target?.scrollIntoView({ block: "center" });
    if (target) { target.tabIndex = -1; target.focus({ preventScroll: true }); }
  }

  note(input) {
    if (input.dataset.note) {
      this.written(input.dataset.note, input.type === "checkbox" ? (input.checked ? "yes" : "") : input.value.trim());
    }
  }

  // What was written beside each name of a table: {cement: "26.7 lb"}.
  noted(label) {
    const found = {};
    for (const input of this.document.querySelectorAll(`[aria-label="${label}"] input:not([type=checkbox])`)) {
      if (input.value.trim()) found[input.dataset.row] = input.value.trim();
    }
    return found;
  }

  // The headline of the page, for the strip that stays in view.
  headline() {
    const said = this.document.querySelector(".verdict");
    return said ? { words: said.firstChild.textContent.trim(), state: said.classList[1] } : null;
  }

  print() {
    this.document.documentElement.dataset.running = this.document.title; // stands above each sheet of paper
    this.frame.contentWindow.print();
  }
}
