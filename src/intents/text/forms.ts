/** Endings of English words. */

/** What a word may be a form of: "tasted" of "taste", "timers" of "timer", "sifting" of "sift"; "cupss" is none. */
export function formsOf(word: string): string[] {
  const [, stem = "", ending = ""] = /^(.{3,}?)(s|es|ed|ing|ers?|est|ly)$/.exec(word) ?? [];
  if (/^(?:ed|ing)$/.test(ending) && stem.endsWith("e")) return [];
  if (!/[aeiouy]/.test(stem) || /(.)\1\1/.test(word) || (ending === "s" && stem.endsWith("s"))) return [];
  if (ending === "s") return [stem];
  const short = stem.slice(0, -1);
  const isDoubled = !ending.endsWith("s") && /[aeiou]([^aeiou])\1$/.test(stem) && !unstressed.test(short);
  // "whitees" is no form of "white"
  const whole = ending !== "es" || /(?:s|x|z|ch|sh|o)$/.test(stem) ? [stem] : [];
  const asY = stem.endsWith("i") ? [`${short}y`] : [];
  return [...whole, `${stem}e`, ...asY, ...(isDoubled ? [short] : [])].filter((form) => form.length > 3);
}

/** "powderred" is no form of "powder": behind a syllable without stress nothing is doubled. */
const unstressed = /[aeiou][^aeiou]+(?:er|en|on|or)$(?<!fer)/;
