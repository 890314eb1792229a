/** "hi, ...", "please ...", "..., thanks": taken off a turn that asks something, so that it is no question of its own. */
import type { Ear, Part } from "./part.ts";
import type { Item } from "./scan.ts";

const opening = new Set(["hi", "hello", "hey", "hiya", "please", "pls", "plz"]);
const closing = new Set(["thanks", "thx", "cheers", "ta", "thank", "you"]);
/** With nothing but these behind it, a greeting is all there is. */
const small = new Set(
  "there again all everyone good morning afternoon evening how are you whats up thanks thank hi hello hey".split(
    " ",
  ),
);

const word = (item: Item | undefined) => (item?.is === "word" ? item.text : undefined);

/** The turn without a greeting or a "please" at its start and thanks at its end; all of it where that is all. */
export function withoutCourtesy(items: Part, ear: Ear): Part {
  let from = 0;
  while (
    opening.has(word(items[from]) ?? "") ||
    (from > 0 && items[from]?.is === "sign" && isBreak(items[from]))
  )
    from += 1;
  const rest = items.slice(from);
  const greets = rest.every(
    (item) => item.is === "sign" || small.has(item.is === "when" ? item.when.text : (word(item) ?? "")),
  );
  const opened = greets ? items : rest;
  let to = opened.length;
  while (closing.has(word(opened[to - 1]) ?? "") || isBreak(opened[to - 1])) to -= 1;
  const thanked = opened.slice(to).some((item) => closing.has(word(item) ?? ""));
  const before = opened.slice(0, to);
  return thanked && before.length > 0 && ear.claimed(before) ? before : opened;
}

const isBreak = (item: Item | undefined) => item?.is === "sign" && [",", "!", ".", "-"].includes(item.text);
