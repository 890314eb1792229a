/** Words typed without their vowels: "crm" is cream, "lft" left. Which of several is meant, its neighbours tell. */
import type { Vocabulary } from "./vocabulary.ts";

const soft = /[aeiou]/g;

/** What is left of a word when its vowels are dropped, but for a first one. */
const bare = (word: string): string => word[0] + word.slice(1).replace(soft, "");

/** Every word that may have been meant by its consonants. */
export function bonesOf({ targets }: Pick<Vocabulary, "targets">): (word: string) => readonly string[] {
  let made: ReadonlyMap<string, readonly string[]> | undefined;
  const all = () => {
    if (made) return made;
    const found = new Map<string, string[]>();
    for (const word of targets()) {
      const bones = bare(word);
      if (bones === word || bones.length < 2) continue;
      found.set(bones, [...(found.get(bones) ?? []), word]);
    }
    made = found;
    return made;
  };
  return (word) => (/[aeiou]/.test(word.slice(1)) || word.length < 2 ? [] : (all().get(word) ?? []));
}
