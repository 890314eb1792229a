/** Words typed without their vowels: "crm" is cream, "lft" left. Only what has one reading is read. */
import type { Vocabulary } from "./vocabulary.ts";

const soft = /[aeiou]/g;

/** Of two words with the same consonants, the one that bakers type. */
const meant: Readonly<Record<string, string>> = {
  ths: "this",
  thn: "then",
  thr: "there",
  wnt: "want",
  clr: "color",
  clrs: "colors",
  flvr: "flavor",
  flvrs: "flavors",
  mst: "must",
  mld: "mold",
  rng: "ring",
  mch: "much",
  lft: "left",
  splt: "split",
  smth: "something",
  wts: "weights",
  sgr: "sugar",
  sgrs: "sugars",
  flr: "flour",
  mlk: "milk",
  grn: "green",
  smll: "small",
  lrg: "large",
  hlf: "half",
  tspn: "teaspoon",
  tspns: "teaspoons",
  tbspn: "tablespoon",
  tbspns: "tablespoons",
  cff: "coffee",
  tmrrw: "tomorrow",
  frdy: "friday",
  strdy: "saturday",
  mnts: "minutes",
  hrd: "hard",
  sft: "soft",
  pwdr: "powder",
  strght: "straight",
  ylks: "yolks",
  gnch: "ganache",
  bttrcrm: "buttercream",
  bttrcrem: "buttercream",
  pstch: "pistachio",
  hzlnt: "hazelnut",
  crml: "caramel",
  vnll: "vanilla",
  lvndr: "lavender",
  cnnmn: "cinnamon",
};

/** What is left of a word when its vowels are dropped, but for a first one. */
const bare = (word: string): string => word[0] + word.slice(1).replace(soft, "");

/** Whole words by their consonants: words of talk come before those of the trade, a tie of the trade's has no reading. */
export function bonesOf(vocabulary: Vocabulary): (word: string) => string | undefined {
  let made: ReadonlyMap<string, string | undefined> | undefined;
  const all = () => {
    if (made) return made;
    const found = new Map<string, string | undefined>(Object.entries(meant));
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
