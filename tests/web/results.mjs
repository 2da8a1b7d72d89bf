// Holds the JSON of every command against its published schema: those of the table of commands and
// of all stories that begin with one command. What the schema does not know of, it refuses.
// Usage: node results.mjs PROGRAM SOURCE FOLDER
import { spawnSync } from "node:child_process";
import { mkdtempSync, cpSync, readFileSync, readdirSync } from "node:fs";
import { join } from "node:path";
import Ajv from "ajv";

const [program, source, folder] = process.argv.slice(2);
const schema = JSON.parse(readFileSync(join(source, "data/schema/result.schema.json"), "utf8"));
const ajv = new Ajv({ allErrors: true, strict: true, allowUnionTypes: true, strictTypes: false,
                      strictRequired: false });
const accepts = ajv.compile(schema);

const place = mkdtempSync(join(folder, "results-"));
cpSync(join(source, "examples"), join(place, "examples"), { recursive: true });
const run = (words) => spawnSync(program, words, { cwd: place, encoding: "utf8", maxBuffer: 1e8 });
run(["record", "quay.record", "--import", "examples/quay-trials.csv"]);

const without_form = (words) => words.filter((word, i) => word !== "--format" && words[i - 1] !== "--format");
const table = readFileSync(join(source, "tests/commands/every-command.table"), "utf8");
const stories = readdirSync(join(source, "tests/golden")).map((name) =>
  readFileSync(join(source, "tests/golden", name), "utf8").split(/\n| \| /)[0].replace(/^\$ boardmark /, ""));
const plain = stories.filter((command) => /^[\w.,:=\/ -]+$/.test(command));
const commands = [...table.split("\n"), ...plain].filter((command) => command !== "" &&
  schema.properties.command.enum.includes(command.split(" ")[0]));

const seen = new Set();
for (const command of commands) {
  const told = run([...without_form(command.split(" ")), "--format", "json"]).stdout;
  if (told === "") continue; // a wrong input: it has no result
  const result = JSON.parse(told);
  if (!accepts(result)) {
    const first = accepts.errors[0];
    console.error(`${command}: ${first.instancePath} ${first.message} ${JSON.stringify(first.params)}`);
    process.exitCode = 1;
  }
  for (const spoiled of [{ ...result, surplus: 1 }, { ...result, checks: undefined }]) {
    if (accepts(JSON.parse(JSON.stringify(spoiled)))) {
      console.error(`${command}: the schema accepts what is no result`);
      process.exitCode = 1;
    }
  }
  seen.add(result.command);
}
for (const command of schema.properties.command.enum) {
  if (!seen.has(command)) {
    console.error(`no result of ${command} was seen`);
    process.exitCode = 1;
  }
}
console.log(`${commands.length} commands, ${seen.size} kinds of result`);
