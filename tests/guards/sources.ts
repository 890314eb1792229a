/** The repository's own files and what they import, for guards that hold the borders. */
import { readdirSync, readFileSync } from "node:fs";
import { dirname, join, relative } from "node:path";
import { root } from "../support/built.ts";

/** Files below a folder, as paths from the root with "/" between. */
export function filesIn(folder: string, keep = /./): string[] {
  return readdirSync(join(root, folder), { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => relative(root, join(entry.parentPath, entry.name)).replaceAll("\\", "/"))
    .filter((path) => keep.test(path))
    .sort();
}

export const textOf = (path: string): string => readFileSync(join(root, path), "utf8");

/** A file's code without its comments; texts in quotes stay. */
export const codeOf = (path: string): string =>
  textOf(path)
    .replace(/\/\*[\s\S]*?\*\//g, "")
    .replace(/(^|[^:"'`\\])\/\/.*$/gm, "$1");

export interface Import {
  /** The file that imports. */
  from: string;
  /** A path from the root for files of the repository, else the package as written. */
  to: string;
  /** Only types, gone when it runs. */
  types: boolean;
  /** Loaded when it is needed, not at the start. */
  later: boolean;
}

const statement = /(?:^|\n)\s*(?:import|export)\s+(type\s+)?(?:[^"';]*?\sfrom\s*)?"([^"\n]+)"/g;
const dynamic = /\bimport\(\s*"([^"\n]+)"\s*\)(\.)?/g;

/** Everything that a file imports. */
export function importsOf(from: string): Import[] {
  const code = codeOf(from);
  const place = (to: string) => (to.startsWith(".") ? join(dirname(from), to).replaceAll("\\", "/") : to);
  return [
    ...[...code.matchAll(statement)].map(([, types, to = ""]) => ({
      from,
      to: place(to),
      types: types !== undefined,
      later: false,
    })),
    // import("...").Name is a type
    ...[...code.matchAll(dynamic)].map(([, to = "", name]) => ({
      from,
      to: place(to),
      types: name !== undefined,
      later: name === undefined,
    })),
  ];
}

export const sources = filesIn("src", /\.tsx?$/).filter((path) => !path.endsWith(".d.ts"));
export const data = filesIn("data", /\.ts$/);
export const imports: Import[] = [...sources, ...data].flatMap(importsOf);

/** "a imports b" for each, so that a failed guard names them all. */
export const told = (list: readonly Import[]): string[] =>
  list.map(({ from, to }) => `${from} imports ${to}`);
