// The form of a file, made of the engine's table of keys. It shows the keys that the file has and
// those that it must have; the others can be added. The text stays the only truth: what is typed
// here changes one place of it.

import { find, path_at, place_of, with_list, with_name, with_value, without } from "./yaml_edit.js";

const last_of = (path) => path.slice(path.lastIndexOf(".") + 1);
const words_of = (name) => name.replaceAll("_", " ");

function element(tag, properties = {}, ...children) {
  const made = document.createElement(tag);
  for (const [name, value] of Object.entries(properties)) {
    if (name in made && name !== "list") made[name] = value;
    else made.setAttribute(name, value);
  }
  made.append(...children.filter((child) => child !== null));
  return made;
}

// The keys right under a path of the table, which is gone through once.
const tables = new WeakMap();
function keys_under(keys, parent) {
  if (!tables.has(keys)) {
    const below = new Map();
    for (const key of keys) {
      const head = key.path.slice(0, Math.max(0, key.path.lastIndexOf(".")));
      if (!below.has(head)) below.set(head, []);
      if (key.path) below.get(head).push(key);
    }
    tables.set(keys, below);
  }
  return tables.get(keys).get(parent) ?? [];
}

function example_value(key, si) {
  const example = (si && key.example_si) || key.example;
  const at = example.indexOf(": ");
  return at < 0 ? "" : example.slice(at + 2).replace(/^"(.*)"$/, "$1");
}

// Those of a key's words that a code has, each with its meaning there.
function words_of_code(key, code) {
  return key.words.flatMap(([word, meaning]) => {
    const here = meaning?.split("; ").find((one) => one.startsWith(`${code}: `));
    return here ? [[word, here.slice(code.length + 2)]] : [];
  });
}

// What the form shows of a file: a tree of items, each with its path of names.
class Outline {
  constructor(keys, tree, pending) {
    this.keys = keys;
    const below = (node, name) => node?.entries?.find(([key]) => key.text === name)?.[1];
    this.code = below(below(tree, "requirements"), "code")?.text;
    this.pending = pending;
    this.top = this.section({ path: "", shape: "section" }, tree, []);
  }

  section(key, node, path) {
    const known = keys_under(this.keys, key.path);
    const named = known.find((one) => last_of(one.path) === "*");
    const entries = node?.entries ?? [];
    const kind = entries.find(([name]) => name.text === "kind")?.[1].text;
    const item = { type: "section", key, path, items: [], addable: [], named: named !== undefined };
    for (const child of known) {
      const name = last_of(child.path);
      if (name === "*") continue;
      const below = [...path, name];
      const entry = entries.find(([one]) => one.text === name);
      if (path.length === 0 && name === "boardmark" && entry?.[1].text === "1") continue; // the version
      const fits = !child.kinds.length || !kind || child.kinds.includes(kind);
      if (entry || (child.required && fits) || this.pending.has(JSON.stringify(below))) {
        item.items.push(this.child(child, entry?.[1], below));
      } else if (fits) {
        item.addable.push(child);
      }
    }
    for (const [name, value] of entries) {
      if (known.some((one) => last_of(one.path) === name.text)) continue;
      const child = named ?? { path: `${key.path}.?`, shape: "value", meaning: "", holds: "", default: "",
                               example: "", required: false, words: [], kinds: [], unknown: true };
      item.items.push({ ...this.child(child, value, [...path, name.text]), own_name: named !== undefined });
    }
    // In the order of the file; what it lacks stands behind.
    const place = ({ path: [...names] }) => {
      const index = entries.findIndex(([name]) => name.text === names.at(-1));
      return index < 0 ? entries.length : index;
    };
    item.items.sort((one, other) => place(one) - place(other));
    return item;
  }

