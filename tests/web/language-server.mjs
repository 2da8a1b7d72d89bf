// Speaks to a YAML language server as an editor does: a mix file whose first line names the schema
// completes keys, explains them, and flags a wrong unit and an unknown key.
// Usage: node language-server.mjs FOLDER-OF-MODULES SCHEMA
import { spawn } from "node:child_process";
import { join } from "node:path";
import { pathToFileURL } from "node:url";

const [modules, schema] = process.argv.slice(2);
const server = spawn(process.execPath,
  [join(modules, "yaml-language-server/bin/yaml-language-server"), "--stdio"],
  { stdio: ["pipe", "pipe", "inherit"] });

let buffered = Buffer.alloc(0);
let nextId = 0;
const waiting = new Map();
const diagnosed = [];

function send(message) {
  const body = JSON.stringify({ jsonrpc: "2.0", ...message });
  server.stdin.write(`Content-Length: ${Buffer.byteLength(body)}\r\n\r\n${body}`);
}
function request(method, params) {
  const id = ++nextId;
  send({ id, method, params });
  return new Promise((resolve) => waiting.set(id, resolve));
}
function receive(message) {
  if (message.method === "textDocument/publishDiagnostics") {
    diagnosed.push(message.params);
  } else if (message.method && message.id !== undefined) { // the server asks for its settings
    const items = message.params?.items ?? [];
    send({ id: message.id, result: message.method === "workspace/configuration"
      ? items.map(() => null) : null });
  } else if (waiting.has(message.id)) {
    waiting.get(message.id)(message.result);
    waiting.delete(message.id);
  }
}
server.stdout.on("data", (chunk) => {
  buffered = Buffer.concat([buffered, chunk]);
  for (;;) {
    const end = buffered.indexOf("\r\n\r\n");
    if (end < 0) return;
    const length = Number(/Content-Length: (\d+)/.exec(buffered.subarray(0, end).toString())[1]);
    if (buffered.length < end + 4 + length) return;
    receive(JSON.parse(buffered.subarray(end + 4, end + 4 + length).toString()));
    buffered = buffered.subarray(end + 4 + length);
  }
});

const modeline = `# yaml-language-server: $schema=${pathToFileURL(schema)}`;
const text = [modeline, "boardmark: 1", "title: Quay terrace", "reporting: us", "requirements:",
  "  strength: 4500 PSI", "  slump: 4 in", "  slumb_window: 6 in to 8 in", "  ", "  exposure: [F2]",
  "materials:", "  cement: {kind: portland cement}", ""].join("\n");
const document = { uri: "file:///terrace/mix.yaml" };
const faults = [];
const demand = (holds, what) => { if (!holds) faults.push(what); };

async function until(found) {
  for (let i = 0; i < 300; ++i) {
    const value = found();
    if (value) return value;
    await new Promise((resolve) => setTimeout(resolve, 100));
  }
  return undefined;
}

await request("initialize", { processId: process.pid, rootUri: null, capabilities: {
  textDocument: { completion: { completionItem: { snippetSupport: true } },
                  hover: { contentFormat: ["plaintext"] } },
  workspace: { configuration: false } } });
send({ method: "initialized", params: {} });
send({ method: "workspace/didChangeConfiguration", params: { settings: { yaml: {
  validate: true, hover: true, completion: true, schemaStore: { enable: false } } } } });
send({ method: "textDocument/didOpen", params: { textDocument: {
  ...document, languageId: "yaml", version: 1, text } } });

const problems = await until(() => diagnosed.find((one) => one.diagnostics.length > 0));
const lines = (problems?.diagnostics ?? []).map((one) => one.range.start.line);
demand(lines.includes(5), "a wrong unit is not flagged on its line");
demand(lines.includes(7), "an unknown key is not flagged on its line");
demand(!lines.includes(6), "a right value is flagged");
const said = (problems?.diagnostics ?? []).find((one) => one.range.start.line === 5)?.message ?? "";
demand(said.includes("psi") && said.includes("for example 4500 psi"),
  `a wrong unit is not told with an example: ${said}`);

const completion = await request("textDocument/completion",
  { textDocument: document, position: { line: 8, character: 2 } });
const labels = (completion?.items ?? []).map((item) => item.label);
for (const key of ["code", "air", "finish"]) {
  demand(labels.includes(key), `'${key}' is not offered under requirements: ${labels.join(", ")}`);
}
demand(!labels.includes("slump"), "a key that is there is offered again");

const hover = await request("textDocument/hover",
  { textDocument: document, position: { line: 6, character: 4 } });
demand(JSON.stringify(hover?.contents ?? "").includes("slump at placing"),
  `hovering over slump says: ${JSON.stringify(hover)}`);

const classes = await request("textDocument/hover",
  { textDocument: document, position: { line: 9, character: 14 } });
demand(JSON.stringify(classes?.contents ?? "").includes("freezing and thawing with frequent contact"),
  `hovering over F2 says: ${JSON.stringify(classes)}`);

console.log(`${lines.length} problems flagged, ${labels.length} keys offered`);
if (faults.length > 0) console.error(faults.join("\n"));
server.kill();
process.exit(faults.length > 0 ? 1 : 0);
