/** "kids ate the dark one, milk then": a chocolate that isn't there any more, and the one that takes its place. */
import type { Reading, Thing } from "../contract/index.ts";

/** What befell it, said before it: "the dog got the dark", "cant find the dark", "we used up all the milk". */
const taken =
  "(?:ate|eaten|eat|finished|nicked|pinched|stole|scoffed|(?:dog|cat|kids?|husband|wife|son|daughter|boys?|girls?|mum|dad|someone|somebody|flatmate) (?:(?:has |have |had )?got|(?:has |have )?had|(?:has |have )?demolished|(?:has |have )?licked|helped (?:himself|herself|themselves) to)|grabbed|took|used|cant find|couldnt find|lost|burnt|burned|scorched|seized|dropped|spilt|spilled|forgot|ruined|ran out of|run out of|out of|short of|short on|havent got|havent any|dont have|didnt have)";
const leadIn = new RegExp(
  `\\b${taken}(?: (?:up|all|of|into|at|any|enough|the|my|our|that|this|whole|last|most|rest)){0,4} $`,
);
/** What befell it, said behind it: "the dark has bloomed", "dark's all gone", "used the dark up". */
const behind =
  /^(?: (?:one|ones|choc\w*|bar|bars|stuff))?(?: ?'?s| is| are| has| have| was| were| got| been| all)* (?:gone|finished|eaten|bloomed|seized|burnt|burned|split|off|stale|melted|used up|run out|ran out|sold out|up(?= (?:yesterday|already|last|earlier|then|,)|,|$))\b/;

/** The kind that a turn rules out by what became of it, where another is named that is to be used. */
export function isGone({ text, things }: Reading, thing: Thing): boolean {
  const isKind = (each: Thing) =>
    Boolean(each.chocolate) || each.ingredient === "milk" || each.color === "white";
  const others = things.some((each) => each !== thing && isKind(each) && each.at[0] > thing.at[1]);
  return others && (leadIn.test(text.slice(0, thing.at[0])) || behind.test(text.slice(thing.at[1])));
}

const kinds = "(?:{chocolate}|{ingredient=milk}|{color=white})";

/** "..., so milk", "... ill go with white": behind a kind that is gone, the one that is taken. */
export const insteadOfGone = [
  `${taken} (?:(?:up|all|of|into|at|any|enough|the|my|our|that|this|whole|last|most|rest) ){0,4}{chocolate} (?:\\S+ ){0,6}(?:, |so |and |then |now |its |use |using |take |with |make it |make |do )+(?:the |some )?${kinds}(?: (?:then|instead|now|it is|it|is|please|pls|one|chocolate|this time|will do|has to do))*(?: [?.])?$`,
  `{chocolate} (?:one |bar |stuff )?(?:(?:is|has|was|all|got|been) )*(?:gone|finished|eaten|bloomed|seized|burnt|burned|stale|used up|run out|ran out|sold out|off|up) (?:\\S+ ){0,4}(?:, |so |and |then |now |its |use |using |take |with |make it |make |do )+(?:the |some )?${kinds}(?: (?:then|instead|now|it is|it|is|please|pls|one|chocolate|this time|will do|has to do))*(?: [?.])?$`,
];
