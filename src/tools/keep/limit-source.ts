/** Where a limit of keeping comes from: "is the 7 day limit published", "who says 2 hours out". */
import type { Reading } from "../contract/index.ts";
import { sign } from "../lib/cue.ts";
import type { Draft } from "./draft.ts";

const source =
  "(?:published|official\\S*|invention|invented|invent|made up|make up|made it up|your own|yours|sources?|legal|a law|the law|real|proven|arbitrary|authority|from a book|who says|says who|whose|come from|comes from|came from|science|scientific)";
const limit = "(?:limits?|rules?|cut off|cutoff|maximum|max)";
const place = "(?:(?:in|out of) the fridge|out|in the freezer|unrefrigerated|at room temp\\S*)";
const kept = "(?:fridge|freezer|keeping|storage|shelf life)";
const words = "(?:\\S+ ){0,2}";

/** Signs that count alone: no length of time in them is to be timed. */
export const limitSourceCues: readonly string[] = [
  `{time} ${words}${limit} .. ${source}`,
  `${source} .. {time} ${words}${limit}`,
  `${limit} (?:of|is|being) {time} .. ${source}`,
  `${source} .. ${limit} (?:of|is|being) {time}`,
  `{time} ${place} .. ${source}`,
  `${source} .. {time} ${place}`,
  `(?:who|whos|where) (?:says|said|decided|is it written|does it say) (?:that |its |only |it is |they keep |you get )*{time}`,
  `${kept} ${limit} .. ${source}`,
  `${source} .. ${kept} ${limit}`,
  `(?:the|your) {time} ${limit}(?: ,)? (?:whose|who|why|where)`,
];

let patterns: RegExp[] | undefined;

/** What the limit is of, by its words and its length. Undefined where nobody asks for its source. Pure. */
export function limitAsked({ mask, text, amounts }: Reading): Draft | undefined {
  patterns ??= limitSourceCues.map(sign);
  if (!patterns.some((each) => each.test(mask))) return undefined;
  const said = amounts.find(({ dim }) => dim === "time")?.text ?? "";
  if (/\bfreez/.test(text) || /month/.test(said)) return { about: "freezer" };
  const isShort = /h|min/.test(said);
  return {
    about: isShort || /\b(?:out|counter|room temp\w*|unrefrigerated)\b/.test(text) ? "outside" : "fridge",
  };
}
