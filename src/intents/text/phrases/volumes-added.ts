/** "half a cup sugar + 2 tbsp + 1 tsp": one amount of one thing, in several measures. The thing is put behind all of them. */
import type { Phrase } from "./phrase.ts";

const number =
  "(?:\\d+(?:[.,]\\d+)?(?: \\d+ ?\\/ ?\\d+| ?\\/ ?\\d+)?|an?|one|two|three|four|half(?: an?)?|(?:a|one) (?:half|quarter|third)|(?:two|three) (?:quarters?|thirds?)(?: of an?)?)";
const measure = "(?:cups?|c|tbsps?|tablespoons?|tbl|tsps?|teaspoons?)";
// the dot of an abbreviation has something behind it, the one that ends a sentence nothing
const volume = `${number} ?(?:of an? )?(?:level |heaped )?${measure}(?:\\.(?= ?[a-z+]))?`;
const none =
  "(?!(?:in|to|into|is|are|and|or|plus|more|for|how|what|whats|with|of|as|weighs?|grams?|g|please|pls)\\b)";
/** What it is of: no amount, no order. */
const thing = `${none}[a-z]+(?: ${none}[a-z]+){0,2}`;
const plus = " ?(?:\\+|,? plus) ?(?:another |an extra )?";
/** Behind a further measure: nothing, the same again, or a thing of its own. */
const behind = `(?: more)?(?: of (?:it|that|the same)\\b| (?:of )?${thing})?`;
const ends =
  "(?= ?(?:$|[?,;!]|\\.(?:(?! ?[a-z\\d])|(?= (?:and|then|also|how|what) )))| (?:in|to|into|as|how|please|pls|is|what|whats|weighs?|=)(?: |$))";
const one = new RegExp(
  `${plus}(${volume})(?: more)?(?: of (?:it|that|the same)\\b| (?:of )?(${thing}))?`,
  "g",
);

export const volumesAdded = (): readonly Phrase[] => [
  {
    marks: ["+", "plus"],
    from: new RegExp(
      `(?<![\\w/])(${volume}) (?:of )?(${thing})((?:${plus}${volume}${behind}){1,4})${ends}`,
      "g",
    ),
    to: (said, first = "", what = "", more = "") => {
      const others = [...more.matchAll(one)];
      // two different things are no sum
      if (others.some(([, , own]) => own !== undefined && own !== what)) return said;
      const all = [first, ...others.map(([, each = ""]) => each)].map((each) => each.replace(/\.$/, ""));
      return `${all.join(" + ")} ${what}`;
    },
  },
];
