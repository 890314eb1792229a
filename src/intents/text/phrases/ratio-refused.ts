/** A ratio that isn't wanted: "not 1 to 1, firm please", "anything but 1:1, for cutting", "1:1 is too soft". */
import type { Phrase } from "./phrase.ts";

const one = "(?:\\d+(?:\\.\\d+)?|one|two|three)";
const ratio = `${one} ?(?:to|:) ?${one}(?![\\d.]| ?(?:g|gr|grams?|kg|oz|ml|min|mins|minutes?|days?|hours?|%|percent|c|f)\\b)`;
const refusing =
  "(?:(?:(?:i|we) )?(?:do not|don'?t|did not|didn'?t) (?:want|need|like|mean)(?: it)?|not(?: in)?|never|anything but|(?:instead of|rather than)(?= 1| one))(?: an?| the| another)?";
/** "no 3 to 1 please" asks for it, "no 1 to 1 this time" refuses. */
const noSuch = `no ${ratio}(?= this time\\b)`;
const tail = "(?: (?:ratio|this time|please|pls|again|for me|any ?more|ganache|today))*";
/** What is wanted in its place. */
const wanted =
  /\b(?:firm(?:er)?|stiff(?:er)?|piping|pip(?:e|ed|eable)|loose(?:r)?|soft(?:er)?|pour(?:ing|able)?|drip|cut(?:ting)?|roll(?:ing|ed)?|truffles?)\b|\d ?(?:to|:) ?\d|\b(?:one|two|three) to one\b/;

/** Nothing is left out where it is all that is said. */
const dropped = (...found: string[]): string => {
  const [said = "", text = ""] = [found[0], String(found.at(-1))];
  const from = Number(found.at(-2));
  const rest = `${text.slice(0, from)} ${text.slice(from + said.length)}`;
  return wanted.test(rest) ? "" : said;
};

export const ratioRefused = (): readonly Phrase[] => [
  {
    marks: [
      "this time",
      "not ",
      "n't ",
      "nt want",
      "nt need",
      "never ",
      "anything but",
      "instead of",
      "rather than",
    ],
    from: new RegExp(
      `(?:(?<=^)|,? (?:but |and )?(?<=[ ,]))(?:${refusing} ${ratio}|${noSuch})${tail}(?:[,.;:!]? ?(?:but |so |make it )?(?=\\S)|(?= ?[.!?]*$))`,
      "g",
    ),
    to: (...found) => {
      const plain = dropped(...found);
      // what stood behind a comma still does
      return plain === "" && /^,/.test(String(found[0]))
        ? ", "
        : plain === "" && Number(found.at(-2)) > 0
          ? " "
          : plain;
    },
  },
  {
    marks: [
      " too soft",
      " too firm",
      " too loose",
      " too stiff",
      " too runny",
      " too hard",
      " too thin",
      " too thick",
    ],
    from: new RegExp(
      `(?:,|;|\\.)? ?(?:because |as |since )?(?:the )?${ratio} (?:is|was|would be|turned out|came out|gets) (?:far |much |way |a bit )?too (?:soft|firm|loose|stiff|runny|hard|thin|thick)(?: for (?:me|this|that|it))?(?= ?(?:[,.;!?]|$))`,
      "g",
    ),
    to: dropped,
  },
];
