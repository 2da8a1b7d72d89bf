import { engine_of } from "./engine.js";
import { Form } from "./form.js";
import { Result } from "./result.js";
import { trial_of } from "./ticket.js";
import { find, place_of, with_value, without } from "./yaml_edit.js";

// The four ways in: the kind of file that is written, and the commands whose pages follow from it.
const ways = {
  mix: { kind: "mix", title: "A mix", told: "proportion it or check it, compare, find a dose",
         views: { proportion: "Proportions and checks", compare: "Side by side", dose: "Doses" } },
  batch: { kind: "mix", title: "A batch", told: "today's weights, tick and write down",
           views: { batch: "Ticket" } },
  trial: { kind: "trial", title: "A trial", told: "readings in, yield and next batch out",
           views: { yield: "What the trial was" } },
  wall: { kind: "wall", title: "A wall", told: "drawing, pressure, pour card, brief",
          views: { wall: "Plan", draw: "Drawings", pour: "Pour card", brief: "Brief" } },
};
// Options that the page has no use for, or that it sets itself.
const own_options = ["format", "out", "force", "color", "quiet", "verbose", "help", "version", "only-different"];

const by_id = (id) => document.getElementById(id);
const storage_name = "boardmark page";

const state = {
  way: "mix", views: { mix: "proportion", batch: "batch", trial: "yield", wall: "wall" },
  files: {}, names: { mix: "mix.yaml", trial: "trial.yaml", wall: "wall.yaml" }, options: {}, notes: {},
};
const before = [];
let engine = null;
let form = null;
let result = null;
let page_html = "";
let shown_options = "";

const way = () => ways[state.way];
const file = () => state.names[way().kind];
const text = () => state.files[file()] ?? "";

// --- what is written ------------------------------------------------------------------------------

function change(said, { from_text = false } = {}) {
  if (said !== text()) {
    const last = before.at(-1);
    const together = last && last.file === file() && performance.now() - last.when < 1000;
    if (together) last.when = performance.now();
    else before.push({ file: file(), text: text(), when: performance.now() });
    if (before.length > 200) before.shift();
    state.files[file()] = said;
  }
  recompute({ from_text });
}

function take_back() {
  const last = before.pop();
  if (!last) return say("There is nothing to take back.");
  state.files[last.file] = last.text;
  recompute({});
}

function say(words) { by_id("said").textContent = words; }

// --- what follows ---------------------------------------------------------------------------------

function has_amounts(tree) { return Boolean(tree && find(text(), tree, ["proportions"])); }

// Today's moistures, each aggregate of the mix by itself.
function aggregates_of(tree) {
  const found = tree && find(text(), tree, ["materials"]);
  return (found?.value.entries ?? []).filter(([, value]) => value.entries?.some(([key, one]) =>
    key.text === "kind" && /^(coarse|fine) aggregate$/.test(one.text ?? ""))).map(([key]) => key.text);
}

function command_of(tree) {
  const view = state.views[state.way];
  return view === "proportion" && has_amounts(tree) ? "check" : view;
}

const options_of = (command) => state.options[command] ??= {};

function words_of(command, format) {
  const words = [command];
  const moistures = [];
  for (const [name, value] of Object.entries(options_of(command))) {
    if (value === "" || value === false) continue;
    if (name.startsWith("moisture of ")) moistures.push(`${name.slice(12)}=${value}`);
    else words.push(value === true ? `--${name}` : `--${name}=${value}`);
  }
  if (moistures.length) words.push(`--moisture=${moistures.join(",")}`);
  if (format) words.push(`--format=${format}`);
  return [...words, file()];
}

// Moistures go to the command as one list: a decimal comma would end one there. It is asked back.
function comma_in(command) {
  const found = Object.entries(options_of(command)).find(([name, value]) => name.startsWith("moisture of ") && /,/.test(value));
  return found && { code: 2, result: "", told: `${found[0]}: '${found[1]}' has a comma: write ${found[1].replace(",", ".")} ` +
                                               "if it is a decimal one" };
}

function show_faults(unplaced, faults, told) {
  const wrong = faults.filter((fault) => !fault.warning);
  const list = by_id("faults");
  list.replaceChildren();
  const line = (fault, words) => {
    const item = document.createElement("li");
    if (fault.warning) item.className = "warns";
    item.append(words);
    const target = fault.at;
    if (target || fault.line) {
      const go = document.createElement("button");
      go.type = "button";
      go.textContent = target ? "Go to the field" : `Go to line ${fault.line}`;
      go.onclick = () => target ? go_to_field(target) : go_to_line(fault);
      item.append(go);
    }
    list.append(item);
  };
  for (const fault of [...wrong, ...faults.filter((one) => one.warning)]) {
    const where = fault.line ? `${fault.file}, line ${fault.line}: ` : fault.file ? `${fault.file}: ` : "";
    line(fault, where + fault.message + (fault.advice ? `: ${fault.advice}` : ""));
  }
  const why = by_id("why");
  why.hidden = !told;
  why.textContent = told;
}