  child(key, node, path) {
    const filled = node && node.kind !== "empty";
    if (key.shape === "section" && node?.kind !== "scalar") return this.section(key, node, path);
    if (key.shape === "table" && node?.kind !== "scalar") {
      const rows = (node?.entries ?? []).map(([name, value], index) => ({ index, name: name.text, value }));
      return { type: "table", key, path, rows };
    }
    const text = !filled ? "" : node.kind === "list" ? (node.items ?? []).map((one) => one.text ?? "").join(", ")
               : node.kind === "mapping" ? null : node.text;
    const code = key.path.includes("exposure_by_code") ? path.at(-1) : this.code;
    return { type: text === null ? "text_only" : "field", key, path, text, list: key.shape === "list",
             words: key.shape === "list" && key.words.length ? words_of_code(key, code) : [] };
  }
}

// What two outlines must share for the form to stay as it stands.
const form_of = (item) => JSON.stringify(item, (name, value) =>
  name === "text" || name === "value" ? undefined : name === "name" ? undefined
  : name === "key" ? value.path : name === "addable" ? value.map((key) => key.path) : value);

export class Form {
  // `change` is told the new text.
  constructor(root, change) {
    this.root = root;
    this.change = change;
    this.pending = new Set();
    this.shape = "";
    this.open = new Map(); // whether a section is unfolded, by its place
    root.addEventListener("input", (event) => this.typed(event.target));
    root.addEventListener("change", (event) => this.left(event.target));
    root.addEventListener("focusout", (event) => { if (event.target.isConnected) this.left(event.target); });
    root.addEventListener("click", (event) => this.clicked(event.target));
    root.addEventListener("toggle", ({ target }) => this.open.set(target.dataset.section, target.open), true);
    root.addEventListener("keydown", (event) => {
      const adds = event.key === "Enter" && event.target.matches(".more input, .more select");
      if (adds) { event.preventDefault(); event.target.closest(".more").querySelector("button").click(); }
    });
  }

  // Another file: nothing of the one before stays.
  forget() { this.pending.clear(); this.shape = ""; this.open.clear(); }

  show({ keys, text, tree, faults, file }) {
    Object.assign(this, { keys, text, tree });
    this.root.hidden = tree === null;
    if (tree === null) return;
    for (const path of [...this.pending]) {
      if (find(text, tree, JSON.parse(path))) this.pending.delete(path);
    }
    const outline = new Outline(keys, tree, this.pending).top;
    this.si = /^reporting:\s*si\b/m.test(text);
    const shape = `${this.si} ${form_of(outline)}`;
    if (shape !== this.shape) this.build(outline, shape);
    this.fill(outline);
    this.mark(faults, file);
  }

  build(outline, shape) {
    this.shape = shape;
    this.unmarked = false;
    const active = document.activeElement;
    const focused = this.root.contains(active) && active.id;
    const caret = focused && "selectionStart" in active ? active.selectionStart : null;
    this.root.replaceChildren(...outline.items.map((item) => this.made(item)), this.more(outline));
    const again = focused ? document.getElementById(focused) : null;
    if (again) {
      again.focus();
      if (caret !== null) try { again.setSelectionRange(caret, caret); } catch { /* a choice has no caret */ }
    }
  }

  id_of(path, part = "") {
    return `f-${part}${path.map((name) => encodeURIComponent(name).replace(/[%.]/g, "_")).join(".")}`;
  }

  made(item) {
    if (item.type === "section") return this.section(item);
    if (item.type === "table") return this.table(item);
    if (item.type === "text_only") {
      return this.framed(item, element("p", { className: "hint" }, "Written over several values: see the text."));
    }
    return this.field(item);
  }

  hints(item, id) {
    const { key } = item;
    const range = [key.holds && `${key.holds[0].toUpperCase()}${key.holds.slice(1)}.`,
                   key.default && `Left out: ${key.default}.`, key.required && "Required."].filter(Boolean).join(" ");
    return [element("p", { className: "hint", id: `${id}-hint` }, key.unknown ? "No key of this file." : key.meaning),
            element("p", { className: "range", id: `${id}-range` }, range),
            element("p", { className: "fault", id: `${id}-fault` })];
  }

  label_of(item) {
    const name = item.path.at(-1);
    return item.own_name ? name : words_of(name);
  }

