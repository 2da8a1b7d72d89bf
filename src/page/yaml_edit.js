// Changes one place of a YAML text and leaves all the rest, comments too, as it was typed. Works on
// the tree that the engine reads: nodes with `at` and `to`, places in the text.

const line_end = (text, at) => {
  const end = text.indexOf("\n", at);
  return end < 0 ? text.length : end;
};
const line_start = (text, at) => text.lastIndexOf("\n", at - 1) + 1;
const put = (text, at, to, piece) => text.slice(0, at) + piece + text.slice(to);
const is_flow = (text, node) => text[node.at] === "{" || text[node.at] === "[";

// Behind a key and its colon; in brackets a key may have none: `{3,15}`.
function behind_colon(text, key) {
  const colon = /\s*:/y;
  colon.lastIndex = key.to;
  return colon.test(text) ? colon.lastIndex : key.to;
}

function end_of_entry(text, [key, value]) {
  return value.kind === "empty" ? behind_colon(text, key) : end_of(text, value);
}

// Where the last value of a list or mapping ends, or its opening bracket.
function last_end(text, node) {
  if (node.entries?.length) return end_of_entry(text, node.entries.at(-1));
  return node.items?.length ? end_of(text, node.items.at(-1)) : node.at + 1;
}

function closing_of(text, node) {
  let at = last_end(text, node);
  while (at < text.length && text[at] !== "}" && text[at] !== "]") {
    at = text[at] === "#" ? line_end(text, at) : at + 1;
  }
  return at;
}

// Where a value ends, its closing bracket included.
export function end_of(text, node) {
  if (node.kind === "scalar" || node.kind === "empty") return node.to;
  return is_flow(text, node) ? closing_of(text, node) + 1 : last_end(text, node);
}

// The value at a path of names, its key, the mapping it stands in, and whether it is in brackets.
export function find(text, tree, path) {
  let node = tree;
  let found = { key: null, value: tree, mapping: null, flow: false, index: -1 };
  for (const name of path) {
    const index = node?.entries?.findIndex(([key]) => key.text === name) ?? -1;
    if (index < 0) return null;
    const [key, value] = node.entries[index];
    found = { key, value, mapping: node, index, flow: found.flow || is_flow(text, node) };
    node = value;
  }
  return found;
}

const needs_quotes = /^[?:,[\]{}#&*!|>'"%@`~]|^-(\s|$)|:(\s|$)|\s#|^\s|\s$|^(null|Null|NULL)$|\t/;

// A word as it is written in YAML: plain where that is possible.
export function written(word, { flow = false, quoted = false } = {}) {
  if (!quoted && word !== "" && !needs_quotes.test(word) && !(flow && /[,[\]{}]/.test(word))) {
    return word;
  }
  return `"${word.replace(/[\\"]/g, "\\$&").replace(/\t/g, "\\t")}"`;
}

const in_brackets = ([name, ...rest], value) =>
  `${written(name, { flow: true })}: ${rest.length ? `{${in_brackets(rest, value)}}` : value}`;

function in_lines([name, ...rest], value, indent) {
  const head = `${" ".repeat(indent)}${written(name)}:`;
  return rest.length ? `${head}\n${in_lines(rest, value, indent + 2)}` : `${head} ${value}`.trimEnd();
}

// Adds a key with its value, and the sections above it that are missing.
function added(text, tree, path, value) {
  let depth = 0;
  let place = { value: tree, key: null, flow: false };
  for (; depth < path.length; ++depth) {
    const next = find(text, tree, path.slice(0, depth + 1));
    if (!next) break;
    place = next;
  }
  const rest = path.slice(depth);
  const node = place.value;
  const flow = place.flow || (node && node.kind !== "empty" && is_flow(text, node));
  const said = value(flow);
  if (!node || (node.kind === "empty" && !place.key)) {
    return `${text}${text && !text.endsWith("\n") ? "\n" : ""}${in_lines(rest, said, 0)}\n`;
  }
  if (node.kind === "empty") {
    const at = behind_colon(text, place.key);
    if (flow) return put(text, at, at, ` {${in_brackets(rest, said)}}`);
    const indent = place.key.at - line_start(text, place.key.at) + 2;
    const end = line_end(text, at);
    return put(text, end, end, `\n${in_lines(rest, said, indent)}`);
  }
  if (node.kind !== "mapping") return text;
  if (flow) {
    const at = last_end(text, node);
    return put(text, at, at, `${node.entries?.length ? ", " : ""}${in_brackets(rest, said)}`);
  }
  const first = node.entries[0][0].at;
  const end = line_end(text, last_end(text, node));
  return put(text, end, end, `\n${in_lines(rest, said, first - line_start(text, first))}`);
}

function replaced(text, found, piece) {
  if (found.value.kind !== "empty") return put(text, found.value.at, end_of(text, found.value), piece);
  const at = behind_colon(text, found.key);
  return put(text, at, at, at === found.key.to ? `: ${piece}` : ` ${piece}`);
}

// Writes one value; a value that is empty leaves its key standing.
export function with_value(text, tree, path, word) {
  const found = find(text, tree, path);
  if (!found) return added(text, tree, path, (flow) => (word === "" ? "" : written(word, { flow })));
  if (word === "" && !found.value.quoted) {
    return found.value.kind === "empty" ? text
         : put(text, found.value.at, end_of(text, found.value), "");
  }
  return replaced(text, found, written(word, { flow: found.flow, quoted: found.value.quoted }));
}

// Writes a list in brackets, or one word by itself where it stood by itself.
export function with_list(text, tree, path, words) {
  const found = find(text, tree, path);
  const list = `[${words.map((word) => written(word, { flow: true })).join(", ")}]`;
  if (!found) return added(text, tree, path, () => list);
  const alone = words.length === 1 && found.value.kind === "scalar";
  return replaced(text, found, alone ? written(words[0], { flow: found.flow }) : list);
}

export function with_name(text, tree, path, name) {
  const found = find(text, tree, path);
  return put(text, found.key.at, found.key.to, written(name, { flow: found.flow }));
}

// Leaves a key out, with what stands under it.
export function without(text, tree, path) {
  const found = find(text, tree, path);
  if (!found) return text;
  const { mapping, index, key } = found;
  const end = end_of_entry(text, mapping.entries[index]);
  if (is_flow(text, mapping)) {
    if (mapping.entries.length === 1) return put(text, mapping.at + 1, closing_of(text, mapping), "");
    const next = mapping.entries[index + 1];
    return next ? put(text, key.at, next[0].at, "")
                : put(text, end_of_entry(text, mapping.entries[index - 1]), end, "");
  }
  const start = line_start(text, key.at);
  const alone = text.slice(start, key.at).trim() === "";
  return put(text, alone ? start : key.at, Math.min(line_end(text, end) + 1, text.length), "");
}

// The path of the innermost key that a place of the text belongs to.
export function path_at(text, tree, at) {
  const path = [];
  for (let node = tree; node?.entries;) {
    const entry = node.entries.find((one) => one[0].at <= at && at <= end_of_entry(text, one));
    if (!entry) break;
    path.push(entry[0].text);
    node = entry[1];
  }
  return path;
}

// The place of a line and a column, both from 1, the column in characters.
export function place_of(text, line, column) {
  let at = 0;
  for (let i = 1; i < line; ++i) at = line_end(text, at) + 1;
  for (let i = 1; i < column && at < text.length; ++i) at += text.codePointAt(at) > 0xffff ? 2 : 1;
  return at;
}