function go_to_field(id) {
  by_id("form-part").open = true;
  const field = by_id(id);
  for (let fold = field.closest("details"); fold; fold = fold.parentElement.closest("details")) fold.open = true;
  field.scrollIntoView({ block: "center" });
  (field.matches("fieldset") ? field.querySelector("input, select, button") : field)?.focus();
}

function go_to_line(fault) {
  by_id("text-part").open = true;
  const area = by_id("text");
  const at = place_of(text(), fault.line, fault.column);
  area.focus();
  area.setSelectionRange(at, at);
}

function headline(words, role) {
  by_id("headline-words").textContent = words;
  by_id("headline").className = `verdict ${role}`;
}

const counted = (count, word) => `${count} ${word}${count === 1 ? "" : "s"}`;

// A fault of ours must not leave figures standing that nobody computed.
function recompute(how) {
  try {
    return recomputed(how);
  } catch (fault) {
    by_id("frame-holder").hidden = true;
    headline(`This should not happen: ${fault.message}. The page is at fault, not the file: save the file, ` +
             "load the page again.", "fails");
    return Promise.resolve();
  }
}

function recomputed({ from_text = false } = {}) {
  const began = performance.now();
  engine.hold(state.files);
  const tree = engine.tree(text());
  const command = command_of(tree);
  show_views(command);
  show_options(command, tree);
  const reads_as = way().kind !== "mix" ? way().kind : command === "proportion" ? "proportion" : "check";
  const done = comma_in(command) ?? engine.run(...words_of(command, "html"));
  // Where the program has nothing to say beside a result, its reader has found nothing.
  const { faults } = done.result && !done.told ? { faults: [] } : engine.faults(reads_as, file());
  form.show({ keys: keys_of(way().kind), text: text(), tree, faults, file: file() });
  by_id("no-form").hidden = tree !== null;
  if (!from_text && by_id("text").value !== text()) by_id("text").value = text();
  by_id("file-name").textContent = `${file()}${Object.keys(state.files).length > 1
    ? `, open beside ${Object.keys(state.files).filter((name) => name !== file()).join(", ")}` : ""}`;
  const sound = done.result !== "";
  const wrong = faults.filter((fault) => !fault.warning);
  show_faults(form.unplaced, faults, sound || wrong.length ? "" : done.told);
  for (const id of ["frame-holder", "print", "save-page", "save-json"]) by_id(id).hidden = !sound;
  by_id("to-trial").hidden = !sound || command !== "batch";
  page_html = done.result;
  let shown = Promise.resolve();
  if (sound) {
    shown = result.show(done.result, command === "batch" ? state.notes : null).then(() => {
      const said = result.headline() ?? { words: done.code === 1 ? "Something fails: the plan says what."
        : "Drawn; what is to watch or open stands with the plan.", state: done.code === 1 ? "fails" : "open" };
      headline(said.words, said.state);
    });
  } else {
    headline(wrong.length ? `${counted(wrong.length, "fault")} in what is asked; nothing was calculated.`
             : "Nothing follows yet: the reason stands below.", "fails");
  }
  keep();
  document.documentElement.dataset.took = (performance.now() - began).toFixed(1);
  return shown;
}

const forms = new Map();
function keys_of(kind) {
  if (!forms.has(kind)) forms.set(kind, engine.form(kind));
  return forms.get(kind);
}

// --- choices --------------------------------------------------------------------------------------

function show_ways() {
  by_id("form-part").open = state.way !== "batch"; // what a batch is about stands above it
  by_id("ways").replaceChildren(...Object.entries(ways).map(([name, one]) => {
    const link = document.createElement("a");
    link.href = `#${name}`;
    const title = document.createElement("strong");
    title.textContent = one.title;
    const told = document.createElement("span");
    told.textContent = one.told;
    link.append(title, told);
    if (name === state.way) link.setAttribute("aria-current", "page");
    return link;
  }));
}

