/** Stands in for a regular expression in the built program: it does all that the program asks of one. */
class Waiting {
  /**
   * @param words of these one is in every text that matches, "|" between them; "" where that isn't known
   * @param make the regular expression
   */
  constructor(words, make) {
    this.words = words;
    this.make = make;
  }
  /** The regular expression, if it can match this text. */
  of(text) {
    if (this.pattern) return this.pattern;
    if (typeof this.words === "string") this.words = this.words === "" ? undefined : this.words.split("|");
    if (this.words && !this.words.some((word) => text.includes(word))) return undefined;
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

export const waiting = (words, make) => new Waiting(words, make);
