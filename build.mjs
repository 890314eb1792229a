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

const making = ["--train", "--hear"].find((flag) => process.argv.includes(flag));
if (making) {
  const file = join(root, "node_modules", ".train.mjs");
  const build = await rolldown({
    input: join(root, "src/intents/chosen/train.ts"),
    platform: "node",
    cwd: root,
  });
  await build.write({ file, format: "es" });
  const { train, listen } = await import(file);
  const learned = join(root, "tests/questions/learned");
  if (making === "--train") train(learned, join(root, "data/model.json"));
  else listen(learned, join(root, "data/heard.json"));
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

/**
 * A single question needs one or two calculators: here the registry's imports become calls, so that a calculator's
 * file, and what only it imports, runs when the calculator is first looked into. Its name is that of its export.
 */
const onlyWhenAsked = {
  name: "only-when-asked",
  transform(code, id) {
    if (!/src[\\/]tools[\\/]registry\.ts$/.test(id)) return undefined;
    const lazy = code.replace(/^import \{ (\w+) \} from ("[^"]+");$/gm, (line, name, file) =>
      /^help/.test(name) ? line : `const ${name} = lazily("${name}", () => require(${file}).${name});`,
    );
    return `import { lazily } from "./lazily.ts";\n${lazy}`;
  },
};

/** What was learned stays in files of its own: the classifier's weights, read when the cues leave a sentence open, and how bakers talk, read when a word isn't known. */
const learnedBeside = {
  name: "learned-beside",
  load(id) {
    const [, what] = /data[\\/](model|heard)\.json$/.exec(id) ?? [];
    if (!what) return undefined;
    writeFileSync(join(dist, `program.${what}`), readFileSync(id));
    const names = Object.keys(JSON.parse(readFileSync(id, "utf8")));
    const getters = names.map((name) => `get ${name}() { return kept().${name}; }`).join(",");
    return {
      code: `import { readFileSync } from "node:fs";
        let read;
        const kept = () => (read ??= JSON.parse(readFileSync(__dirname + "/program.${what}", "latin1")));
        export default {${getters}};`,
      moduleType: "js",
    };
  },
};

await bundle("src/cli/entry.ts", {
  options: { plugins: [onlyWhenAsked, learnedBeside] },
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
// Written as the function that the launcher calls, so that a million letters aren't copied at every start; and made
// longer than what Node keeps in V8's own heap (0xFBEE9 letters), where the collector would have to move it.
const wrapped = `(function(exports,require,module,__filename,__dirname){${program}\n})`;
writeFileSync(programFile, wrapped.padEnd(1_050_000));

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

// Run twice here: once for the tables; then, having answered a question on a record that is thrown away, for the cache,
// which would else hold what making the tables needs.
const maker = join(dist, "make.cjs");
const make = (work) => {
  writeFileSync(
    maker,
    `const { mkdtempSync, readFileSync, rmSync, writeFileSync } = require("node:fs");
const { tmpdir } = require("node:os");
${tools}
${load}
${work}`,
  );
  const made = spawnSync(process.execPath, [maker], { stdio: "inherit" });
  rmSync(maker);
  if (made.status !== 0) process.exit(made.status ?? 1);
};
make(`const tables = program.exports.tables();
if (/[^\\x00-\\xff]/.test(tables.join(""))) throw new Error("A word of the tables has letters beyond Latin-1.");
// two files: a text of over 256 kB costs V8 milliseconds more
for (const [at, name] of ["cues", "words"].entries()) writeFileSync(beside("program." + name), tables[at], "latin1");
`);
make(`const home = mkdtempSync(join(tmpdir(), "bowlside-build-"));
program.exports.warm({}, ["cues", "words"].map((name) => kept("program." + name)?.latin1Slice()), home).then(() => {
  writeFileSync(beside("program.cache"), script.createCachedData());
  rmSync(home, { recursive: true });
});
`);