function show_views(command) {
  const box = by_id("views");
  const views = Object.entries(way().views);
  const shape = `${state.way} ${command === "check"}`;
  box.hidden = views.length === 1;
  if (box.dataset.shape === shape) return;
  box.dataset.shape = shape;
  box.setAttribute("role", "radiogroup");
  box.setAttribute("aria-label", "What is shown");
  box.replaceChildren(...views.map(([name, words]) => {
    const label = document.createElement("label");
    const choice = document.createElement("input");
    Object.assign(choice, { type: "radio", name: "view", value: name, checked: name === state.views[state.way] });
    choice.onchange = () => { state.views[state.way] = name; recompute({}); };
    label.append(choice, words);
    return label;
  }));
}

function option_field(command, option) {
  const id = `o-${option.name.replaceAll(" ", "_")}`;
  const field = document.createElement("div");
  field.className = "field";
  const label = document.createElement("label");
  label.htmlFor = id;
  const hint = document.createElement("p");
  hint.className = "hint";
  hint.id = `${id}-hint`;
  hint.textContent = option.meaning;
  const kept = options_of(command)[option.name];
  const write = (value) => { options_of(command)[option.name] = value; recompute({}); };
  let control = document.createElement(option.words.length ? "select" : "input");
  if (option.words.length) {
    for (const word of ["", ...option.words]) control.append(new Option(word || "as it is", word));
    control.value = kept ?? "";
    control.onchange = () => write(control.value);
  } else if (!option.value) {
    control.type = "checkbox";
    control.checked = kept === true;
    control.onchange = () => write(control.checked);
  } else {
    control.value = kept ?? "";
    control.autocomplete = "off";
    control.oninput = () => write(control.value.trim());
  }
  control.id = id;
  control.setAttribute("aria-describedby", hint.id);
  if (!option.value && !option.words.length) {
    label.append(control, option.name.replaceAll("-", " "));
    field.append(label, hint);
  } else {
    label.textContent = option.name.replaceAll("-", " ");
    field.append(label, control, hint);
  }
  return field;
}

// The options of the command, from its own table; those of a batch stand before the file, for they
// are what a batch is about.
function show_options(command, tree) {
  const aggregates = command === "batch" ? aggregates_of(tree) : [];
  const shape = `${command} ${aggregates.join("|")}`;
  if (shape === shown_options) return;
  shown_options = shape;
  if (command === "batch" && !Object.keys(options_of("batch")).length) {
    options_of("batch").volume = /^reporting: *si/m.test(text()) ? "50 L" : "2 ft3";
  }
  const options = engine.options(command).filter(({ name }) => !own_options.includes(name))
    .flatMap((option) => option.name === "moisture" && aggregates.length
      ? aggregates.map((name) => ({ name: `moisture of ${name}`, value: "P", words: [],
          meaning: `today's, in the file's basis: 5.2 %; left out: the file's` })) : [option]);
  const common = ({ name }) => command !== "batch" || ["all", "reporting", "explain"].includes(name);
  by_id("options").replaceChildren(
    ...(command === "batch" ? [option_group("Today", true, options.filter((one) => !common(one)), command)] : []),
    option_group("How it is shown", false, options.filter(common), command));
}

function option_group(words, open, options, command) {
  const box = document.createElement("details");
  box.open = open;
  const summary = document.createElement("summary");
  const title = document.createElement("h3");
  title.textContent = words;
  summary.append(title);
  box.append(summary, ...options.map((option) => option_field(command, option)));
  return box;
}

// --- files ----------------------------------------------------------------------------------------

const most_bytes = 4 * 1024 * 1024;

async function open_files(list) {
  const told = [];
  for (const chosen of list) {
    if (chosen.size > most_bytes) {
      told.push(`${chosen.name} has ${(chosen.size / 1048576).toFixed(0)} MiB; a file that is read here has at most 1 MiB.`);
      continue;
    }
    let said;
    try {
      said = new TextDecoder("utf-8", { fatal: true, ignoreBOM: true }).decode(await chosen.arrayBuffer());
    } catch {
      told.push(`${chosen.name} is not text in UTF-8; open a mix, trial or wall file.`);
      continue;
    }
    if (said.includes("\0")) {
      told.push(`${chosen.name} is not a text file; open a mix, trial or wall file.`);
      continue;
    }
    told.push(take_in(chosen.name, said));
  }
  form.forget();
  say(told.join(" "));
  await recompute({});
}

function take_in(name, said) {
  const kind = engine.kind(said);
  state.files[name] = said;
  if (kind === "results") return `${name} holds strength results: it is open beside, for a file that names it.`;
  if (!state.names[kind]) {
    const looks_like_yaml = /\.ya?ml$/i.test(name);
    if (looks_like_yaml && !engine.tree(said)) state.names[way().kind] = name; // its reader tells why
    return `${name} is no mix, trial or wall file; it is open beside, for a file that names it.`;
  }
  state.names[kind] = name;
  if (way().kind !== kind) go(kind);
  return `${name} is open, a ${kind} file.`;
}

