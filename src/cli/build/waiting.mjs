/** Stands in for a regular expression in the built program: it does all that the program asks of one. */
class Waiting {
  /**
   * @param words of each list one is in every text that matches: a line a list, "|" between words; "" where none is known
   * @param make the regular expression
   * @param isSmall the words are in small letters, and the text's may be large
   */
  constructor(words, make, isSmall) {
    this.words = words;
    this.make = make;
    this.isSmall = isSmall;
  }
  /** The regular expression, if it can match this text. */
  of(text) {
    if (this.pattern) return this.pattern;
    if (typeof this.words === "string") this.words = listsIn(this.words);
    const searched = this.isSmall ? text.toLowerCase() : text;
    for (const list of this.words) if (!list.some((word) => searched.includes(word))) return undefined;
    this.pattern = this.make();
    return this.pattern;
  }
  test(text) {
    return this.of(text)?.test(text) ?? false;
  }
  exec(text) {
    return this.of(text)?.exec(text) ?? null;
  }
  get source() {
    return this.make().source;
  }
  get flags() {
    return this.make().flags;
  }
  [Symbol.replace](text, by) {
    return this.of(text)?.[Symbol.replace](text, by) ?? text;
  }
  [Symbol.match](text) {
    return this.of(text)?.[Symbol.match](text) ?? null;
  }
  [Symbol.search](text) {
    return this.of(text)?.[Symbol.search](text) ?? -1;
  }
  [Symbol.split](text, limit) {
    const pattern = this.of(text);
    return pattern ? pattern[Symbol.split](text, limit) : [text].slice(0, limit);
  }
}

const listsIn = (words) => (words === "" ? [] : words.split("\n").map((list) => list.split("|")));

/** How lists of words are handed to `waiting`. */
export const inLines = (lists) => lists.map((list) => list.join("|")).join("\n");

export const waiting = (words, make, isSmall) => new Waiting(words, make, isSmall);
