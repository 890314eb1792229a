/** A list brought to another size: "divide by 3", "half not third", "take ... up to 1 kg in total". */
import { openingText } from "../../../../data/words/openers.ts";
import type { Phrase } from "./phrase.ts";

const lead = `(${openingText()})`;
const shares: Readonly<Record<string, string>> = {
  "2": "half",
  two: "half",
  "3": "a third",
  three: "a third",
  "4": "a quarter",
  four: "a quarter",
};

const pack = "(?:packet|pack|bag|jar|tin|box|carton|tub|sack)";

export const listToSize = (): readonly Phrase[] => [
  // "98 whites 126 almond ..., today theres just 70 of white"
  {
    marks: [" white"],
    from: /(?<=\bwhites\b.*\balmonds?\b.*\b(?:just|only|have|got|left|today|with|is|theres|there's)(?: about)? \d{2,3}(?: ?g)?(?: of)? )white(?= ?(?:[.!?]|$)| (?:today|left|here|now))/g,
    to: "whites",
  },
  // "270 g cream cheese 90 g butter 60 g icing sugar, divide by 3", "half not third"
  {
    marks: ["divide by", "divided by", "divide it by", "divide that by", "divide all by"],
    from: /^(?=.*\d ?g(?:rams?)?\b.*\d ?g(?:rams?)?\b)(.+?),? (?:all |and )?divided?(?: (?:it|that|all|everything|the lot))? by (2|3|4|two|three|four)(?= ?[?.!]*$)/g,
    to: (_said, list = "", by = "") => `${list}, ${shares[by]} of that`,
  },
  {
    marks: [" not "],
    from: /^(?:(?:no|sorry|oops|wait|actually),? )*(half|a third|a quarter|third|quarter|double|twice),? not (?:a |the )?(?:half|third|quarter|double|twice)(?= ?[?.!]*$)/g,
    to: "no, $1",
  },
  // "take 200 g butter, 120 g sugar, 80 g whites up to 1 kg in total"
  {
    marks: [" up to ", " down to "],
    from: new RegExp(
      `^${lead}(?:take|bring|get) (?=\\d)(?=.*\\d ?g\\b.*\\d ?g\\b)(.+?),? (?:up|down) to (\\d+(?:[.,]\\d+)? ?(?:g|grams?|kg))(?: in total| in all| total| altogether)?(?= ?[?.!]*$)`,
      "g",
    ),
    to: "$1$2, scale to $3",
  },
  // "there's just 91 g of almonds left in the bag": where it is left says nothing more
  {
    marks: [" left in "],
    from: new RegExp(
      `(?<=\\d ?(?:g|grams?) (?:of )?(?:[a-z]+ ){1,3}left) in (?:the|my|our|that) ${pack}\\b`,
      "g",
    ),
    to: "",
  },
  // "caramel is 200 sugar 120 cream 80 butter, i need 340 altogether"
  {
    marks: ["in all", "in total", "altogether", "all together", "all told"],
    from: /(?<=^[^?]*\d(?: ?g)? (?:of )?[a-z]+[^?]*\d(?: ?g)? (?:of )?[a-z]+.*\b(?:i |we |just )*(?:need|want|make|making|has to be|should be) (?:about |just )?\d{2,4}) (?:in all|in total|altogether|all together|all told)(?= ?[?.!]*$)/g,
    to: " g in total",
  },
  // "..., 80 g sugar. my packet of ground almonds holds 150 g. new weights?": so much there is, behind a list
  {
    marks: ["packet", "pack ", "bag ", "jar ", "tin ", "box ", "carton", "tub ", "sack"],
    from: new RegExp(
      `\\b(?:my|the|our|this) ${pack} of ([a-z]+(?: [a-z]+)?) (?:only |just )?(?:holds|has|contains|weighs|is) (?:only |just |about )?(\\d+(?:\\.\\d+)?) ?(?:g|grams?)\\b`,
      "g",
    ),
    to: (...found) => {
      const [said = "", thing, grams] = found;
      const [at, text] = found.slice(-2) as unknown as [number, string];
      const isBehindList = (text.slice(0, at).match(/\d ?g\b/g) ?? []).length >= 3;
      return isBehindList ? `i have ${grams} g ${thing}` : said;
    },
  },
  {
    marks: ["packet", "pack ", "bag ", "jar ", "tin ", "box ", "carton", "tub ", "sack"],
    from: new RegExp(
      `^(?:(?:and|so|but|or),? )*(?:(?:were|was) (?:the|my|that) ${pack}|(?:what )?if (?:the|my|that) ${pack} (?:were|was|is|had|held|holds|has)) (?:only |just )?(?=\\d+(?:\\.\\d+)? ?(?:g|grams?)\\b ?[?.!]*$)`,
      "g",
    ),
    to: "and if i have ",
  },
];
