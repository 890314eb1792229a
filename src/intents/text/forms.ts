/** Endings of English words. */

/** What a word may be a form of: "tasted" of "taste", "timers" of "timer", "sifting" of "sift"; "cupss" is none. */
export function formsOf(word: string): string[] {
  const [, stem = "", ending = ""] = /^(.{3,}?)(s|es|ed|ing|ers?|est|ly)$/.exec(word) ?? [];
  if (/^(?:ed|ing)$/.test(ending) && stem.endsWith("e")) return [];
  if (!/[aeiouy]/.test(stem) || /(.)\1\1/.test(word) || (ending === "s" && stem.endsWith("s"))) return [];
  if (ending === "s") return [stem];
  const single = !ending.endsWith("s") && /[aeiou]([^aeiou])\1$/.test(stem) ? [stem.slice(0, -1)] : [];
  return [stem, `${stem}e`, stem.replace(/i$/, "y"), ...single].filter((form) => form.length > 3);
}
