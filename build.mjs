// Builds dist/: one narrow bundle for a single question, the chat apart, and a launcher that keeps V8's code cache.
// With --plain its code stays readable, so that a profile tells what costs.
import { spawnSync } from "node:child_process";
import { existsSync, mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import { withHeads } from "./src/cli/build/cue-heads.mjs";
import {
  cacheMaker,
  cueFiles,
  finish,
  lineFile,
  packedTables,
  patternFile,
  tableMaker,
} from "./src/cli/build/launcher.mjs";
import { inParts } from "./src/cli/build/parts.mjs";
import { patternTable } from "./src/cli/build/pattern-table.mjs";
import { hearPatterns, waitingPatterns } from "./src/cli/build/patterns.mjs";

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
    input: typeof input === "string" ? join(root, input) : input,
    platform: "node",
    cwd: root,
    logLevel: "warn",
    ...output.options,
  });
  const { output: chunks } = await build.write({
    minify: !process.argv.includes("--plain"),
    comments: false,
    ...output.write,
  });
  await build.close();
  for (const { moduleIds = [] } of chunks)
    for (const id of moduleIds) {
      const [folder] = /^.*[\\/]node_modules[\\/](?:@[^\\/]+[\\/])?[^\\/]+/.exec(id.replace(/^\0/, "")) ?? [];
      if (folder && existsSync(join(folder, "package.json"))) bundled.add(folder);
    }
  return chunks.map(({ fileName }) => fileName);
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

const entry = "src/cli/entry.ts";
const heard = await hearPatterns(root, (plugin, file) =>
  bundle(entry, { options: { plugins: [plugin] }, write: { file, format: "cjs", codeSplitting: false } }),
);
const patterns = patternTable();
const parts = inParts(root, join(root, entry));
const written = await bundle(parts.options.input, {
  options: {
    ...parts.options,
    plugins: [...parts.options.plugins, learnedBeside, waitingPatterns(root, heard, patterns)],
  },
  write: { dir: dist, ...parts.write },
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

// ASCII alone: the program is then read and kept as one byte a letter. Each part is a function that the launcher calls.
const escaped = (letter) => `\\u${letter.charCodeAt(0).toString(16).padStart(4, "0")}`;
for (const name of written.filter((each) => each.endsWith(".cjs"))) {
  const code = readFileSync(join(dist, name), "utf8").replace(/[\u0080-\uffff]/g, escaped);
  writeFileSync(
    join(dist, name),
    `(function(exports,require,module,__filename,__dirname,$part,$patterns){${code}\n})`,
  );
}
writeFileSync(join(dist, lineFile), patterns.lines(), "latin1");
writeFileSync(join(dist, patternFile), patterns.sources(), "latin1");

writeFileSync(join(dist, "licenses.txt"), licenses());

const maker = join(dist, "make.cjs");
function run(work) {
  writeFileSync(maker, work);
  const made = spawnSync(process.execPath, [maker], { encoding: "utf8" });
  rmSync(maker);
  if (made.status === 0) return;
  console.error(made.stderr);
  process.exit(made.status ?? 1);
}

run(tableMaker);
for (const name of cueFiles)
  writeFileSync(join(dist, name), withHeads(readFileSync(join(dist, name), "latin1")), "latin1");
run(cacheMaker);
finish(dist, version, ["program.cjs", "shared.cjs", lineFile, ...packedTables]);
