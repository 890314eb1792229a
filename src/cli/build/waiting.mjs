/** Stands in for a regular expression in the built program: it does all that the program asks of one. */
class Waiting {
  /**
   * @param at where its line begins in the table of patterns
   * @param table what gives these lines, and the patterns
   */
  constructor(at, table) {
    this.at = at;
    this.table = table;
  }
  /** Its entry, once it is needed. */
  get entry() {
    this.known ??= entryAt(this.at, this.table.lines());
    return this.known;
  }
  /** The regular expression, if it can match this text. */
  of(text) {
    if (!this.pattern && this.holdsWords(text) && this.begins(text))
      this.pattern = new RegExp(this.source, this.flags);
    return this.pattern;
  }
  /** A text has one of each list's words. */
  holdsWords(text) {
    const { lists, isSmall } = this.entry;
    const searched = spaced(isSmall ? text.toLowerCase() : text);
    for (const list of lists) if (!list.some((word) => searched.includes(word))) return false;
    return true;
  }
  /** Its first words are there; compiling them takes a part of the time. */
  begins(text) {
    const { head, flags } = this.entry;
    if (head[1] === 0) return true;
    this.head ??= new RegExp(this.table.source(...head), flags.replace("g", ""));
    return this.head.test(text);
  }
  get source() {
    return this.table.source(...this.entry.place);
  }
  get flags() {
    return this.entry.flags;
  }
  test(text) {
    return this.of(text)?.test(text) ?? false;
  }
  exec(text) {
    return this.of(text)?.exec(text) ?? null;
  }
  [Symbol.replace](text, by) {
    return this.of(text)?.[Symbol.replace](text, by) ?? text;
  }
  [Symbol.match](text) {
    return this.of(text)?.[Symbol.match](text) ?? null;
  }
  [Symbol.matchAll](text) {
    return this.of(text)?.[Symbol.matchAll](text) ?? [].values();
  }
  [Symbol.search](text) {
    return this.of(text)?.[Symbol.search](text) ?? -1;
  }
  [Symbol.split](text, limit) {
    const pattern = this.of(text);
    return pattern ? pattern[Symbol.split](text, limit) : [text].slice(0, limit);
  }
}

let [last, lastSpaced] = [];
/** One text is asked for hundreds of patterns. */
function spaced(text) {
  if (text !== last) {
    last = text;
    lastSpaced = ` ${text} `;
  }
  return lastSpaced;
}

/** A line a pattern, tabs between: its flags, where it and its head begin and how long they are, then lists of words. */
function entryAt(at, lines) {
  const [flags, places, ...lists] = lines.slice(at, lines.indexOf("\n", at)).split("\t");
  const [start, length, headStart, headLength] = places.split(" ").map(Number);
  return {
    flags,
    place: [start, length],
    head: [headStart, headLength],
    lists: lists.map((list) => list.split("|")),
    isSmall: flags.includes("i"),
  };
}

export const waiting = (at, table) => new Waiting(at, table);