  section(item) {
    const id = this.id_of(item.path);
    const removable = item.own_name || !item.key.required;
    const head = element("div", { className: "head" },
      item.own_name ? element("label", { className: "name" }, element("span", { className: "quiet" }, "name"),
        element("input", { id: `${id}-name`, value: item.path.at(-1), "data-name": "" })) : null,
      removable ? this.button(`Leave out ${this.label_of(item)}`, "without", "quiet") : null);
    const folds = item.path.length === 1 || item.own_name;
    const box = element("fieldset", { id, "data-path": JSON.stringify(item.path) },
      element("legend", { className: folds ? "unseen" : "" }, this.label_of(item)), head,
      ...(item.own_name ? [element("p", { className: "fault", id: `${id}-fault` })] : this.hints(item, id)),
      ...item.items.map((one) => this.made(one)), this.more(item));
    if (!folds) return box;
    const place = JSON.stringify(item.path);
    const fold = element("details", { open: this.open.get(place) ?? this.wide(), "data-section": place },
      element("summary", {}, this.label_of(item), element("span", { className: "count fault" })), box);
    return fold;
  }

  // Where there is room all sections stand open; on a phone they are a list to choose from.
  wide() { return matchMedia("(min-width: 64rem)").matches; }

  button(words, action, className = "") {
    return element("button", { type: "button", className, "data-do": action }, words);
  }

  // What may be added to a section: a key of the table, or a name of the user's.
  more(item) {
    const id = this.id_of(item.path, "more.");
    const where = item.path.length ? `to ${this.label_of(item)}` : "to the file";
    const box = element("div", { className: "more", "data-more": JSON.stringify(item.path) });
    if (item.named) {
      box.append(element("label", { htmlFor: `${id}-name` }, `Add ${where}, by a name of your own`),
                 element("input", { id: `${id}-name`, autocomplete: "off", autocapitalize: "off" }),
                 this.button("Add", "add_name"));
    }
    if (item.addable.length) {
      const choice = element("select", { id: `${id}-key` }, element("option", { value: "" }, "choose …"),
        ...item.addable.map((key) => element("option", { value: last_of(key.path) },
          `${words_of(last_of(key.path))} – ${key.meaning}`)));
      const row = element("div", { className: "more", "data-more": JSON.stringify(item.path) },
        element("label", { htmlFor: choice.id }, `Add ${where}`), choice, this.button("Add", "add_key"));
      return item.named ? element("div", {}, box, row) : row;
    }
    return item.named ? box : element("span", { hidden: true });
  }

  framed(item, control) {
    const id = this.id_of(item.path);
    return element("div", { className: "field", "data-path": JSON.stringify(item.path) },
      element("label", { htmlFor: `${id}-in` }, this.label_of(item)), control, ...this.hints(item, id));
  }

  field(item) {
    const { key } = item;
    const id = this.id_of(item.path);
    const said = `${id}-hint ${id}-range ${id}-fault`;
    const plain = (word) => word[0];
    if (key.only_words && !item.list) {
      const choice = element("select", { id: `${id}-in`, "aria-describedby": said, "data-value": "" },
        element("option", { value: "" }, key.default ? `left out: ${key.default}` : "left out"),
        ...key.words.map((word) => element("option", { value: plain(word) }, plain(word))));
      return this.framed(item, choice);
    }
    const input = element("input", { id: `${id}-in`, "aria-describedby": said, "data-value": "", autocomplete: "off",
      autocapitalize: "off", spellcheck: false, placeholder: key.unknown ? "" : `as ${example_value(key, this.si)}` });
    if (item.list) input.dataset.list = "";
    if (item.words.length) return this.with_words(item, this.framed(item, input));
    if (!key.words.length || item.list) return this.framed(item, input);
    input.setAttribute("list", `${id}-words`);
    const frame = this.framed(item, input);
    frame.append(element("datalist", { id: `${id}-words` },
      ...key.words.map(([word, meaning]) => element("option", { value: word }, meaning ?? ""))));
    return frame;
  }

