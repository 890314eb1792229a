/**
 * "the dog ate one", behind filling for so many macarons: one fewer is filled; "the dog ate one and i dropped 2": three
 * fewer; "i dropped one, still want 24": as many as before.
 */
import { smallNumbers } from "../../../data/words/numbers.ts";
import { opening } from "../../../data/words/openers.ts";
import type { Reading } from "../../tools/contract/index.ts";
import { numberSaid } from "./number-said.ts";
import { spaced } from "./spaced.ts";
import type { State } from "./state.ts";

const leads = new RegExp(`^${opening}(?:ha (?:, )?)?`);
const who =
  "(?:i|we|he|she|they|somebody|someone|(?:(?:the|my|our|his|her) (?:[a-z]+ )?)?(?:dog|cat|son|daughter|kids?|boy|girl|toddler|husband|wife|mum|mom|dad|sister|brother|neighbou?r|baby|child|children|puppy|mouse|bird|hens?))";
const took =
  "(?:(?:just|has|have|had|'ve|already|then|also) )*(?:ate|eaten|had|got|stole|nicked|pinched|took|scoffed|dropped|broke|smashed|crushed|lost|squashed|ruined|wasted|licked|sat on)";
const gone =
  "(?:(?:has|have|was|were|is|are|just|already|got|been|went) )*(?:eaten|broken|broke|dropped|smashed|crushed|lost|squashed|ruined|missing|fell(?: down| on the floor)?|fallen|stolen|gone)";
const ofThem = "(?: of (?:them|those|these|the macarons|the macs)| macarons?| macs?)?";
const tail = `${ofThem}(?: on the floor)?(?:,? (?:already|again|now|too|sorry|lol|sadly|haha|ugh))*`;

const single = "(?:one|a macaron|another one|another|1)";
const many = `(?:${single}|a couple|\\d{1,2}|${Object.keys(smallNumbers).join("|")})`;
const events = {
  took: new RegExp(`^${who} ${took} (${many})${tail}$`),
  gone: new RegExp(`^(${many})${ofThem} ${gone}${tail}$`),
  // "the dog ate one and the cat two"
  more: new RegExp(`^(?:${who} )?(${many})${tail}$`),
};
/** Somebody else has several: given away or bought. */
const handed = new RegExp(
  `^(?!(?:i|we) )${who} (?:(?:just|has|have|had|'ve|already|then|also) )*(?:got|had|took|bought|ordered) (${many})${tail}$`,
);
/** "wants 2 more", whoever it is. */
const wantsMore = new RegExp(`^(?:${who} )?wants? (?:another )?(${many}) more${ofThem}$`);
/** "still want 24", "but i need all 24", "need 24 anyway". */
const stays =
  /^(?:but |and |though |so )*(?:i |we )?(?:do )?(?:(?:still|anyway|all the same) )*(?:need|want|make|do|have to have|must have|keep|bake|fill|am making|doing|its|for)? ?(?:(?:still|to have|to make|have|all|the|full|my) )*(\d{1,3})(?: (?:macarons|macs|of them|anyway|though|please|still|all the same|as planned|in all|in total|total))*$/;
const anyway = /\b(?:still|anyway|all the same)\b/;
const staysMark = /\b(?:still|anyway|all the same|as planned|need|want)\b/;

/** How many of a plain number are meant. */
const isSingle = new RegExp(`^${single}$`);
const numberOf = (said: string): number =>
  isSingle.test(said) ? 1 : said === "a couple" ? 2 : numberSaid(said);

/** How many are gone in one clause; undefined where it tells of something else. */
function goneIn(clause: string, isFirst: boolean): number | undefined {
  const found =
    events.took.exec(clause) ?? events.gone.exec(clause) ?? (isFirst ? null : events.more.exec(clause));
  return found ? numberOf(found[1] ?? "") : undefined;
}

/** "my sister got 3", "the kids had 4": of those that are made, or besides: nobody can tell, and no number is asked anew. */
const isUnsaid = (clause: string): boolean => {
  const [, taken] = handed.exec(clause) ?? [];
  return taken !== undefined && numberOf(taken) > 1;
};
const unsaid = "some are gone";

/** The sentence put plainly; undefined where no macarons are filled. Pure. */
export function oneFewer({ text: said }: Reading, { last }: State): string | undefined {
  const macarons = ["fill", "shells"].includes(last?.tool ?? "") ? last?.inputs.macarons : undefined;
  if (typeof macarons !== "number" || macarons < 2) return undefined;
  const text = spaced(said)
    .replace(leads, "")
    .replace(/(?: [.!?])+$/, "");
  const clauses = text.split(/(?: [,;.])? (?:and|but) | [,;.] /).map((each) => each.trim());
  const final = clauses.at(-1) ?? "";
  const [, besides] = clauses.length === 1 ? (wantsMore.exec(final) ?? []) : [];
  if (besides !== undefined) return `${numberOf(besides)} more`;
  const kept =
    (clauses.length > 1 || anyway.test(final)) && staysMark.test(final) ? stays.exec(final)?.[1] : undefined;
  const told = kept === undefined ? clauses : clauses.slice(0, -1);
  const isOthers = !/^(?:i|we) /.test(text) && kept === undefined;
  if (isOthers && isUnsaid(told[0] ?? "")) return unsaid;
  // what is eaten takes nothing off the batter
  if (last?.tool === "shells") return isOthers && events.took.test(told[0] ?? "") ? unsaid : undefined;
  const counts = told.map((each, at) => goneIn(each, at === 0));
  if (counts.some((each) => each === undefined || Number.isNaN(each))) return undefined;
  if (kept !== undefined) return `make it ${kept} macarons`;
  const lost = counts.reduce<number>((sum, each) => sum + (each ?? 0), 0);
  if (lost >= macarons) return undefined;
  return lost === 1 ? `make it ${macarons - lost} macarons` : `${lost} fewer macarons`;
}
