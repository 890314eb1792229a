// Bundles one script of this folder with what it imports from src, and runs it: node tests/bench/run.mjs NAME [...]
import { rmSync } from "node:fs";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { rolldown } from "rolldown";

const [name = "", ...rest] = process.argv.slice(2);
const root = process.cwd();
const folder = join(root, "node_modules", `.bench-${name}-${process.pid}`);
const build = await rolldown({
  input: join(root, "tests/bench", `${name}.ts`),
  platform: "node",
  cwd: root,
  logLevel: "silent",
  // packages stay where they are: they load files of their own
  external: ["pdfkit", /^@nlpjs\//, /^natural(?:\/|$)/, "@lydell/node-pty", "@xterm/headless"],
});
const { output } = await build.write({ dir: folder, format: "es", entryFileNames: "main.mjs" });
await build.close();
process.on("exit", () => rmSync(folder, { recursive: true, force: true }));
process.argv.splice(2, Infinity, ...rest);
await import(pathToFileURL(join(folder, output[0].fileName)).href);