  // The words of a list, each with its meaning, to tick.
  with_words(item, frame) {
    const ticks = item.words.map(([word, meaning]) => element("label", { className: "word" },
      element("input", { type: "checkbox", value: word, "data-word": "" }), element("strong", {}, word), ` ${meaning}`));
    frame.append(element("details", { "data-section": `words of ${item.path}` },
      element("summary", {}, `What the ${words_of(item.path.at(-1))} may be`), ...ticks));
    return frame;
  }

  table(item) {
    const id = this.id_of(item.path);
    const label = this.label_of(item);
    const rows = item.rows.map(({ index }) => element("div", { className: "row", "data-row": index },
      element("input", { id: `${id}-k${index}`, "data-row-key": "", "aria-label": `${label}, row ${index + 1}, of what`,
                         autocomplete: "off", autocapitalize: "off", spellcheck: false }),
      element("input", { id: `${id}-v${index}`, "data-row-value": "", "aria-label": `${label}, row ${index + 1}, how much`,
                         autocomplete: "off", autocapitalize: "off", spellcheck: false,
                         "aria-describedby": `${id}-hint ${id}-range ${id}-fault` }),
      element("button", { type: "button", className: "quiet", "data-do": "without_row",
                          "aria-label": `Leave out row ${index + 1} of ${label}` }, "×")));
    return element("fieldset", { id, className: "table", "data-path": JSON.stringify(item.path) },
      element("legend", {}, label), ...this.hints(item, id), ...rows,
      element("div", { className: "row", "data-new": "" },
        element("input", { id: `${id}-nk`, "aria-label": `${label}, new row, of what`, autocomplete: "off",
                           autocapitalize: "off", placeholder: "of what" }),
        element("input", { id: `${id}-nv`, "aria-label": `${label}, new row, how much`, autocomplete: "off",
                           autocapitalize: "off", placeholder: "how much" }),
        element("button", { type: "button", "data-do": "add_row", "aria-label": `Add the row to ${label}` }, "Add")),
      item.key.required ? null : this.button(`Leave out ${label}`, "without", "quiet"));
  }

  fill(item) {
    const set = (input, text) => {
      if (!input || input.value === text || input === document.activeElement) return;
      if (input.tagName === "SELECT" && text && ![...input.options].some((one) => one.value === text)) {
        input.append(element("option", { value: text }, text));
      }
      input.value = text;
    };
    const id = this.id_of(item.path);
    if (item.type === "field") set(document.getElementById(`${id}-in`), item.text);
    if (item.words?.length) {
      const said = item.text.split(",").map((word) => word.trim());
      for (const tick of document.getElementById(`${id}-in`).closest(".field").querySelectorAll("[data-word]")) {
        tick.checked = said.includes(tick.value);
      }
    }
    for (const { index, name, value } of item.rows ?? []) {
      set(document.getElementById(`${id}-k${index}`), name);
      set(document.getElementById(`${id}-v${index}`), value.text ?? "");
    }
    for (const below of item.items ?? []) this.fill(below);
  }

  // Shows each fault of the reader at its field; gives those that have none.
  mark(faults, file) {
    this.unplaced = [];
    if (!faults.length && this.unmarked) return;
    this.unmarked = !faults.length;
    const told = new Map();
    for (const fault of faults) {
      const here = fault.file === file && fault.line > 0;
      const path = here ? path_at(this.text, this.tree, place_of(this.text, fault.line, fault.column)) : [];
      while (path.length && !document.getElementById(`${this.id_of(path)}-fault`)) path.pop();
      if (!path.length) { this.unplaced.push(fault); continue; }
      const id = this.id_of(path);
      told.set(id, [...(told.get(id) ?? []), fault]);
      fault.at = document.getElementById(`${id}-in`) ? `${id}-in` : id;
    }
    for (const place of this.root.querySelectorAll("p.fault")) {
      const found = told.get(place.id.replace(/-fault$/, "")) ?? [];
      const words = found.map(({ message, advice }) => advice ? `${message}: ${advice}` : message).join("\n");
      if (place.textContent !== words) place.textContent = words;
      const wrong = found.some((fault) => !fault.warning);
      place.classList.toggle("warns", found.length > 0 && !wrong);
      const input = document.getElementById(place.id.replace(/-fault$/, "-in"));
      if (input) input.setAttribute("aria-invalid", String(wrong));
    }
    for (const count of this.root.querySelectorAll(".count")) {
      const wrong = [...count.closest("details").querySelectorAll("p.fault:not(:empty):not(.warns)")].length;
      count.textContent = wrong ? ` ${wrong} to mend` : "";
    }
  }

