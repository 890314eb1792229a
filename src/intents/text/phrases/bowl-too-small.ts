/** "my bowl wont hold that will it, do 600": it is too much, and another size is said. */
import type { Phrase } from "./phrase.ts";

const vessel =
  "(?:bowl|mixer|stand mixer|machine|pan|pot|saucepan|jug|tub|container|piping bag|bag|biggest bowl|mixing bowl)";
const cant =
  "(?:won'?t|can'?t|cannot|doesn'?t|will not|isn'?t going to|is not going to|will never|would never|could never|couldn'?t|wouldn'?t|never|isnt gonna|aint gonna)";
const holds = "(?:hold|take|fit|manage|handle|cope with|have room for|swallow|stand)";
const much = "(?:all )?(?:that(?: much)?|it(?: all)?|this(?: much)?|so much|as much|them)";
const tag =
  "(?:,? ?(?:will it|can it|does it|would it|would they|i think|i fear|im afraid|i guess|sadly|though))*";
const opener = "((?:(?:hm|hmm|oh|no|wait|well|ugh|argh|actually|sorry|ok|but|and|so),? )*)";

/** Nothing but another size: "600 g batter in two goes" is an order of its own. */
const size =
  "(?:(?:do|make|make it|say|try|use|take|go for|lets do|let's do|let us do|its|only|just|please|i'?ll do|we'?ll do|for|with|about|at most|to) )*\\d+(?:[.,]\\d+)? ?(?:g|grams?|kg|macarons|macs|shells)?(?: (?:please|pls|then|instead|max|at most|only|today|thanks))*[ .!]*$";

export const bowlTooSmall = (): readonly Phrase[] => [
  {
    marks: ["bowl", "mixer", "machine", " pan", " pot", "jug", " tub", "container", " bag"],
    from: new RegExp(
      `^${opener}(?:i (?:think|fear|guess|doubt|bet) )?(?:my|the|our|this) ${vessel} ${cant} ${holds} ${much}${tag}(?: ?[?!,.;:-])* ?(?:so |then |and )?(?=${size})`,
      "g",
    ),
    to: "$1thats too much, ",
  },
  {
    marks: ["bowl", "mixer", "machine", " pan", " pot", "jug", " tub", "container", " bag"],
    from: new RegExp(
      `^${opener}(?:that|it|this)(?:ll|'ll)? (?:${cant}) (?:fit|go)(?: in| into| all in)*(?: (?:my|the|our|this))? ${vessel}${tag}(?: ?[?!,.;:-])* ?(?:so |then |and )?(?=${size})`,
      "g",
    ),
    to: "$1thats too much, ",
  },
];
