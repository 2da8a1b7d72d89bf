// The engine, unpacked from the page itself: text in, text out.

const bytes_of = (base64) => Uint8Array.from(atob(base64), (letter) => letter.charCodeAt(0));
const most_unpacked = 8 * 1024 * 1024;

// The parts in their order, as one.
function joined(parts) {
  const whole = new Uint8Array(parts.reduce((size, part) => size + part.length, 0));
  parts.reduce((at, part) => { whole.set(part, at); return at + part.length; }, 0);
  return whole;
}

// The engine is packed a quarter smaller than what browsers undo themselves; a small module undoes it.
async function unpacked(packed, unpack_module) {
  const { instance } = await WebAssembly.instantiate(unpack_module,
    { env: { emscripten_notify_memory_growth() {} }, wasi_snapshot_preview1: {} });
  const { memory, packed_at, unpack } = instance.exports;
  const from = packed_at();
  const to = (from + packed.length + 15) & ~15;
  const lacking = to + most_unpacked - memory.buffer.byteLength;
  if (lacking > 0) memory.grow(Math.ceil(lacking / 65536));
  new Uint8Array(memory.buffer, from).set(packed);
  const size = unpack(packed.length, to, most_unpacked);
  if (size === 0) throw new Error("the engine cannot be unpacked; save the page again");
  return new Uint8Array(memory.buffer, to, size).slice();
}

// Texts go through the engine's own memory: its stack is too small for a file of a megabyte.
function asked(module, name, texts) {
  const places = texts.map((text) => {
    const bytes = module.lengthBytesUTF8(text) + 1;
    const place = module._malloc(bytes);
    module.stringToUTF8(text, place, bytes);
    return place;
  });
  const answer = module[`_boardmark_${name}`](...places);
  places.forEach((place) => module._free(place));
  return answer ? module.UTF8ToString(answer) : "";
}

// `packed` is the engine in LZMA, a part to a line, `unpack` the module that undoes it, all in base64.
export async function engine_of(create, packed, unpack) {
  const parts = packed.trim().split("\n").map((part) => unpacked(bytes_of(part), bytes_of(unpack)));
  const module = await create({ wasmBinary: joined(await Promise.all(parts)) });
  const ask = (name, ...texts) => asked(module, name, texts);
  return {
    // Opens these files and no others: {name: text}.
    hold(files) {
      ask("hold_nothing");
      for (const [name, text] of Object.entries(files)) ask("hold", name, text);
    },
    run(...words) {
      const answer = ask("run", words.join("\n"));
      const end = answer.indexOf("\n");
      return { ...JSON.parse(answer.slice(0, end)), result: answer.slice(end + 1) };
    },
    faults: (kind, name) => JSON.parse(ask("faults", kind, name)),
    kind: (text) => ask("kind", text),
    tree: (text) => JSON.parse(ask("tree", text)),
    form: (kind) => JSON.parse(ask("form", kind)),
    options: (command) => JSON.parse(ask("options", command)),
  };
}
