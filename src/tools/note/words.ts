/** The baker's own words of one clause, without the order that opens or ends it. */
const word = /\p{L}+(?:['’]\p{L}+)*|\d+(?:[.,]\d+)*/gu;
const plain = (text: string) =>
  text
    .toLowerCase()
    .normalize("NFD")
    .replace(/[\u0300-\u036f'’]/g, "");

/**
 * The part of the sentence that a mask covers, as it was typed. The mask has typos mended, so that words are counted
 * and compared, not searched for.
 */
export function clauseText(said: string, mask: string): string {
  const all = [...said.matchAll(word)];
  const own = [
    ...mask
      .replace(/<[^ ]*>(?= |$)/g, "")
      .replaceAll("_", " ")
      .matchAll(word),
  ].map((each) => plain(each[0]));
  if (own.length === 0 || own.length >= all.length) return said.trim();
  let best = { from: 0, same: -1 };
  for (let from = 0; from + own.length <= all.length; from++) {
    const same = own.filter((each, at) => each === plain(all[from + at]?.[0] ?? "")).length;
    if (same > best.same) best = { from, same };
  }
  const last = all[best.from + own.length - 1];
  const end = (last?.index ?? 0) + (last?.[0].length ?? 0);
  const tail = /^[%°!)"'”]*/.exec(said.slice(end))?.[0] ?? "";
  const start = best.from === 0 ? 0 : (all[best.from]?.index ?? 0);
  return said.slice(start, end + tail.length).trim();
}

const lead =
  "(?:(?:please|pls|ok|okay|so|and|also|hey|oh|no|sorry|actually|wait|then|can you|could you|would you|let me|lets)[\\s,]+)*";
const opener = new RegExp(
  `^${lead}(?:(?:make|take|save|add|put|write|leave)\\s+(?:me\\s+|down\\s+)?(?:a|another)\\s+note(?:\\s+(?:that|saying))?|another\\s+note|(?:batch\\s+notes?|notes?|log|record|jot)(?:\\s+(?:this|it|to\\s+self))?(?:\\s+down)?(?:\\s+that)?|write\\s+(?:this\\s+|that\\s+|it\\s+)?down(?:\\s+that)?)(?:\\s*[:,.;–—-]+\\s*|\\s+|$)`,
  "iu",
);
const closer =
  /[\s,.;–—-]*(?:please\s+)?(?:(?:write|jot|note)\s+(?:that|this|it)(?:\s+down)?|(?:log|record|save)\s+(?:that|this|it)|(?:put|add|save)\s+(?:that|this|it)\s+(?:in|into|to)\s+(?:the|my)\s+(?:notes?|log|book|notebook)(?:\s+too)?)(?:\s+(?:please|pls|too))?[\s.!]*$/iu;
const appender = new RegExp(
  `^${lead}(?:add|append|put)\\s+(?:this\\s+)?(?:to|on)\\s+(?:(?:that|it|this)(?:\\s+(?:one|note|batch))?|(?:the|my)\\s+[^:,]*?(?:notes?|batch|one))(?:\\s+that)?(?:\\s*[:,.;–—-]+\\s*|\\s+|$)`,
  "iu",
);
const corrector = new RegExp(
  `^${lead}(?:correct|fix|change|amend|edit|update)\\s+(?:(?:that|it|this)(?:\\s+(?:one|note|batch))?|(?:the|my)\\s+[^:,]*?(?:notes?|batch|one)|last\\s+note)(?:\\s+to)?(?:\\s*[:,.;–—-]+\\s*|\\s+|$)`,
  "iu",
);

/** The words of a new note. */
export const noteWords = (text: string): string => text.replace(opener, "").replace(closer, "").trim();

/** The words that are added to a note. */
export const addedWords = (text: string): string => text.replace(appender, "").trim();

/** What a note is corrected to, in words. */
export const correctedWords = (text: string): string => text.replace(corrector, "").trim();
