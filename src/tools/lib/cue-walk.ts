/**
 * Most cues are no more than words and facets in a row. They are walked over the sentence's tokens here, which costs
 * nothing to prepare; a regular expression has to be compiled first. What this can't read is left to one.
 */

import { alternatives, closing } from "./cue-groups.ts";

/**
 * A word; its several spellings; a gap (0); any one token (1); what a token begins with; a facet with the values that it
 * may have; or one of several rows of nodes, which may be missing where it is `loose` and come again where it is `many`.
 * Short, since the build writes them down.
 */
type Node = string | string[] | 0 | 1 | { from: string } | { f: string; is?: string[] } | Any;
type Any = { any: Node[][]; loose?: 1; many?: 1 };

export interface Walk {
  row: Node[];
  /** It begins with the sentence, or ends with it. */
  start?: 1;
  end?: 1;
}

/** Up to so many tokens may stand in a gap, as in the regular expression of ".." . */
const widest = 10;

/** The pattern as nodes; undefined where it needs a regular expression. */
export function walkOf(pattern: string): Walk | undefined {
  const start = pattern.startsWith("^");
  const trimmed = pattern.trimEnd();
  const end = trimmed.endsWith("$") && !trimmed.endsWith("\\$");
  const body = trimmed.slice(start ? 1 : 0, end ? -1 : undefined);
  const parts = alternatives(body);
  // an anchor would belong to one of the alternatives alone
  if (parts.length > 1 && (start || end)) return undefined;
  const nodes = parts.length > 1 ? oneOf(parts) : sequence(body);
  return nodes && nodes.length > 0
    ? { row: nodes, ...(start ? { start: 1 as const } : {}), ...(end ? { end: 1 as const } : {}) }
    : undefined;
}

function oneOf(parts: readonly string[]): Node[] | undefined {
  const of = parts.map((part) => (part.trim() === part ? sequence(part) : undefined));
  if (!of.every((each) => each && each.length > 0)) return undefined;
  const [only = [], ...more] = merged(of as Node[][]);
  return more.length > 0 ? [{ any: [only, ...more] }] : only;
}

/** Rows of one word each are one row of one node: several words, one of which fits. */
function merged(rows: Node[][]): Node[][] {
  const isWords = (row: Node[]) => row.length === 1 && (typeof row[0] === "string" || Array.isArray(row[0]));
  const words = rows.filter(isWords).flat(2) as string[];
  const others = rows.filter((row) => !isWords(row));
  return words.length > 1 ? [[words], ...others] : rows;
}

/** Elements with one space between them; a group that may be missing brings its own space. */
function sequence(text: string): Node[] | undefined {
  const nodes: Node[] = [];
  let at = 0;
  while (at < text.length) {
    const read = element(text, at);
    if (!read) return undefined;
    nodes.push(read.node);
    at = read.next;
    if (at === text.length) break;
    if (read.spaced) continue;
    if (text[at] !== " ") {
      // "words(?: more)?": the space is in the group behind
      if (text.startsWith("(?: ", at)) continue;
      return undefined;
    }
    at += 1;
    if (at === text.length) return undefined;
  }
  return nodes;
}

interface Read {
  node: Node;
  next: number;
  /** The space behind it is part of it. */
  spaced?: boolean;
}

function element(text: string, at: number): Read | undefined {
  if (text.startsWith(".. ", at)) return { node: 0, next: at + 3, spaced: true };
  // a group that may be missing can end in a gap
  if (at > 0 && text.slice(at) === "..") return { node: 0, next: text.length };
  if (text[at] === "{") return facet(text, at);
  if (text.startsWith("(?:", at)) return group(text, at);
  if (anyToken.test(text.slice(at, at + 4))) return { node: 1, next: at + 3 };
  signs.lastIndex = at;
  const [sign = "", several, one] = signs.exec(text) ?? [];
  if (sign) return { node: one?.at(-1) ?? [...(several ?? "")], next: at + sign.length };
  beginning.lastIndex = at;
  const [whole = "", from] = beginning.exec(text) ?? [];
  if (from) return { node: { from }, next: at + whole.length };
  word.lastIndex = at;
  const found = word.exec(text)?.[0];
  if (!found) return undefined;
  const [only = "", ...more] = spellings(found);
  return { node: more.length > 0 ? [only, ...more] : only, next: at + found.length };
}

