// What runs first: it compiles a part of the program through vm.Script, with V8's code cache beside it where V8 takes it.
import { chmodSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";

/** The texts that a question reads are in one file: V8 keeps one that is as long outside its heap, and cuts it free of cost. */
const packed = "question.pack";

/** What would be worked out at every start, in the order in which the program makes it and takes it up. */
const tables = ["cues", "phrases", "turns", "words", "signs"];
/** Which words each regular expression waits for; and these, of which a question needs a few: it reads no others. */
export const lineFile = "program.lines";
export const patternFile = "program.patterns";
/** Those that hold cues. */
export const cueFiles = ["program.cues", "program.signs"];
export const tableFiles = tables.map((name) => `program.${name}`);
/** What most questions need none of is no part of the pack. */
export const packedTables = tableFiles.slice(0, 3);

/**
 * Parts ask for one another by name. Each part is a function of what a module gets, and of `part`.
 * @param places where each text is in the pack, as [start, end]; those that aren't have files of their own
 */
const loader = (places) => `const { closeSync, fstatSync, openSync, readSync } = require("node:fs");
const { Script } = require("node:vm");
const beside = (name) => __dirname + "/" + name;
// one room for all files, one after the other: memory that is touched for the first time costs
let room = Buffer.allocUnsafeSlow(5 << 18);
function read(name) {
  const file = openSync(beside(name));
  try {
    const { size } = fstatSync(file);
    if (size > room.length) room = Buffer.allocUnsafeSlow(size);
    return room.subarray(0, readSync(file, room, 0, size, 0));
  } finally {
    closeSync(file);
  }
}
const places = ${JSON.stringify(places)};
const pack = ${Object.keys(places).length > 0 ? `read("${packed}").latin1Slice()` : '""'};
const textOf = (name) => places[name] ? pack.slice(...places[name]) : read(name).latin1Slice();
const may = (work) => { try { return work(); } catch {} };
let [lines, sources] = [];
const patterns = {
  lines: () => (lines ??= textOf("${lineFile}")),
  source(start, length) {
    sources ??= openSync(beside("${patternFile}"));
    return room.latin1Slice(0, readSync(sources, room, 0, length, start));
  },
};
const parts = new Map();
function part(name) {
  const known = parts.get(name);
  if (known) return known.module.exports;
  const file = beside(name + ".cjs");
  const source = textOf(name + ".cjs");
  const script = new Script(source, { filename: file, cachedData: may(() => read(name + ".cache")) });
  const module = { exports: {} };
  parts.set(name, { module, script });
  const from = (id) => id.startsWith("./") ? part(id.slice(2, -4)) : require(id);
  script.runInThisContext()(module.exports, from, module, file, __dirname, part, patterns);
  return module.exports;
}
const program = part("program");
const tables = ${JSON.stringify(tableFiles)}.map((name) => () => may(() => textOf(name)));`;

/** The file that is run as the command. */
const launcher = (version, places) => `#!/usr/bin/env node
"use strict";
${loader(places)}
program.start({
  chat: async () => part("chat"),
  demo: () => import("./demo.mjs"),
  paper: () => import("./paper.mjs"),
  csv: () => import("./csv.mjs"),
}, ${JSON.stringify(version)}, tables);
`;

/** Works out how cues are matched, phrases by their first word, and the words that a typo may be meant for. */
export const tableMaker = `${loader({})}
const { writeFileSync } = require("node:fs");
const made = program.tables();
if (/[^\\x00-\\xff]/.test(made.join(""))) throw new Error("A word of the tables has letters beyond Latin-1.");
for (const [at, name] of ${JSON.stringify(tableFiles)}.entries()) writeFileSync(beside(name), made[at], "latin1");
`;

/**
 * Answers questions on a record that is thrown away, and keeps what V8 compiled for it: one for what all questions need,
 * then one for each calculator's own part. It knows the tables, else their making would be kept as well.
 */
export const cacheMaker = `${loader({})}
const { mkdtempSync, rmSync, writeFileSync } = require("node:fs");
const { tmpdir } = require("node:os");
const { join } = require("node:path");
const home = mkdtempSync(join(tmpdir(), "bowlside-build-"));
const keep = () => {
  for (const [name, { script, done }] of parts) {
    if (done) continue;
    writeFileSync(beside(name + ".cache"), script.createCachedData());
    parts.get(name).done = true;
  }
};
(async () => {
  program.takeUp(tables);
  await program.warm(home, "230 g buttercream, how much flavor?");
  keep();
  await program.warmChat(home, async () => part("chat"), require("node:stream"));
  for (const question of program.examples()) await program.warm(home, question);
  keep();
  rmSync(home, { recursive: true });
})();
`;

/** Packs the texts that every question reads, and writes what is run as the command. */
export function finish(dist, version, names) {
  const places = {};
  let pack = "";
  for (const name of names) {
    const text = readFileSync(join(dist, name), "latin1");
    places[name] = [pack.length, pack.length + text.length];
    pack += text;
    rmSync(join(dist, name));
  }
  writeFileSync(join(dist, packed), pack, "latin1");
  const file = join(dist, "bowlside.cjs");
  writeFileSync(file, launcher(version, places));
  chmodSync(file, 0o755);
}
