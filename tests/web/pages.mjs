// Opens the page of every result in a browser: no request, error or dialog; no text cut off or
// outside its figure; no scrolling sideways on narrow screens; nothing that axe finds; contrast of
// figures; what is folded unfolds by a click and on paper; links of a headline lead to its checks;
// on paper the last row of the last table is there, each page has its title and number, the last one
// more than a footer; sections stand in their order.
// Usage: node pages.mjs PROGRAM SOURCE FOLDER
import { spawnSync } from "node:child_process";
import { createRequire } from "node:module";
import { mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { chromium } from "playwright-core";

const [program, source, folder] = process.argv.slice(2);
const axe = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");
mkdirSync(folder, { recursive: true });

const hostile = `"</title><script>alert(1)</script>{{x}} & 'quoted'"`;
const mix = readFileSync(join(source, "examples/quay-wall.yaml"), "utf8");
// Ten materials, the most that a ticket of one sheet holds.
writeFileSync(join(folder, "ten.yaml"), mix
  .replace(/^(  sand:)$/m, `  ash: {kind: fly ash, relative_density: 2.40}
  pea_stone:
    kind: coarse aggregate
    nominal_max_size: 3/8 in
    relative_density: 2.66
    absorption: 0.8 %
    dry_rodded_density: 98 lb/ft3
    moisture: 1.0 %
$1`)
  .replace(/^(  air_agent:.*)$/m, "$1\n  ochre: {kind: pigment, relative_density: 4.1, maximum_dose: 6 %}\n" +
           "  late_set: {kind: retarder, relative_density: 1.10, chloride: 0 %}")
  .replace(/binder: \{.*?\}/, "binder: {cement: 65 %, slag: 20 %, ash: 15 %}")
  .replace(/coarse: \{.*?\}/, "coarse: {stone: 80 %, pea_stone: 20 %}")
  .replace(/^(  admixtures: \{.*)\}/m, "$1, ochre: 3 %, late_set: 3 fl oz/cwt}"));
writeFileSync(join(folder, "hostile.yaml"), mix.replace(/^title:.*$/m, `title: ${hostile}`));

const record = join(folder, "quay.record");
const imported = spawnSync(program, ["record", record, "--import", "examples/quay-trials.csv"],
                           { cwd: source, encoding: "utf8" });
if (imported.status !== 0) throw new Error(`no record: ${imported.stderr}`);

const pages = {
  proportion: ["proportion", "--explain", "examples/quay-wall.yaml"],
  check: ["check", "examples/submitted-mix.yaml"],
  gradings: ["proportion", "examples/quay-wall-si.yaml"],
  trials: ["proportion", "--w-cm", "0.36,0.40,0.44", "examples/quay-wall.yaml"],
  batch: ["batch", "--volume", "2 yd3", "examples/quay-wall.yaml"],
  yield: ["yield", "examples/wet-trial.yaml"],
  strength: ["strength", "--today", "2026-11-25", "examples/strength-results.yaml"],
  compare: ["compare", "examples/flowing-wall.yaml"],
  dose: ["dose", "examples/flowing-wall.yaml"],
  wall: ["wall", "examples/terrace-walls.yaml"],
  brief: ["brief", "examples/terrace-walls.yaml"],
  pour: ["pour", "--start", "07:00", "examples/terrace-walls.yaml"],
  pour_si: ["pour", "--reporting", "si", "examples/terrace-walls.yaml"],
  pour_cold: ["pour", "examples/cold-wall.yaml"],
  panels: ["panels", "examples/terrace-panels.yaml"],
  strength_low: ["strength", "--today", "2026-11-25", "examples/low-results.yaml"],
  batch_ten: ["batch", "--volume", "14 yd3", "--truck", "9 yd3", "--hold-back", "10%", join(folder, "ten.yaml")],
  record: ["record", record, "--chart", "slump"],
  hostile: ["check", join(folder, "hostile.yaml")],
};
for (const [name, words] of Object.entries(pages)) {
  const made = spawnSync(program, [...words, "--format", "html"], { cwd: source, encoding: "utf8" });
  if (made.status > 1) throw new Error(`${name}: ${made.stderr}`);
  writeFileSync(join(folder, `${name}.html`), made.stdout);
}

const faults = [];
const demand = (holds, what) => { if (!holds) faults.push(what); };
const browser = await chromium.launch({ executablePath: "/usr/bin/chromium", args: ["--no-sandbox",
  "--disable-gpu", "--disable-quic", "--disable-background-networking", "--disable-sync",
  "--disable-component-update", "--no-first-run"] });

// What stands in the page itself: clipped text, figures' labels, contrast.
function inspect() {
  const found = [];
  if (document.documentElement.scrollWidth > window.innerWidth + 1) found.push("scrolls sideways");
  for (const table of document.querySelectorAll(".table, .checks, pre")) {
    if (table.scrollWidth > table.clientWidth + 1) found.push(`a table scrolls: ${table.textContent.slice(0, 40)}`);
  }
  for (const box of document.querySelectorAll("h1, h2, p, li, th, td, figcaption, summary")) {
    const clips = box.clientWidth > 0 && getComputedStyle(box).display !== "inline" &&
                  box.scrollWidth > box.clientWidth + 1;
    const one_letter = box.textContent.length > 3 && box.clientWidth > 0 && box.clientWidth < 16;
    if (clips || one_letter) found.push(`no room for: ${box.textContent.slice(0, 40)}`);
  }
  for (const stop of document.querySelectorAll("[tabindex]")) found.push(`a tab stop: ${stop.outerHTML.slice(0, 60)}`);
  if (window.innerWidth <= 640) {
    // Rows go below each other: each figure has its label beside it.
    for (const cell of document.querySelectorAll('.stack td:not([data-label=""]):not(:empty)')) {
      const label = getComputedStyle(cell, "::before").content;
      if (label !== `"${cell.dataset.label}"`) found.push(`no label beside ${cell.textContent}`);
    }
  }
  for (const svg of document.querySelectorAll("svg")) {
    const box = svg.getBoundingClientRect(); // as shown: some words of drawings are read from the right
    for (const text of svg.querySelectorAll("text")) {
      const own = text.getBoundingClientRect();
      if (own.left < box.left - 1 || own.top < box.top - 1 || own.right > box.right + 1 ||
          own.bottom > box.bottom + 1) found.push(`cut off: ${text.textContent}`);
    }
    const labels = [...svg.querySelectorAll("text")].map((text) => {
      const { left, right, top, bottom } = text.getBoundingClientRect();
      return { left, right, top, bottom, words: text.textContent };
    });
    labels.forEach((one, i) => labels.slice(i + 1).forEach((two) => {
      const apart = one.right < two.left + 1 || two.right < one.left + 1 ||
                    one.bottom < two.top + 3 || two.bottom < one.top + 3;
      if (!apart) found.push(`'${one.words}' overlaps '${two.words}'`);
    }));
  }
  const channel = (value) => {
    const part = value / 255;
    return part <= 0.03928 ? part / 12.92 : ((part + 0.055) / 1.055) ** 2.4;
  };
  const luminance = (colour) => {
    const [r, g, b] = colour.match(/[\d.]+/g).map(Number);
    return 0.2126 * channel(r) + 0.7152 * channel(g) + 0.0722 * channel(b);
  };
  const page = luminance(getComputedStyle(document.body).backgroundColor);
  const sheet = luminance("rgb(255, 255, 255)"); // drawings lie on white in both themes
  for (const mark of document.querySelectorAll("svg .value, svg .other, svg .limit, svg text")) {
    const style = getComputedStyle(mark);
    const paper = mark.closest(".drawing") ? sheet : page;
    const ink = luminance(mark.tagName === "text" ? style.fill : style.stroke);
    const [light, dark] = ink > paper ? [ink, paper] : [paper, ink];
    const least = mark.tagName === "text" ? 4.5 : 3;
    if ((light + 0.05) / (dark + 0.05) < least) found.push(`contrast of ${mark.tagName}`);
  }
  return found;
}

// A new page of its own for each look takes longer than the look: four are used again and again.
let looked_at; // which result, and its address
async function looking_page(settings) {
  const page = await browser.newPage(settings);
  page.on("console", (said) => { if (!settings.bypassCSP) faults.push(`${looked_at.name}: ${said.text()}`); });
  page.on("pageerror", (error) => faults.push(`${looked_at.name}: ${error}`));
  page.on("dialog", (dialog) => { faults.push(`${looked_at.name}: a dialog`); dialog.dismiss(); });
  page.on("request", (asked) => {
    if (asked.url() !== looked_at.url) faults.push(`${looked_at.name} asks for ${asked.url()}`);
  });
  return page;
}
const looks = [];
for (const colorScheme of ["light", "dark"]) {
  for (const widths of [[320, 390, 768], [1200]]) { // axe is put into the widest only
    looks.push({ colorScheme, widths,
                 page: await looking_page({ colorScheme, bypassCSP: widths[0] === 1200 }) });
  }
}
const sheets = await browser.newPage();

for (const name of Object.keys(pages)) {
  const url = pathToFileURL(join(folder, `${name}.html`)).href;
  looked_at = { name, url };
  for (const { colorScheme, widths, page } of looks) {
    for (const width of widths) {
      await page.setViewportSize({ width, height: 900 });
      await page.goto(url);
      for (const found of await page.evaluate(inspect)) {
        faults.push(`${name}, ${width} px, ${colorScheme}: ${found}`);
      }
      if (width === 1200) {
        await page.evaluate(axe);
        const result = await page.evaluate(() => axe.run());
        for (const violation of result.violations) {
          faults.push(`${name}, ${colorScheme}: axe ${violation.id}: ${violation.nodes[0].html}`);
        }
      }
      if (colorScheme === "light" && (width === 390 || width === 1200)) {
        await page.screenshot({ path: join(folder, `${name}-${width}.png`), fullPage: true });
      }
    }
  }
  const page = sheets;
  await page.goto(url);
  const title = await page.textContent("h1");
  const sections = await page.$$eval("h2", (all) => all.map((one) => one.textContent));
  const before = (one, other) => {
    const [first, second] = [one, other].map((name) => sections.findIndex((said) => said.startsWith(name)));
    demand(first < 0 || second < 0 || first < second, `${name}: ${other} stands before ${one}`);
  };
  demand(/^(record|hostile)$/.test(name) || await page.locator(".verdict").count() > 0, `${name} has no headline`);
  for (const asked of ["INGREDIENTS", "WEIGH", "QUANTITIES", "SIDE BY SIDE", "TOGETHER"]) before(asked, "CHECKS");
  before("CHECKS", "SELECTED");
  before("SELECTED", "REASONS");
  for (const section of sections.slice(0, -1)) before(section, "CAUTIONS");
  const folds = await page.locator(".fold").count();
  const unfolded = () => page.$$eval(".folded", (all) => all.filter((one) =>
    one.getBoundingClientRect().height > 0).length);
  demand(name === "record" || folds > 0, `${name} folds nothing`);
  demand(await unfolded() === 0, `${name} shows what is folded`);
  await page.emulateMedia({ media: "print" });
  const printed_folds = await unfolded(); // a ticket or card leaves them out: its sheet is full
  demand(printed_folds === (/^(batch|pour)/.test(name) ? 0 : folds),
         `${name} prints ${printed_folds} of ${folds} folded parts`);
  await page.emulateMedia({ media: null });
  for (const summary of await page.locator("summary").all()) await summary.click();
  demand(await unfolded() === folds, `${name} does not unfold on a click`);
  for (const link of await page.locator(".verdict a").all()) {
    const target = page.locator(`[id="${(await link.getAttribute("href")).slice(1)}"]`);
    demand(await target.count() === 1, `${name}: '${await link.textContent()}' leads nowhere`);
    await link.click();
    demand(await target.isVisible(), `${name}: '${await link.textContent()}' leads to what is hidden`);
  }
  for (const format of ["Letter", "A4"]) {
    const file = join(folder, `${name}-${format}.pdf`);
    const paper = await page.pdf({ format, path: file });
    const count = (paper.toString("latin1").match(/\/Type\s*\/Page\b/g) ?? []).length;
    const one_sheet = /^(batch|pour)/.test(name); // what goes to the mixer or to the wall
    const most = one_sheet ? 1 : /^(wall|brief)$/.test(name) ? 12 : name === "panels" ? 7 : 6; // drawings and score sheets take pages of their own
    demand(count >= 1 && count <= most,
       `${name}: ${count} pages of ${format}`);
    const printed = spawnSync("pdftotext", ["-layout", file, "-"], { encoding: "utf8" }).stdout
      .split("\f").slice(0, count);
    printed.forEach((sheet, number) => {
      const numbered = one_sheet || sheet.trimEnd().endsWith(`${number + 1} of ${count}`);
      demand(numbered, `${name}, ${format}: page ${number + 1} has no number`);
      const titled = number === 0 || sheet.trimStart().startsWith(title.slice(0, 40));
      demand(titled, `${name}, ${format}: page ${number + 1} has no title`);
    });
    const last = printed.at(-1);
    demand(last.slice(0, last.lastIndexOf("Written by")).trim().split("\n").length > 2,
           `${name}, ${format}: the last page is a footer only`);
  }
}
const page = await browser.newPage();
await page.goto(pathToFileURL(join(folder, "hostile.html")).href);
const shown = await page.textContent("h1");
demand(shown === "</title><script>alert(1)</script>{{x}} & 'quoted'", `a hostile title shows as ${shown}`);
demand((await page.$$("script")).length === 0, "a title became a script");
await browser.close();

console.log(`${Object.keys(pages).length} pages looked at`);
if (faults.length > 0) {
  console.error([...new Set(faults)].join("\n"));
  process.exitCode = 1;
}
