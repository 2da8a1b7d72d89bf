// Holds the schemas against the reader: a file that the program reads satisfies the schema of its
// kind; a file that it refuses for a key, a unit or a word does not.
// Usage: node schema.mjs PROGRAM SOURCE
import { execFileSync, spawnSync } from "node:child_process";
import { readFileSync, readdirSync } from "node:fs";
import { join } from "node:path";
import Ajv from "ajv";
import { parseDocument } from "yaml";

const [program, source] = process.argv.slice(2);
const ajv = new Ajv({ allErrors: true, strict: true, allowUnionTypes: true, strictTypes: false,
                      strictRequired: false });
ajv.addVocabulary(["errorMessage", "patternErrorMessage", "enumDescriptions"]); // for editors

const kinds = [
  { name: "trial", has: (keys) => keys.includes("trial"), reads: "yield" },
  { name: "results", has: (keys) => keys.includes("specimens"), reads: "strength" },
  { name: "wall", has: (keys) => keys.includes("walls"), reads: "wall" },
  { name: "mix", has: (keys) => keys.includes("requirements"), reads: "check" },
];
const validators = {};
for (const { name } of kinds) {
  const made = spawnSync(program, ["schema", name], { encoding: "utf8" });
  if (made.status !== 0) continue; // a kind that this version does not read yet
  validators[name] = ajv.compile(JSON.parse(made.stdout));
  const kept = readFileSync(join(source, "data/schema", `${name}.schema.json`), "utf8");
  if (kept !== made.stdout) {
    console.error(`data/schema/${name}.schema.json is not what 'boardmark schema ${name}' prints`);
    process.exitCode = 1;
  }
}

// What a schema can know of the reader's complaints.
const knowable = /is not a key of this format|is not a unit known here|is not one of '|is not a kind of material/;
// These keys are known by their names in other parts of the file only, which a schema cannot see.
const unknowable = /exposure|code|'SSD'/;

function tree_of(document) {
  try {
    return document.errors.length > 0 ? undefined : document.toJS();
  } catch (fault) {
    return undefined;
  }
}

const subjects = readdirSync(join(source, "tests/rejected"), { withFileTypes: true })
  .filter((entry) => entry.isDirectory())
  .map((entry) => `tests/rejected/${entry.name}`);

let read = 0, refused = 0;
const faults = [];
for (const folder of ["examples", ...subjects]) {
  for (const file of readdirSync(join(source, folder)).filter((name) => name.endsWith(".yaml"))) {
    const path = join(source, folder, file);
    const document = parseDocument(readFileSync(path, "utf8"), { version: "1.2" });
    const tree = tree_of(document);
    if (tree === undefined) continue; // not YAML: the reader's own tests hold what it says of it
    const keys = tree && typeof tree === "object" ? Object.keys(tree) : [];
    const kind = kinds.find((one) => one.has(keys));
    if (!kind || !validators[kind.name]) continue;
    const said = spawnSync(program, [kind.reads, path], { encoding: "utf8" });
    const valid = validators[kind.name](tree);
    const own = said.stderr.split("\n").filter((line) => line.startsWith(`${path}:`)).join("\n");
    if (said.status !== 2) {
      read += 1;
      if (!valid) {
        const errors = validators[kind.name].errors;
        faults.push(`${folder}/${file} is read, but the schema says: ${ajv.errorsText(errors)}`);
      }
    } else if (valid && knowable.test(own) && !unknowable.test(own)) {
      faults.push(`${folder}/${file} is refused, but satisfies the schema:\n${said.stderr}`);
    } else if (!valid) {
      refused += 1;
    }
  }
}
for (const system of ["us", "si"]) {
  for (const kind of ["mix", "trial", "results", "wall"]) {
    const starter = execFileSync(program, ["starter", kind, "--reporting", system], { encoding: "utf8" });
    if (!validators[kind](parseDocument(starter, { version: "1.2" }).toJS())) {
      faults.push(`the starter file, ${kind}: ${ajv.errorsText(validators[kind].errors)}`);
    }
  }
}
console.log(`${read} files are read and satisfy their schema; ${refused} are refused by both`);
if (read < 20 || refused < 75) {
  faults.push("too few files were held against a schema");
}
if (faults.length > 0) {
  console.error(faults.join("\n"));
  process.exitCode = 1;
}