/** "allerg\S*" */
const beginning = /([a-z]+)\\S\*(?= |$|\(\?: )/y;

const word = /(?:[a-z_]\??|\[[a-z]+\])+(?= |$|\(\?: )/y;

const anyToken = /^\\S\+(?: |$|\()/;
/** Signs are tokens of their own. */
const signs = /\[([?!.,:;=*x+/^-]+)\](?= |$|\(\?: )|(?<!\S)([,:!=]|\\[?.])(?= |$|\(\?: )/y;

/** "flavou?r" is two words, "pasteuri[sz]ed" too. */
function spellings(written: string): string[] {
  let all = [""];
  for (const [, letter, may, several] of written.matchAll(/([a-z_])(\?)?|\[([a-z]+)\]/g)) {
    const next = several ? [...several] : [letter as string, ...(may ? [""] : [])];
    all = all.flatMap((start) => next.map((end) => start + end));
  }
  return all;
}

function facet(text: string, at: number): Read | undefined {
  const close = text.indexOf("}", at);
  const [name = "", value] = text
    .slice(at + 1, close)
    .replaceAll(" ", "_")
    .split("=");
  const listed = value?.replace(/^\((.*)\)$/, "$1").split("|");
  if (close < 0 || listed?.some((each) => !/^[\w°%]+$/.test(each))) return undefined;
  return { node: { f: name, ...(listed ? { is: listed } : {}) }, next: close + 1 };
}

function group(text: string, at: number): Read | undefined {
  const close = closing(text, at);
  const sign = text[close + 1] ?? "";
  const loose = sign === "?" || sign === "*";
  const bodies = alternatives(text.slice(at + 3, close));
  const leads = bodies.every((body) => body.startsWith(" "));
  const trails = bodies.every((body) => body.endsWith(" "));
  // what may be missing has to bring its space, before or behind it; what may not has none
  if (loose ? leads === trails : bodies.some((body) => body.startsWith(" ") || body.endsWith(" ")))
    return undefined;
  if (leads && at === 0) return undefined;
  const of = bodies.map((body) => sequence(body.trim()));
  if (of.some((each) => !each || each.length === 0)) return undefined;
  const any = merged(of as Node[][]);
  const [only] = any;
  if (sign !== "?" && sign !== "*" && any.length === 1 && only?.length === 1)
    return { node: only[0] as Node, next: close + 1 };
  const node: Any = {
    any,
    ...(loose ? { loose: 1 as const } : {}),
    ...(sign === "*" ? { many: 1 as const } : {}),
  };
  return { node, next: close + (loose ? 2 : 1), ...(loose && trails ? { spaced: true } : {}) };
}

/** A token of a masked sentence, with its facets between commas: "milk_choc_ganache<base=ganache,chocolate=milk>". */
export interface Token {
  text: string;
  facets: string;
}

export function tokensOf(mask: string): Token[] {
  return mask.split(" ").map((text) => {
    const open = text.endsWith(">") ? text.lastIndexOf("<") : -1;
    return { text, facets: open < 0 ? "" : `,${text.slice(open + 1, -1)},` };
  });
}

/** True when the walk fits the tokens from one of them on. */
export function walks({ row: nodes, start, end }: Walk, tokens: readonly Token[]): boolean {
  const done = (at: number) => !end || at === tokens.length;
  for (let from = 0; from <= (start ? 0 : tokens.length - 1); from++)
    if (step(nodes, 0, tokens, from, done)) return true;
  return false;
}

type Then = (at: number) => boolean;

function step(nodes: readonly Node[], i: number, tokens: readonly Token[], at: number, then: Then): boolean {
  const node = nodes[i];
  if (node === undefined) return then(at);
  if (node === 0) {
    for (let to = at; to <= Math.min(at + widest, tokens.length); to++)
      if (step(nodes, i + 1, tokens, to, then)) return true;
    return false;
  }
  if (typeof node === "object" && "any" in node)
    return any(node, tokens, at, (to) => step(nodes, i + 1, tokens, to, then));
  const token = tokens[at];
  return token !== undefined && fits(node, token) && step(nodes, i + 1, tokens, at + 1, then);
}

function fits(node: Exclude<Node, 0 | Any>, { text, facets }: Token): boolean {
  if (node === 1) return text !== "";
  if (typeof node === "string") return text === node;
  if (Array.isArray(node)) return node.includes(text);
  if ("from" in node) return text.startsWith(node.from);
  if (facets === "") return false;
  if (node.is) return node.is.some((value) => facets.includes(`,${node.f}=${value},`));
  return facets.includes(`,${node.f},`) || facets.includes(`,${node.f}=`);
}

/** How often a group comes again at most: each time is a few calls deeper, and no sentence says "and then" so often. */
const most = 200;

function any(node: Any, tokens: readonly Token[], at: number, next: Then, times = 1): boolean {
  const again: Then = (to) =>
    (node.many && to > at && times < most && any({ ...node, loose: 1 }, tokens, to, next, times + 1)) ||
    next(to);
  for (const row of node.any) if (step(row, 0, tokens, at, again)) return true;
  return node.loose === 1 && next(at);
}
