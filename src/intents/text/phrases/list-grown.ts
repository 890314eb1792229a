/** A list told, then what it is all to come to: "200 g cream 300 g milk chocolate, can you blow that up so it all comes to 900 g". */
import type { Phrase } from "./phrase.ts";

const grams = "(\\d+(?:\\.\\d+)? ?(?:kg|kilos?|grams?|gr|g))";
const ask =
  "(?:(?:can|could|would|will) (?:you|we|i) (?:please )?|please |now |so |i want to |id like to |i'd like to |i need to |lets |let's )*";
const grow =
  "(?:blow|stretch|pump|puff|scale|bring|take|pull|push|bump|shrink|trim|cut|size|make|get|grow|enlarge|work|stretch|expand|extend|reduce|resize|step|bulk)";
const it = "(?:that|it|this|them|those|everything|the lot|the list|the whole lot|all of it|the recipe)";
const till =
  "(?:so(?: that)?|till|until|such that|,|and) ?(?:(?:it|that|they|the lot|the whole lot|everything|all|should|will|to) )*(?:all )?";
const comes =
  "(?:comes?(?: out)?(?: to| at)?|makes?|adds? up to|totals?|weighs?(?: in at)?|is|are|sums? to|reach(?:es)?|gives?(?: me)?)";
const inAll =
  "(?: (?:in all|altogether|in total|total|all told|all in|overall|of it|together|please|pls|for me))*";
/** Two weights and no question stand before it: a list. */
const list = "((?:[^?\\d]{0,40}\\d+(?:\\.\\d+)? ?(?:g|grams?)\\b){2,8}[^?\\d]{1,40}?)";

export const listGrown = (): readonly Phrase[] => [
  {
    marks: [
      "blow",
      "stretch",
      "pump",
      "puff",
      "size",
      "grow",
      "enlarge",
      "expand",
      "extend",
      "bump",
      "shrink",
      "bulk",
      "make that",
      "make it",
    ],
    from: new RegExp(
      `^${list}(?:,|\\.|;| -|:| and| then)+ ${ask}${grow} ${it}(?: (?:up|out|down|bigger|larger|smaller))*(?:,? (?:${till} ?${comes} (?:about )?|(?:up |out |down )?to (?:be )?(?:a )?|(?:into )?an? ))${grams}(?: (?:batch|bowl|lot|bowlful))?${inAll} ?[?.!]*$`,
      "g",
    ),
    to: "$1, scale it to $2 in all",
  },
  // "can you blow up 200 g cream, 300 g milk chocolate till it comes to 900 g"
  {
    marks: ["blow up", "stretch", "pump up", "grow", "enlarge", "expand", "bump up", "shrink", "bulk up"],
    from: new RegExp(
      `^${ask}(?:blow|stretch|pump|grow|enlarge|expand|extend|bump|shrink|bulk)(?: up| out| down)? (?=\\d)${list},? ${till} ?${comes} ${grams}${inAll} ?[?.!]*$`,
      "g",
    ),
    to: "$1, scale it to $2 in all",
  },
  // "my ganache is 200 g cream 300 g milk chocolate 50 g butter. i want 900 g of it in all"
  {
    marks: ["want ", "need ", "like ", "make "],
    from: new RegExp(
      `^(?:(?:my|the|our) [a-z ]{2,30}? (?:is|has|takes|goes)(?: made of| of)?:? |(?=\\d)(?!.*\\b(?:buttercream|ganache|batter|filling)\\b))${list}(?:,|\\.|;| -|:| and| but)+ (?:i|we) (?:(?:want|need|'?d like|would like|have to|now|to|make|must) )+${grams} (?:of it|of that|altogether|in all|in total|all told)${inAll}(?:,? (?:what (?:are|is)|whats|how much|give me|list|so what are) (?:(?:of|the|all|my) )*(?:amounts|weights|quantities|grams|each|everything)(?: (?:then|please|now|one))*)? ?[?.!]*$`,
      "g",
    ),
    to: "$1, scale it to $2 in all",
  },
  // "..., want it to be 900 g all together", "...: total should be 900 g", "... upsize to 900 g"
  {
    marks: ["want ", "need ", "like ", "total ", "upsize", "upscale", "rescale"],
    from: new RegExp(
      `^(?:i(?:'ve| have)? got |ive got |i have )?(?=\\d)(?!.*\\b(?:buttercream|ganache|batter|filling)\\b)${list}(?:,|\\.|;| -|:| and| but)+ ${ask}(?:(?:i |we )?(?:want|need|would like|'d like) (?:it|that|this|them|the lot|all of it|the total) (?:to )?(?:be|come to|make|weigh|total)|(?:the |my )?total (?:should|has to|must|is to|to|needs to) (?:be|come to|reach)|(?:upsize|upscale|rescale|enlarge)(?: (?:it|that|this|them))?(?: up)? to) ${grams}(?: all together)?${inAll} ?[?.!]*$`,
      "g",
    ),
    to: "$1, scale it to $2 in all",
  },
  // "can you make 200 g cream 300 g milk chocolate 50 g butter come to 900 g"
  {
    marks: ["make ", "bring ", "get "],
    from: new RegExp(
      `^${ask}(?:make|bring|get|take) (?=\\d)${list} (?:to )?(?:come|add|go|sum)s?(?: up)? to ${grams}${inAll} ?[?.!]*$`,
      "g",
    ),
    to: "$1, scale it to $2 in all",
  },
];
