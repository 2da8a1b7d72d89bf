// A trial file of what was ticked and written down on a ticket. Nothing is filled in that nobody
// wrote: what is missing stands empty, and the reader asks for it.

import { written } from "./yaml_edit.js";

const number_of = (words) => /^(\d+(?:\.\d+)?)\s*(\D.*)?$/.exec(words);

// "26.7" beside "35.58 lb" alone is in pounds; beside "11.9 lb or 1.4 gal" it is asked back.
function with_unit(words, units) {
  return units.length === 1 && /^\d+(\.\d+)?$/.test(words) ? `${words} ${units[0]}` : words;
}

function weighed_rows(document) {
  const rows = [];
  for (const box of document.querySelectorAll("input[type=checkbox]")) {
    const row = box.closest("tr");
    const shown = [...row.querySelectorAll('[data-label="weigh"], [data-label="or measure"]')]
      .map((cell) => cell.textContent.trim()).filter(Boolean);
    const units = shown.map((one) => number_of(one)?.[2]).filter(Boolean);
    const typed = row.querySelector("input:not([type=checkbox])")?.value.trim() ?? "";
    const words = typed ? with_unit(typed, units) : box.checked ? shown[0] ?? "" : "";
    rows.push({ name: row.querySelector("th").textContent, words });
  }
  return rows;
}

// Water at the mixer and what went in of the water held back are one line of the trial.
function with_one_water(rows) {
  const parts = rows.filter(({ name }) => name.startsWith("water ")).map(({ words }) => number_of(words));
  if (!parts.length) return rows;
  const sound = parts.every((part) => part && part[2] === parts[0][2]);
  const decimals = Math.max(...parts.map((part) => part?.[1].split(".")[1]?.length ?? 0));
  const sum = sound ? `${parts.reduce((all, part) => all + Number(part[1]), 0).toFixed(decimals)} ${parts[0][2]}` : "";
  return [{ name: "water", words: sum }, ...rows.filter(({ name }) => !name.startsWith("water "))];
}

const readings = ["name", "density", "slump", "slump_before_reducer", "air", "temperature"];

function readings_of(document) {
  const table = [...document.querySelectorAll("table")].find((one) =>
    one.getAttribute("aria-label")?.startsWith("WRITE DOWN"));
  const found = { measure: {}, moisture: {}, plain: {} };
  for (const row of table?.querySelectorAll("tr") ?? []) {
    const words = row.querySelector("input")?.value.trim();
    const name = row.querySelector("th")?.textContent;
    if (!words || !name) continue;
    if (readings.includes(name)) found.plain[name] = words;
    if (name.startsWith("measure: ")) found.measure[name.slice(9)] = words;
    if (name === "moisture") found.moisture[row.lastElementChild.textContent.split(",")[0]] = words;
  }
  return found;
}

const in_lines = (pairs, indent) => Object.entries(pairs)
  .map(([name, words]) => `${" ".repeat(indent)}${written(name)}: ${words && written(words)}`.trimEnd() + "\n").join("");

export function trial_of(document, mix, moistures) {
  const batched = Object.fromEntries(with_one_water(weighed_rows(document)).map(({ name, words }) => [name, words]));
  const found = readings_of(document);
  const moisture = { ...moistures, ...found.moisture };
  if (!Object.keys(found.measure).length && !found.plain.density) found.plain.density = "";
  for (const name of ["slump", "air"]) found.plain[name] ??= "";
  return `boardmark: 1\nmix: ${written(mix)}\n\ntrial:\n  batched:   # as weighed\n${in_lines(batched, 4)}` +
    (Object.keys(moisture).length ? `  moisture:\n${in_lines(moisture, 4)}` : "") +
    (Object.keys(found.measure).length ? `  measure:\n${in_lines(found.measure, 4)}` : "") +
    in_lines(found.plain, 2);
}
