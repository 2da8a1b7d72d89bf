// Puts the page together: one HTML file with style, script and engine in it, and a policy that names
// their hashes, those of the program's own pages too.
// Usage: node assemble.mjs ENGINE-FOLDER PAGE-TO-WRITE
import { spawnSync } from "node:child_process";
import { createHash } from "node:crypto";
import { createRequire } from "node:module";
import { readFileSync, writeFileSync } from "node:fs";
import { dirname, join, resolve } from "node:path";
import { fileURLToPath } from "node:url";
import { gzipSync } from "node:zlib";

const [engine_folder, page_to_write] = process.argv.slice(2);
const here = dirname(fileURLToPath(import.meta.url));
const source = (name) => readFileSync(join(here, name), "utf8");
const wasm = readFileSync(join(engine_folder, "engine.wasm"));
const glue = readFileSync(join(engine_folder, "engine.js"), "utf8");
const hash = (said) => `'sha256-${createHash("sha256").update(said).digest("base64")}'`;

// The styles of the program's pages, as the pages themselves state them.
async function styles_of_results() {
  const create = createRequire(import.meta.url)(resolve(engine_folder, "engine.js"));
  const engine = await create({ wasmBinary: wasm });
  const ask = (name, ...texts) => engine.ccall(`boardmark_${name}`, "string", texts.map(() => "string"), texts);
  const run = (...words) => {
    const answer = ask("run", words.join("\n"));
    const end = answer.indexOf("\n");
    if (end + 1 === answer.length) throw new Error(`${words[0]}: ${JSON.parse(answer).told}`);
    return answer.slice(end + 1);
  };
  const kinds = ["mix", "trial", "wall"];
  for (const kind of kinds) ask("hold", `${kind}.yaml`, run("starter", kind));
  const pages = [["proportion", "mix.yaml"], ["batch", "--volume=2 ft3", "mix.yaml"], ["yield", "trial.yaml"],
                 ["wall", "wall.yaml"], ["draw", "wall.yaml"], ["pour", "wall.yaml"], ["brief", "wall.yaml"]];
  const found = new Set();
  for (const words of pages) {
    const policy = /style-src ([^;]*);/.exec(run(...words, "--format=html").replaceAll("&#x2F;", "/"))[1];
    for (const one of policy.match(/'sha256-[^']*'/g)) found.add(one);
  }
  return [...found];
}

// The parts are modules for whoever reads them; in the page each is a function of its own in one script.
function wrapped(name) {
  const exported = [];
  const body = source(name)
    .replace(/^import (\{.*\}) from "\.\/(.*)";$/gm, (line, names, from) => `const ${names} = modules["${from}"];`)
    .replace(/^export (async function|function|class) (\w+)/gm, (line, kind, what) => { exported.push(what); return `${kind} ${what}`; })
    .replace(/^\s*\/\/.*\n/gm, "").replace(/^ +/gm, "");
  return `modules["${name}"] = (() => {\n${body}return { ${exported.join(", ")} };\n})();`;
}

const parts = ["yaml_edit.js", "engine.js", "form.js", "result.js", "ticket.js", "page.js"];
const script = [glue, "const modules = {};", ...parts.map(wrapped)].join("\n");
if (script.includes("</script")) throw new Error("the script would end itself");
// Where the data of a module begin: its last large section, after the instructions.
function data_begin(module) {
  const data_section = 11;
  const number = (at) => { // of seven bits a byte, the least first
    let value = 0;
    for (let shift = 0; ; shift += 7) {
      value += (module[at] & 127) * 2 ** shift;
      if (module[at++] < 128) return { value, next: at };
    }
  };
  for (let at = 8; at < module.length;) {
    const { value: size, next } = number(at + 1);
    if (module[at] === data_section) return at;
    at = next + size;
  }
  throw new Error("engine.wasm has no data");
}

function packed(bytes, options) {
  const ran = spawnSync("xz", ["--format=lzma", `--lzma1=preset=9e,${options}`, "--stdout"],
                        { input: bytes, maxBuffer: 1 << 26 });
  if (ran.status !== 0) throw new Error(`xz: ${ran.stderr}`);
  return ran.stdout.toString("base64");
}

// Instructions are bytes without order: no bits of the position help. Data are mostly words of four bytes.
// Each learns nothing from the other and packs better by itself.
const begin = data_begin(wasm);
const engine = [packed(wasm.subarray(0, begin), "lc=4,pb=0"), packed(wasm.subarray(begin), "lc=0,lp=1,pb=0")].join("\n");
const style = source("page.css").replace(/\/\*.*?\*\/\n?/gs, "");
const styles = [hash(style), ...await styles_of_results()];
const filled = { "script-hash": hash(script).slice(1, -1), "style-hashes": styles.join(" "), style, script,
                 engine,
                 unpack: readFileSync(join(engine_folder, "unpack.wasm")).toString("base64") };
const page = source("page.html").replace(/@([a-z-]+)@/g, (mark, name) => filled[name] ?? mark);
writeFileSync(page_to_write, page);
console.log(`${page_to_write}: ${Math.round(page.length / 1000)} kB, ` +
            `${Math.round(gzipSync(page, { level: 9 }).length / 1000)} kB with gzip`);
