// What runs first: it compiles a part of the program through vm.Script, with V8's code cache beside it where V8 takes it.

/** Parts ask for one another by name. Each part is a function of what a module gets, and of `part`. */
export const loader = `const { closeSync, fstatSync, openSync, readSync } = require("node:fs");
const { Script } = require("node:vm");
const beside = (name) => __dirname + "/" + name;
// one room for all files, one after the other: memory that is touched for the first time costs
let room = Buffer.allocUnsafeSlow(1 << 20);
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
const kept = (name) => { try { return read(name); } catch {} };
const parts = new Map();
function part(name) {
  const known = parts.get(name);
  if (known) return known.module.exports;
  const file = beside(name + ".cjs");
  const source = read(name + ".cjs").latin1Slice();
  const script = new Script(source, { filename: file, cachedData: kept(name + ".cache") });
  const module = { exports: {} };
  parts.set(name, { module, script });
  const from = (id) => id.startsWith("./") ? part(id.slice(2, -4)) : require(id);
  script.runInThisContext()(module.exports, from, module, file, __dirname, part);
  return module.exports;
}
const program = part("program");
const tables = ["cues", "words"].map((name) => kept("program." + name)?.latin1Slice());`;

/** The file that is run as the command. */
export const launcher = (version) => `#!/usr/bin/env node
"use strict";
${loader}
program.start({
  chat: async () => part("chat"),
  demo: () => import("./demo.mjs"),
  paper: () => import("./paper.mjs"),
  csv: () => import("./csv.mjs"),
}, ${JSON.stringify(version)}, tables);
`;

/** Works out what would be worked out at every start: how cues are matched, phrases by their first word. */
export const tableMaker = `${loader}
const { writeFileSync } = require("node:fs");
const made = program.tables();
if (/[^\\x00-\\xff]/.test(made.join(""))) throw new Error("A word of the tables has letters beyond Latin-1.");
// two files: a text of over 256 kB costs V8 milliseconds more
for (const [at, name] of ["cues", "words"].entries()) writeFileSync(beside("program." + name), made[at], "latin1");
`;

/**
 * Answers questions on a record that is thrown away, and keeps what V8 compiled for it: one for what all questions need,
 * then one for each calculator's own part. It knows the tables, else their making would be kept as well.
 */
export const cacheMaker = `${loader}
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
  await program.warmChat(home, async () => part("chat"));
  for (const question of program.examples()) await program.warm(home, question);
  keep();
  rmSync(home, { recursive: true });
})();
`;