function download(name, said, type) {
  const link = document.createElement("a");
  link.href = URL.createObjectURL(new Blob([said], { type }));
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(link.href), 10000);
}

const stem = () => file().replace(/\.[^.]*$/, "");

function begin(system) {
  for (const kind of ["mix", "trial", "wall"]) {
    state.names[kind] = `${kind}.yaml`;
    state.files[state.names[kind]] = engine.run("starter", `--reporting=${system}`, kind).result;
  }
  state.options = {};
  state.notes = {};
  shown_options = "";
}

function make_trial() {
  const moistures = Object.fromEntries(Object.entries(options_of("batch"))
    .filter(([name, value]) => name.startsWith("moisture of ") && value).map(([name, value]) => [name.slice(12), value]));
  const name = `${stem()}-trial.yaml`;
  state.files[name] = trial_of(result.document, state.names.mix, moistures);
  state.names.trial = name;
  say(`${name} holds what was written down; what is missing is asked for below.`);
  go("trial");
}

// --- what is remembered ---------------------------------------------------------------------------

function keep() {
  try {
    if (by_id("remember").checked) localStorage.setItem(storage_name, JSON.stringify(state));
    else localStorage.removeItem(storage_name);
  } catch { /* the browser keeps nothing for files; the page works without */ }
}

function remembered() {
  try {
    const kept = JSON.parse(localStorage.getItem(storage_name) ?? "null");
    if (!kept || !ways[kept.way]) return false;
    Object.assign(state, kept);
    return true;
  } catch {
    return false;
  }
}

// --- the page -------------------------------------------------------------------------------------

function go(name) {
  if (state.way !== name) form.forget();
  state.way = name;
  if (location.hash !== `#${name}`) location.hash = name;
  show_ways();
}

async function begin_page() {
  engine = await engine_of(createEngine, by_id("engine").textContent, by_id("unpack").textContent);
  by_id("engine").remove();
  result = new Result(by_id("result"), (note, value) => {
    if (value) state.notes[note] = value; else delete state.notes[note];
    keep();
  });
  form = new Form(by_id("form"), (said) => change(said));
  begin("us");
  by_id("remember").checked = remembered();
  if (ways[location.hash.slice(1)]) state.way = location.hash.slice(1);
  show_ways();
  by_id("text").addEventListener("input", () => change(by_id("text").value, { from_text: true }));
  by_id("form").addEventListener("submit", (event) => event.preventDefault());
  by_id("open").addEventListener("change", async (event) => {
    await open_files([...event.target.files]);
    event.target.value = "";
  });
  by_id("save").onclick = () => download(file(), text(), "application/yaml");
  by_id("save-page").onclick = () => download(`${stem()}-${state.views[state.way]}.html`, page_html, "text/html");
  by_id("save-json").onclick = () => {
    const done = engine.run(...words_of(command_of(engine.tree(text())), "json"));
    if (done.result) download(`${stem()}.json`, done.result, "application/json");
    else say("This view has no figures of its own; the plan has them.");
  };
  by_id("print").onclick = () => result.print();
  by_id("undo").onclick = take_back;
  by_id("begin").onclick = () => {
    begin(by_id("anew").value);
    form.forget();
    say("Begun anew, with the starter files.");
    recompute({});
  };
  by_id("to-trial").onclick = make_trial;
  by_id("remember").onchange = keep;
  by_id("headline-more").onclick = (event) => {
    event.preventDefault();
    by_id("follows").scrollIntoView();
    by_id("follows").focus({ preventScroll: true });
  };
  addEventListener("hashchange", () => {
    const name = location.hash.slice(1);
    if (ways[name] && name !== state.way) { form.forget(); state.way = name; show_ways(); recompute({}); }
    else if (ways[name]) recompute({});
  });
  await recompute({});
  // For whoever wants the engine by itself, a test for one: files in, the program's answer out.
  globalThis.boardmark = { run: (files, ...words) => { engine.hold(files); return engine.run(...words); },
                           tree: engine.tree, kind: engine.kind, edit: { find, with_value, without }, state, recompute };
  document.documentElement.dataset.ready = (performance.now()).toFixed(0);
}

begin_page().catch((fault) => headline(`The page cannot begin: ${fault.message}. It needs a browser from 2022 on.`, "fails"));
