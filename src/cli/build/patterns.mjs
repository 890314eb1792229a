// Regular expressions cost most at a start: reading and compiling one takes longer than a short sentence is worth. In
// the built program each waits until it is asked, and compiles only for a text that holds a word it can't do without.
import { rmSync } from "node:fs";
import { join, relative } from "node:path";
import { fileURLToPath, pathToFileURL } from "node:url";
import { headOf } from "./pattern-head.mjs";
import { wordsOf } from "./pattern-words.mjs";

/** Shorter ones cost less than waiting. */
const shortest = 20;

/** Names that no file of ours has: of what stands in for a pattern, and of what gives their table. */
const late = "$waiting";
const written = "$patterns";

const ours = /[\\/](?:src|data)[\\/].*\.tsx?$/;
const beside = (name) => JSON.stringify(fileURLToPath(new URL(name, import.meta.url)));

/**
 * A rolldown plugin: the regular expressions of src and data become `waiting(...)`, and stand in a table. So does what is
 * put together, where it was heard.
 * @param heard those that are put together, by their place
 */
export const waitingPatterns = (root, heard, table) =>
  patternsAs(
    root,
    (place, call, regex) => {
      const known = regex ?? heard.get(place);
      if (!known) return call;
      const { pattern, flags } = known;
      return `${late}(${table.add(pattern, flags, wordsOf(pattern, flags), headOf(pattern, flags))}, ${written})`;
    },
    beside("waiting.mjs"),
  );

const listeningPatterns = (root) =>
  patternsAs(
    root,
    (place, call) => `${late}(() => ${call}, ${JSON.stringify(place)})`,
    beside("listening.mjs"),
  );

/**
 * The regular expressions that are there once the program is read, by their place: it is bundled and read to see them.
 * @param bundle writes a bundle of the program with a plugin to a file
 */
export async function hearPatterns(root, bundle) {
  const file = join(root, "node_modules", `.patterns-${process.pid}.cjs`);
  await bundle(listeningPatterns(root), file);
  const { default: program } = await import(pathToFileURL(file));
  // opens all that is only opened when it is needed
  program.tables();
  rmSync(file);
  return globalThis.patternsHeard;
}

const mayMatchFile = /[\\/]phrases[\\/]may-match\.ts$/;
/** A turn of phrase is asked by the table of patterns, before the book that it is in is opened. */
const mayMatch = (file) => `import { waiting } from ${file};
  const asked = new Map();
  export function mayMatch(at, text, byWords) {
    if (!asked.has(at)) asked.set(at, waiting(at, ${written}));
    const pattern = asked.get(at);
    return pattern.holdsWords(text) && (byWords || pattern.begins(text));
  }`;

function patternsAs(root, instead, file) {
  return {
    name: "patterns",
    transform(text, id) {
      if (!ours.test(id)) return undefined;
      if (mayMatchFile.test(id)) return mayMatch(file);
      const found = patternsIn(this.parse(text, { lang: id.endsWith("x") ? "tsx" : "ts" }));
      if (found.length === 0) return undefined;
      let out = text;
      for (const [at, { start, end, regex }] of [...found.entries()].reverse()) {
        const call = instead(`${relative(root, id)}:${at}`, text.slice(start, end), regex);
        out = `${out.slice(0, start)}(${late}${at} ??= ${call})${out.slice(end)}`;
      }
      const names = found.map((_, at) => `${late}${at}`);
      return `import { waiting as ${late} } from ${file};\nvar ${names.join(", ")};\n${out}`;
    },
  };
}

/**
 * Literals, and what a file puts together once, as a parsed file has them. One with "g" remembers where it was, and waits
 * only where nothing asks for that; one with "y" can't wait.
 */
export function patternsIn(program) {
  const found = [];
  const searched = onlySearchedFor(program);
  const visit = (node, once, all) => {
    if (Array.isArray(node)) for (const each of node) visit(each, once, all);
    else if (node && typeof node === "object") {
      const isPut = node.type === "NewExpression" && node.callee.name === "RegExp" && once;
      if (node.type === "Literal" && node.regex) {
        if (node.regex.pattern.length >= shortest && waits(node.regex.flags, all)) found.push(node);
      } else if (isPut && waits(node.arguments[1]?.value ?? "", all))
        found.push({ start: node.start, end: node.end });
      else
        for (const key in node)
          visit(
            node[key],
            once && (isBook(node) || !/^(?:Arrow)?Function/.test(node.type)),
            takesAll(node, key) || (key === "init" && searched.has(node.id?.name)),
          );
    }
  };
  visit(program, true, false);
  return found.sort((a, b) => a.start - b.start);
}

/** Names that are given to "text.matchAll(each)" and the like, and to nothing else in the file, nor out of it. */
function onlySearchedFor(program) {
  const [yes, no] = [new Set(), new Set()];
  const visit = (node, isSearched) => {
    if (Array.isArray(node)) for (const each of node) visit(each, isSearched);
    else if (node && typeof node === "object") {
      if (node.type === "Identifier") (isSearched ? yes : no).add(node.name);
      const isExport = node.type === "ExportNamedDeclaration";
      if (isExport) for (const { id } of node.declaration?.declarations ?? []) no.add(id.name);
      for (const key in node)
        if (node.type !== "VariableDeclarator" || key !== "id")
          visit(node[key], node.type === "CallExpression" && key === "arguments" && searches(node));
    }
  };
  visit(program, false);
  return new Set([...yes].filter((name) => !no.has(name)));
}
const searches = ({ callee }) => /^(?:match|matchAll|replace|replaceAll)$/.test(callee.property?.name ?? "");

/** A list that is made once, when it is first needed: "(): readonly Phrase[] => [...]". */
const isBook = ({ type, params, returnType, body }) =>
  type === "ArrowFunctionExpression" &&
  params.length === 0 &&
  returnType?.typeAnnotation.type === "TSTypeOperator" &&
  /^(?:Array|Call)Expression$/.test(body.type);

/** "text.replace(/.../g, by)", a turn of phrase's "from: /.../g" and an aside's "said: /.../g" begin anew each time. */
const takesAll = (node, key) =>
  node.type === "CallExpression"
    ? key === "arguments" && node.callee.property?.name === "replace"
    : node.type === "Property" && key === "value" && /^(?:from|said)$/.test(node.key.name);

const waits = (flags, all) => !(all ? /[ydv]/ : /[gydv]/).test(flags);
