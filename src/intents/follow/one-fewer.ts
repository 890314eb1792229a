/** "the dog ate one", behind filling for so many macarons: one fewer is filled. */
import type { Reading } from "../../tools/contract/index.ts";
import { spaced } from "./spaced.ts";
import type { State } from "./state.ts";

const lead =
  "(?:(?:ok|okay|and|so|oh|well|right|no|nah|nope|actually|hm|sorry|but|then|ugh|argh|wait|ha|,) )*";
const who =
  "(?:i|we|he|she|they|somebody|someone|(?:the|my|our|his|her) (?:[a-z]+ )?(?:dog|cat|son|daughter|kids?|boy|girl|toddler|husband|wife|mum|mom|dad|sister|brother|neighbou?r|baby|child|children|puppy|mouse|bird|hens?))";
const took =
  "(?:(?:just|has|have|had|'ve|already|then|also) )*(?:ate|eaten|had|got|stole|nicked|pinched|took|scoffed|dropped|broke|smashed|crushed|lost|squashed|ruined|wasted|licked|sat on)";
const gone =
  "(?:(?:has|have|was|is|just|already|got|been|went) )*(?:eaten|broken|broke|dropped|smashed|crushed|lost|squashed|ruined|missing|fell(?: down| on the floor)?|fallen|stolen|gone)";
const tail =
  "(?: of (?:them|those|these|the macarons|the macs))?(?:,? (?:already|again|now|sorry|lol|sadly|haha|ugh|too))*(?: [.!])*$";

const tookOne = new RegExp(`^${lead}${who} ${took} (?:one|a macaron|another one|another|1)${tail}`);
const oneGone = new RegExp(`^${lead}(?:one|1)(?: of (?:them|those|these|the macarons))? ${gone}${tail}`);

/** The sentence put plainly; undefined where no macarons are filled. Pure. */
export function oneFewer({ text: said }: Reading, { last }: State): string | undefined {
  const macarons = last?.tool === "fill" ? last.inputs.macarons : undefined;
  const text = spaced(said);
  if (typeof macarons !== "number" || macarons < 2 || !(tookOne.test(text) || oneGone.test(text)))
    return undefined;
  return `make it ${macarons - 1} macarons`;
}
