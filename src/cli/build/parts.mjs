// The program in parts: what every question needs, what several calculators share, and each calculator by itself. A
// single question reads three of them. What V8 takes up at a start grows with every function of a file, run or not.
import { readFileSync } from "node:fs";
import { basename, dirname, join, relative } from "node:path";

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
      always.test(name) ? line : `const ${name} = lazily("${name}", () => $part("${name}").${name});`,
    );
    return `import { lazily } from "./lazily.ts";\n${lazy}`;
  },
};

/** What a first question needs none of. Only functions are exported there, and none is called while a file is read. */
const laterOnes = (root) =>
  [
    ["behind", "src/intents/follow/behind.ts"],
    ["opening", "src/cli/open-chat.ts"],
    ["ringing", "src/cli/ring-here.ts"],
  ].map(([name, file]) => [name, join(root, file)]);

/** What only these share goes with the first, which the chat reads before itself. */
const onScreen = ["opening", "ringing", "chat"];

/** The imports of such a file become calls: it is read when one of its functions is called. */
const onlyWhenCalled = (root) => ({
  name: "only-when-called",
  transform(code, id) {
    const later = laterOnes(root).filter(([, file]) => code.includes(basename(file)) && id !== file);
    if (!/\.tsx?$/.test(id) || later.length === 0) return undefined;
    let out = code;
    const lang = id.endsWith("x") ? "tsx" : "ts";
    for (const { type, source, specifiers, start, end } of this.parse(code, { lang }).body.reverse()) {
      const [name] = later.find(([, file]) => file === join(dirname(id), source?.value ?? "")) ?? [];
      if (!name || type !== "ImportDeclaration") continue;
      const calls = specifiers
        .filter(({ importKind }) => importKind !== "type")
        .map(
          ({ local, imported }) =>
            `const ${local.name} = (...all) => $part("${name}").${imported.name}(...all);`,
        );
      out = `${out.slice(0, start)}${calls.join(" ")}${out.slice(end)}`;
    }
    return out;
  },
});

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

/**
 * Which part a module goes with: the program's, its folder's calculator's, the only one's that needs it; else what
 * several share. Calculators that read modules of each other's folders in a circle would be one part.
 */
function sharer(entry, tools, folder) {
  const after = (id, context) => context.getModuleInfo(id)?.importedIds ?? [];
  const remembered = (work) => {
    const known = new Map();
    return (key, context) => {
      if (!known.has(key)) known.set(key, work(key, context));
      return known.get(key);
    };
  };
  const from = (starts, context, stops = () => false) => {
    const all = new Set();
    for (const left = [...starts]; left.length > 0; ) {
      const id = left.pop();
      if (all.has(id) || stops(id)) continue;
      all.add(id);
      left.push(...after(id, context));
    }
    return all;
  };
  const program = remembered((id, context) => from([id], context));
  /** The calculator whose folder it is in. */
  const homeOf = (id) => {
    const [name, ...rest] = relative(folder, id).split(/[\\/]/);
    return rest.length > 0 && !/^(?:\.\.|lib|contract)$/.test(name) ? name : undefined;
  };
  const modules = remembered((_, context) => [
    ...from(
      tools.map(([, file]) => file),
      context,
    ),
  ]);
  const names = remembered((_, context) => [
    ...new Set([...tools.map(([name]) => name), ...modules("", context).flatMap((id) => homeOf(id) ?? [])]),
  ]);
  const own = (name, context) => [
    ...tools.filter(([each]) => each === name).map(([, file]) => file),
    ...modules("", context).filter((id) => homeOf(id) === name),
  ];
  /** What a calculator needs other than through another one. */
  const within = remembered((name, context) =>
    from(own(name, context), context, (id) => (homeOf(id) ?? name) !== name),
  );
  return (id, context) => {
    if (program(entry, context).has(id)) return "program";
    const home = homeOf(id);
    if (home) return home;
    const of = names("", context).filter((name) => within(name, context).has(id));
    if (of.length < 2) return of[0];
    return of.every((name) => onScreen.includes(name)) ? onScreen[0] : "shared";
  };
}

/** What rolldown needs to know, and what is to be written, for the program in parts. */
export function inParts(root, entry) {
  const tools = [...calculators(root), ...laterOnes(root), ["chat", join(root, "src/cli/chat/main.tsx")]];
  const partOf = sharer(entry, tools, join(root, "src/tools"));
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
      plugins: [onlyWhenAsked, onlyWhenCalled(root), inkWaitsLater(root)],
      transform: { define: { "process.env.NODE_ENV": '"production"', "process.env.DEV": '"false"' } },
    },
    write: {
      format: "cjs",
      entryFileNames: "[name].cjs",
      chunkFileNames: "[name].cjs",
      codeSplitting: {
        includeDependenciesRecursively: false,
        groups: [
          group("program", 3, (name) => name === "program"),
          group("shared", 2, (name) => name === "shared"),
          group("calculator", 1, () => true),
        ],
      },
    },
  };
}
