/**
 * What numbers stand with that are told beside a question: pages, bottles, parties, birthdays. Such a number is no
 * amount of anything that is worked out. Words for patterns.
 */
import { people } from "./people.ts";

export interface Words {
  has(word: string): boolean;
}

/** Made when it is first asked: most sentences hold no number that is told beside. */
function late(make: () => readonly string[]): Words {
  let made: ReadonlySet<string> | undefined;
  return {
    has(word) {
      made ??= new Set(make());
      return made.has(word);
    },
  };
}

const listed = (words: string): readonly string[] => words.trim().split(/\s+/);

/** Many of them are counted: "the guests are 30". */
const many = /(?:[^s]s|men|people|children|family|couple|guest|visitor|person|adult)$/;

const kin = [
  ...[...people].filter((each) => !many.test(each)),
  ...listed(
    "twins mother father granny grandma gran nan nana nanna grandpa grandad granddad godson goddaughter toddler boss teenager partner",
  ),
];
const called = listed("mum mom dad nan nana gran granny grandma grandad granddad grandpa he she");

/** One that is spoken of, with whose it is: "my son", "the twins", "he". */
export const somebody = `(?:(?:my|our|the|his|her|their) (?:(?:little|big|older|younger|eldest|youngest|middle|grand|great|dear|own) ?)*(?:${kin.join("|")})|${called.join("|")})`;
/** A text that speaks of one holds one of these: "she's" is two words there, "shes" one. */
const somebodyForms = () =>
  [...kin, ...called].flatMap((word) => [
    word,
    `${word}s`,
    ...["grand", "great", "big", "little"].map((lead) => lead + word),
  ]);
export const somebodyWords = late(somebodyForms);

/** They have a number by which they are called, and are never counted by it: "page 12", "order 88". */
export const numberedWords = listed(
  "order invoice ticket page pg chapter volume vol lesson video episode flat apartment apt house door stall stand room pitch platform docket",
);
export const numbered = `(?:${numberedWords.join("|")})s?`;

/** They may be counted as well: only where more shows that it is a name ("batch 14 in my book", "box 4 of 6"). */
export const countedTooWords = listed(
  "batch box tray tin tub bowl lot jar rack shelf sheet card recipe row load round step level attempt try take stage part line oven tip nozzle customer client table team group entry",
);
export const countedToo = `(?:${countedTooWords.join("|")})`;

const containers = listed(
  "bottle jar tub pot tin can pack packet pouch bag tube carton vial flask sachet label lid dropper",
);
/** What a bought thing comes in. */
export const container = `(?:${containers.join("|")})s?`;
export const containerWords = late(() => containers.flatMap((word) => [word, `${word}s`]));

const eventList = listed(
  "party parties wedding birthday tea dinner supper lunch brunch breakfast guests guest visitors company school nursery creche bus train flight appointment dentist meeting game match kickoff film concert play show church service christening baptism funeral recital market fair fete reception picnic barbecue bbq choir class lesson club yoga gym shift work delivery courier post",
);
/** They begin at an hour that is nobody's timer and no plan. */
export const events = `(?:${eventList.join("|")})`;
export const eventWords = late(() => [
  ...eventList.flatMap((word) => [word, `${word}s`]),
  ...somebodyForms(),
  ...listed("kids friends folks people everyone everybody they theyre shop store bakery library office"),
]);

/** What is told to be so good: "youre a 10". */
export const praised =
  "(?:(?:you'?re|you are|u r|ur|youre)(?: an?)?|(?:that'?s|thats|that was|this is|its|it's) an?)";
