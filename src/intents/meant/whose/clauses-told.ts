/** A turn cut into what is told and asked, and of whom each part is: "my sister has half a kilo | i have 130 g | flavor for mine". */
import { people } from "../../../../data/words/people.ts";
import type { Item } from "../../found/scan.ts";
import { lineOf } from "./telling.ts";

export type Owner = "me" | "other" | undefined;

export interface Told {
  from: number;
  to: number;
  line: string;
  owner: Owner;
}

/** People whom the table of guests doesn't name: who bakes, and who says how. */
const others =
  "sis|bro|mom|mother|father|mummy|mommy|mama|papa|daddy|grandma|grandmas|grandmother|granny|grannys|gran|grans|nan|nana|nans|grandpa|grandad|auntie|aunty|boss|bosses|teacher|baker|flatmate|roommate|housemate|hubby|partner|fiance|girlfriend|boyfriend|mate|pal|guy|lad|chap|bloke|chef|girlie|stepmum|stepmom|godmother|inlaws|apprentice|classmate|coworker|bakery|school|club|church|team";
const persons: ReadonlySet<string> = new Set(
  [...people, ...others.split("|")].flatMap((word) => [word, `${word}s`]),
);
const of = (words: string): ReadonlySet<string> => new Set(words.split(" "));
const anyone = of("someone somebody everyone everybody anybody anyone people others");
const determiner = of("my our her his their the a an that this another some one");
const leads = of(
  "and but while whereas though although because since so ok okay well also now then oh hi hey right yes no yet as that whilst btw with",
);
const they = of("she he shes hes theyve theyd shed hed hers theirs her his their");

/** "my older sister", "a woman", "the girl next door"; "mum", "neighbour" by themselves. */
function isSomebody([first = "", second = "", third = ""]: readonly string[]): boolean {
  if (persons.has(first) || anyone.has(first) || anyone.has(first.replace(/s$/, ""))) return true;
  if (determiner.has(first) && (persons.has(second) || (/^[a-z]+$/.test(second) && persons.has(third))))
    return true;
  const isOther = first === "another" || (first === "the" && second === "other");
  return isOther && /^(?:person|baker)$/.test(first === "another" ? second : third);
}

/** "she", "they use", "and my sister". */
function isOther(line: string): boolean {
  const words = line.split(" ");
  for (let at = 0; at < words.length; at++) {
    const [first = "", second = ""] = words.slice(at, at + 2);
    if (they.has(first) || isSomebody(words.slice(at, at + 3))) return true;
    if (first === "they" && /^(?:use|used|put|say|said|add)$/.test(second)) return true;
    if (first === "next" && second === "door") at += 1;
    else if (!leads.has(first)) return false;
  }
  return false;
}
const named = [
  ...people,
  ...others.split("|"),
  ..."someone somebody everyone everybody anybody anyone people other person baker".split(" "),
];
/** A turn that speaks of somebody else holds one of these. */
const otherWords: ReadonlySet<string> = new Set([
  ...named.flatMap((word) => [word, `${word}s`]),
  ..."she he they shes hes theyve theyd shed hed hers theirs her his their".split(" "),
]);
export const namesOther = (text: string): boolean =>
  (text.match(/[a-z]+/g) ?? []).some((word) => otherWords.has(word));

const isMine =
  /^(?:(?:and|but|while|whereas|though|although|because|since|so|ok|okay|well|also|now|then|oh|right|yes|no|yet|as|whilst|with|only|just|for|in|what|thats|that is) )*(?:i|ive|im|id|ill|me|my|mine|mines|we|weve|were|our|ours)(?: |$)/;

const stops = /^[,.;:?!()-]$/;
const joints = /^(?:and|but|while|whereas|whilst|though|although|because|since|so|yet)$/;
const subjects = of(
  "i ive im id ill me my mine mines we weve our ours she he they shes hes theyre theyve hers theirs her his their its theres how what whats if",
);
/** What a clause of its own begins with. */
function isSubject(line: string): boolean {
  const words = line.split(" ");
  const from = /^(?:only|just|now|then|here|for)$/.test(words[0] ?? "") ? 1 : 0;
  return [0, from].some((at) => subjects.has(words[at] ?? "") || isSomebody(words.slice(at, at + 3)));
}

/** "at no. 12": the stop is none. */
const isHouseNumber = (items: readonly Item[], at: number): boolean =>
  items[at]?.is === "sign" && items[at + 1]?.is === "amount" && /(?:^| )no$/.test(lineOf(items, 0, at));

/** The parts of a turn, whose they are, and where they stand. */
export function toldIn(items: readonly Item[]): Told[] {
  const out: Told[] = [];
  let from = 0;
  const end = (to: number, next: number) => {
    if (to > from) out.push(partOf(items, from, to, out.at(-1)));
    from = next;
  };
  items.forEach((item, at) => {
    if (item.is === "sign" && stops.test(item.text) && !isHouseNumber(items, at)) end(at, at + 1);
    // "9 oz. flavor for mine": the stop went with the unit
    const next = items[at + 1];
    if (item.is === "amount" && /[a-z]\.$/.test(item.amount.text) && next && next.is !== "sign")
      end(at + 1, at + 1);
    if (item.is === "word" && joints.test(item.text) && isSubject(lineOf(items, at + 1, at + 7))) end(at, at);
  });
  end(items.length, items.length);
  return out;
}

function partOf(items: readonly Item[], from: number, to: number, before: Told | undefined): Told {
  const line = lineOf(items, from, to);
  const owner = isOther(line) ? "other" : isMine.test(line) ? "me" : undefined;
  // "my friend got 20 g flavor, 400 g buttercream": goes on with what she has
  const goesOn =
    owner === undefined &&
    before?.owner !== undefined &&
    before.to === from - 1 &&
    /^(?:and )?#\d+(?: (?:of|@\d+f?|#\d+|and|plain))*$/.test(line) &&
    lineOf(items, before.to, from) === "," &&
    /#/.test(before.line);
  return { from, to, line, owner: goesOn ? before.owner : owner };
}
