/** Words typed without their vowels: "crm" is cream, "lft" left. Only what has one reading is read. */
import { withoutVowels } from "../../../data/words/without-vowels.ts";
import type { Vocabulary } from "./vocabulary.ts";

const soft = /[aeiou]/g;

/** What is left of a word when its vowels are dropped, but for a first one. */
const bare = (word: string): string => word[0] + word.slice(1).replace(soft, "");

/** Whole words by their consonants: words of talk come before those of the trade, a tie of the trade's has no reading. */
export function bonesOf(vocabulary: Vocabulary): (word: string) => string | undefined {
  let made: ReadonlyMap<string, string | undefined> | undefined;
  const all = () => {
    if (made) return made;
    const found = new Map<string, string | undefined>(Object.entries(withoutVowels));
    for (const word of vocabulary.talk()) if (!found.has(bare(word))) found.set(bare(word), word);
    const talked = new Set(found.keys());
    for (const word of vocabulary.trade()) {
      const bones = bare(word);
      if (talked.has(bones)) continue;
      const rival = found.get(bones);
      found.set(bones, found.has(bones) && rival !== word && rival !== `${word}s` ? undefined : word);
    }
    made = found;
    return made;
  };
  return (word) => (/[aeiou]/.test(word.slice(1)) || word.length < 3 ? undefined : all().get(word));
}
