// Builds dist/: one narrow bundle for a single question, the chat apart, and a launcher that keeps V8's code cache.
import { spawnSync } from "node:child_process";
import { chmodSync, existsSync, mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";

const root = dirname(fileURLToPath(import.meta.url));
const dist = join(root, "dist");

let rolldown;
try {
  ({ rolldown } = await import("rolldown"));
} catch {
  console.error(
    "The bundler isn't installed, so dist/ is left as it is. Run npm ci with development packages to build.",
  );
  process.exit(existsSync(join(dist, "bowlside.cjs")) ? 0 : 1);
}

if (process.argv.includes("--train")) {
  const file = join(root, "node_modules", ".train.mjs");
  const build = await rolldown({
    input: join(root, "src/intents/train.ts"),
    platform: "node",
    cwd: root,
  });
  await build.write({ file, format: "es" });
  (await import(file)).train(join(root, "tests/questions/learned"), join(root, "data/model.json"));
  process.exit(0);
}

const { version } = JSON.parse(readFileSync(join(root, "package.json"), "utf8"));
rmSync(dist, { recursive: true, force: true });
mkdirSync(dist);

/** Folders of the packages whose code is in a bundle. */
const bundled = new Set();

async function bundle(input, output) {
  const build = await rolldown({
    input: join(root, input),
    platform: "node",
    cwd: root,
    logLevel: "warn",
    ...output.options,
  });
  const { output: chunks } = await build.write({ minify: true, comments: false, ...output.write });
  await build.close();
  for (const { moduleIds = [] } of chunks)
    for (const id of moduleIds) {
      const [folder] = /^.*[\\/]node_modules[\\/](?:@[^\\/]+[\\/])?[^\\/]+/.exec(id.replace(/^\0/, "")) ?? [];
      if (folder && existsSync(join(folder, "package.json"))) bundled.add(folder);
    }
}

/** Most of their licenses ask to be handed on with their code. */
function licenses() {
  const texts = [...bundled].map((folder) => {
    const about = JSON.parse(readFileSync(join(folder, "package.json"), "utf8"));
    const files = readdirSync(folder).filter((name) =>
      /^(?:licen[cs]e|copying|notice)(?:-mit)?(?:\.(?:md|txt))?$/i.test(name),
    );
    const text = files.map((name) => readFileSync(join(folder, name), "utf8").trim()).join("\n\n");
    return `${about.name} ${about.version}\n\n${text || `License: ${about.license ?? "not said"}`}\n`;
  });
  return `What is bundled with this program, and under which licenses.\n\n${texts.sort().join(`\n${"-".repeat(72)}\n\n`)}`;
}

// natural's edit distance asks for all of underscore and uses two functions of it
const underscore = { alias: { underscore: join(root, "src/intents/underscore.ts") } };
await bundle("src/cli/entry.ts", {
  options: { resolve: underscore },
  write: { file: join(dist, "program.cjs"), format: "cjs", codeSplitting: false },
});
await bundle("src/cli/chat/main.tsx", {
  options: {
    transform: { define: { "process.env.NODE_ENV": '"production"', "process.env.DEV": '"false"' } },
    resolve: { alias: { "react-devtools-core": join(root, "src/cli/chat/no-devtools.ts") } },
  },
  write: { file: join(dist, "chat.mjs"), format: "es", codeSplitting: false },
});

await bundle("src/cli/demo/main.ts", {
  write: { file: join(dist, "demo.mjs"), format: "es", codeSplitting: false },
});

// The library's build for where there are no files: node's looks for its fonts beside itself. Papers are set in the
// standard fonts, so it needs no reader of font files.
await bundle("src/cli/paper/paper.ts", {
  options: {
    platform: "browser",
    resolve: { alias: { fontkit: join(root, "src/cli/paper/no-own-fonts.ts") } },
  },
  write: { file: join(dist, "paper.mjs"), format: "es", codeSplitting: false },
});
await bundle("src/cli/csv/csv.ts", {
  write: { file: join(dist, "csv.mjs"), format: "es", codeSplitting: false },
});

// ASCII alone: the program is then read and kept as one byte a letter.
const programFile = join(dist, "program.cjs");
const escaped = (letter) => `\\u${letter.charCodeAt(0).toString(16).padStart(4, "0")}`;
const program = readFileSync(programFile, "utf8").replace(/[\u0080-\uffff]/g, escaped);
// written as the function that the launcher calls, so that a million letters aren't copied at every start
writeFileSync(programFile, `(function(exports,require,module,__filename,__dirname){${program}\n})`);

writeFileSync(join(dist, "licenses.txt"), licenses());

// The launcher compiles the program through vm.Script, with the code cache beside it when V8 takes it. The tables hold
// what would be worked out at every start: how cues are matched, phrases by their first word.
const load = `const file = beside("program.cjs");
const script = new Script(readFileSync(file, "latin1"), { filename: file, cachedData: kept("program.cache") });
const program = { exports: {} };
script.runInThisContext()(program.exports, require, program, file, __dirname);`;
const tools = `const { join } = require("node:path");
const { Script } = require("node:vm");
const beside = (name) => join(__dirname, name);
const kept = (name) => { try { return readFileSync(beside(name)); } catch {} };`;
const launcher = `#!/usr/bin/env node
"use strict";
const { readFileSync } = require("node:fs");
${tools}
${load}
const parts = {
  chat: () => import("./chat.mjs"),
  demo: () => import("./demo.mjs"),
  paper: () => import("./paper.mjs"),
  csv: () => import("./csv.mjs"),
};
program.exports.start(parts, ${JSON.stringify(version)}, ["cues", "words"].map((name) => kept("program." + name)?.latin1Slice()));
`;
writeFileSync(join(dist, "bowlside.cjs"), launcher);
chmodSync(join(dist, "bowlside.cjs"), 0o755);

// Run once here: it writes the tables and, having answered a question on a record that is thrown away, the cache.
const maker = join(dist, "make.cjs");
writeFileSync(
  maker,
  `const { mkdtempSync, readFileSync, rmSync, writeFileSync } = require("node:fs");
const { tmpdir } = require("node:os");
${tools}
${load}
const tables = program.exports.tables();
if (/[^\\x00-\\xff]/.test(tables.join(""))) throw new Error("A word of the tables has letters beyond Latin-1.");
// two files: a text of over 256 kB costs V8 milliseconds more
for (const [at, name] of ["cues", "words"].entries()) writeFileSync(beside("program." + name), tables[at], "latin1");
const home = mkdtempSync(join(tmpdir(), "bowlside-build-"));
program.exports.warm({}, tables, home).then(() => {
  writeFileSync(beside("program.cache"), script.createCachedData());
  rmSync(home, { recursive: true });
});
`,
);
const made = spawnSync(process.execPath, [maker], { stdio: "inherit" });
rmSync(maker);
if (made.status !== 0) process.exit(made.status ?? 1);
