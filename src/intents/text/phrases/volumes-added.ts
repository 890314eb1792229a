/** "half a cup sugar + 2 tbsp": one amount of one thing, in two measures. The thing is put behind both. */
import type { Phrase } from "./phrase.ts";

const number =
  "(?:\\d+(?:[.,]\\d+)?(?: \\d+ ?\\/ ?\\d+| ?\\/ ?\\d+)?|an?|one|two|three|four|half(?: an?)?|(?:a|one) (?:half|quarter|third)|(?:two|three) (?:quarters?|thirds?)(?: of an?)?)";
const measure = "(?:cups?|c|tbsps?|tablespoons?|tbl|tsps?|teaspoons?)";
const volume = `(${number} ?(?:of an? )?(?:level |heaped )?${measure})`;
/** What it is of: no amount, no order. */
const thing =
  "((?!(?:in|to|into|is|are|and|or|plus|for|how|what|whats|with|of|grams?|g)\\b)[a-z]+(?: (?!(?:in|to|into|is|are|and|or|plus|for|how|what|whats|with|of|grams?|g)\\b)[a-z]+){0,2})";

export const volumesAdded: readonly Phrase[] = [
  {
    marks: ["+", "plus"],
    from: new RegExp(
      `(?<![\\w/])${volume} (?:of )?${thing} ?(?:\\+|,? plus) ?(?:another |an extra )?${volume}(?: more)?(?: of (?:it|that|the same))?(?= ?(?:$|[?,.]|(?:in|to|into|as|how|please|pls|is|what|whats|weighs?|=)\\b))`,
      "g",
    ),
    to: "$1 + $3 $2",
  },
  // the same thing said twice
  {
    marks: ["+", "plus"],
    from: new RegExp(
      `(?<![\\w/])${volume} (?:of )?${thing} ?(?:\\+|,? plus) ?(?:another |an extra )?${volume} (?:of )?\\2(?= |$|[?,.])`,
      "g",
    ),
    to: "$1 + $3 $2",
  },
];
