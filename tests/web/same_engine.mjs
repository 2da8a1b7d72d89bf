// The engine of the page beside the program, without a browser: every example, by every command and in every form
// that both have.
// Usage: node same_engine.mjs PROGRAM SOURCE ENGINE-FOLDER
import { spawnSync } from "node:child_process";
import { createRequire } from "node:module";
import { readFileSync, readdirSync } from "node:fs";
import { join, resolve } from "node:path";

const [program, source, folder] = process.argv.slice(2).map((one) => resolve(one));
const create = createRequire(import.meta.url)(join(folder, "engine.js"));
const engine = await create({ wasmBinary: readFileSync(join(folder, "engine.wasm")) });
const ask = (name, ...texts) => engine.ccall(`boardmark_${name}`, "string", texts.map(() => "string"), texts);

// WebAssembly does not fuse multiply and add; the C library's exp and pow are asked not to, see page.mjs.
const unfused = { ...process.env, GLIBC_TUNABLES: "glibc.cpu.hwcaps=-FMA,-FMA4,-AVX2,-FMA_Usable,-AVX2_Usable" };
const examples = join(source, "examples");
const names = readdirSync(examples).filter((name) => /\.(yaml|csv)$/.test(name));
for (const name of names) ask("hold", name, readFileSync(join(examples, name), "utf8"));

const commands = { mix: [["proportion"], ["check"], ["dose"], ["compare"], ["batch", "--volume=2 ft3"]], trial: [["yield"]],
                   wall: [["wall"], ["pour"], ["brief"], ["draw"]] };
let [compared, results] = [0, 0];
const faults = [];
for (const name of names.filter((one) => one.endsWith(".yaml"))) {
  for (const words of commands[ask("kind", readFileSync(join(examples, name), "utf8"))] ?? []) {
    for (const form of words[0] === "draw" ? ["svg", "html"] : ["text", "json", "html"]) {
      const asked = [...words, `--format=${form}`, name];
      const own = spawnSync(program, asked, { cwd: examples, encoding: "utf8", maxBuffer: 1 << 26, env: unfused });
      const answer = ask("run", asked.join("\n"));
      const end = answer.indexOf("\n");
      const theirs = { ...JSON.parse(answer.slice(0, end)), result: answer.slice(end + 1) };
      ++compared;
      results += own.stdout.length > 0;
      if (own.status !== theirs.code || own.stdout !== theirs.result) faults.push(`${asked.join(" ")}: exit ${own.status} and ${theirs.code}`);
    }
  }
}
for (const fault of faults) console.log(fault);
console.log(`${compared} runs of the engine, ${results} with a result, ${faults.length} differ`);
process.exit(faults.length > 0 || results < 50 ? 1 : 0);