  path_of(target) { return JSON.parse(target.closest("[data-path]").dataset.path); }

  row_of(target) {
    const path = this.path_of(target);
    const { value } = find(this.text, this.tree, path);
    return [...path, value.entries[Number(target.closest("[data-row]").dataset.row)][0].text];
  }

  typed(target) {
    if (target.dataset.word !== undefined) {
      const input = target.closest(".field").querySelector("[data-value]");
      const said = input.value.split(",").map((word) => word.trim()).filter(Boolean);
      const rest = said.filter((word) => word !== target.value);
      input.value = (target.checked ? [...rest, target.value] : rest).join(", ");
      return this.typed(input);
    }
    if (target.dataset.value !== undefined) {
      const path = this.path_of(target);
      const words = target.value.split(",").map((word) => word.trim()).filter(Boolean);
      if (target.dataset.list !== undefined && words.length) {
        this.change(with_list(this.text, this.tree, path, words));
      } else {
        this.change(with_value(this.text, this.tree, path, target.value.trim()));
      }
    } else if (target.dataset.rowValue !== undefined) {
      this.change(with_value(this.text, this.tree, this.row_of(target), target.value.trim()));
    } else if (target.dataset.rowKey !== undefined && target.value.trim()) {
      this.change(with_name(this.text, this.tree, this.row_of(target), target.value.trim()));
    }
  }

  // A value that was emptied is left out, with the sections that hold nothing else.
  left(target) {
    if (target.dataset.name !== undefined && target.value.trim() && target.value.trim() !== this.path_of(target).at(-1)) {
      this.change(with_name(this.text, this.tree, this.path_of(target), target.value.trim()));
    }
    const emptied = target.dataset.value !== undefined && target.value.trim() === "";
    if (!emptied || !this.tree) return;
    const path = this.path_of(target);
    this.pending.delete(JSON.stringify(path));
    if (find(this.text, this.tree, path)?.value.kind === "empty") this.change(without(this.text, this.tree, path));
  }

  clicked(target) {
    const action = target.closest("button")?.dataset.do;
    if (!action || !this.tree) return;
    if (action === "add_key" || action === "add_name") return this.add(target.closest(".more"), action);
    const path = this.path_of(target);
    if (action === "without") this.change(without(this.text, this.tree, path));
    if (action === "without_row") this.change(without(this.text, this.tree, this.row_of(target)));
    if (action === "add_row") {
      const [name, value] = target.closest(".row").querySelectorAll("input");
      if (!name.value.trim()) return name.focus();
      const typed = [name.value.trim(), value.value.trim()];
      name.value = value.value = "";
      name.focus();
      this.change(with_value(this.text, this.tree, [...path, typed[0]], typed[1]));
    }
  }

  add(box, action) {
    const input = box.querySelector(action === "add_key" ? "select" : "input");
    const name = input.value.trim();
    if (!name) return input.focus();
    const path = [...JSON.parse(box.dataset.more), name];
    input.value = "";
    if (action === "add_name") {
      this.change(with_value(this.text, this.tree, path, ""));
    } else {
      this.pending.add(JSON.stringify(path));
      this.change(this.text);
    }
    const id = this.id_of(path);
    for (let fold = document.getElementById(id)?.closest("details"); fold && this.root.contains(fold);
         fold = fold.parentElement.closest("details")) fold.open = true;
    const first = document.getElementById(`${id}-in`) ??
      document.getElementById(id)?.querySelector("select, input:not([data-name])");
    first?.focus();
  }
}
