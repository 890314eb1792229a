// What the built program keeps of its regular expressions; waiting.mjs reads it.

/** Both are kept as one byte a letter. */
const asciiOf = (source) =>
  source.replace(/[\u0100-\uffff]/g, (letter) => `\\u${letter.charCodeAt(0).toString(16).padStart(4, "0")}`);

/**
 * What a table of patterns is written by: the lines, which a question looks through, and the patterns themselves, of
 * which it needs a few.
 */
export function patternTable() {
  const places = new Map();
  let [lines, sources] = ["", ""];
  return {
    lines: () => lines,
    sources: () => sources,
    /**
     * @param head how it begins, if that is asked first
     * @param lists of strings: one of each is in every text that matches; small where the pattern takes large letters too
     * @returns where its line begins
     */
    add(source, flags, lists, head = "") {
      const key = `${flags}/${source}`;
      const known = places.get(key);
      if (known !== undefined) return known;
      const at = lines.length;
      const [text, first] = [asciiOf(source), asciiOf(head)];
      const own = [sources.length, text.length, sources.length + text.length, first.length];
      const sure = lists.filter((list) => !/[\n\t\u0100-\uffff]/.test(list.join("")));
      const line = [flags, own.join(" "), ...sure.map((list) => list.join("|"))];
      lines += `${line.join("\t")}\n`;
      sources += text + first;
      places.set(key, at);
      return at;
    },
  };
}
