// The program in parts: what every question needs, what several calculators share, and each calculator by itself. A
// single question reads three of them. What V8 takes up at a start grows with every function of a file, run or not.
import { readFileSync } from "node:fs";
import { join } from "node:path";

/** The calculators of the registry but the one that knows all others: name and file. */
function calculators(root) {
  const folder = join(root, "src/tools");
  const registry = readFileSync(join(folder, "registry.ts"), "utf8");
  return [...registry.matchAll(importLine)]
    .filter(([, name]) => !always.test(name))
    .map(([, name, file]) => [name, join(folder, file)]);
}

/** A calculator's name is that of its export. */
const importLine = /^import \{ (\w+) \} from "(\.[^"]+)";$/gm;
const always = /^help/;

/** The registry's imports become calls: a calculator is read when something of it but its name is looked at. */
const onlyWhenAsked = {
  name: "only-when-asked",
  transform(code, id) {
    if (!/src[\\/]tools[\\/]registry\.ts$/.test(id)) return undefined;
    const lazy = code.replace(importLine, (line, name) =>
      always.test(name) ? line : `const ${name} = lazily("${name}", () => part("${name}").${name});`,
    );
    return `import { lazily } from "./lazily.ts";\n${lazy}`;
  },
};

/**
 * What ink awaits while it is read: its layout engine, which the chat awaits instead, and development tools that are
 * never started. A part is a function, and can't wait.
 */
const inkWaitsLater = (root) => ({
  name: "ink-waits-later",
  resolveId: (id) => (id === "yoga-layout" ? join(root, "src/cli/chat/layout-engine.ts") : undefined),
  transform(code, id) {
    return /ink[\\/]build[\\/]reconciler\.js$/.test(id)
      ? code.replace("await import('./devtools.js')", "undefined").replaceAll("await ", "")
      : undefined;
  },
});

/** What rolldown needs to know, and what is to be written, for the program in parts. */
export function inParts(root, entry) {
  const tools = [...calculators(root), ["chat", join(root, "src/cli/chat/main.tsx")]];
  const reached = new Map();
  const reachedFrom = (from, context) => {
    if (!reached.has(from)) {
      const all = new Set();
      for (const left = [from]; left.length > 0; ) {
        const id = left.pop();
        if (all.has(id)) continue;
        all.add(id);
        left.push(...(context.getModuleInfo(id)?.importedIds ?? []));
      }
      reached.set(from, all);
    }
    return reached.get(from);
  };
  const partOf = (id, context) => {
    if (reachedFrom(entry, context).has(id)) return "program";
    const of = tools.filter(([, file]) => reachedFrom(file, context).has(id));
    return of.length > 1 ? "shared" : of[0]?.[0];
  };
  const group = (debugName, priority, is) => ({
    debugName,
    priority,
    name: (id, context) => {
      const name = partOf(id, context);
      return name && is(name) ? name : null;
    },
  });
  return {
    options: {
      input: { program: entry, ...Object.fromEntries(tools) },
      preserveEntrySignatures: "allow-extension",
      plugins: [onlyWhenAsked, inkWaitsLater(root)],
      transform: { define: { "process.env.NODE_ENV": '"production"', "process.env.DEV": '"false"' } },
    },
    write: {
      format: "cjs",
      entryFileNames: "[name].cjs",
      chunkFileNames: "[name].cjs",
      codeSplitting: {
        groups: [
          group("program", 3, (name) => name === "program"),
          group("shared", 2, (name) => name === "shared"),
          group("calculator", 1, () => true),
        ],
      },
    },
  };
}
