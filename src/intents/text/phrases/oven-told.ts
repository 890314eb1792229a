/** Her oven and the recipe's, told in two sentences: "cookbook gives 165 c in an ordinary oven. mine has the fan on". */
import type { Phrase } from "./phrase.ts";

export const ovenTold = (): readonly Phrase[] => [
  // "325 F regular, mine blows air"
  {
    marks: ["blow", "circulat", "hot air"],
    from: /\b(mine|ours|(?:my|our)(?: new| old| own)? oven|it)(?: ?'s| is| has| does)?(?: got)? (?:a |an |the )?(?:(?:blows?|blowing|circulates?|circulating|moves?|pushes)(?: the| its)? (?:hot |warm )?air(?: around| round| about)?|(?:hot[- ]air|air[- ]?circulating|air[- ]?blowing)(?: one| oven)?|blower(?: one| oven)?)(?=$|[ ,.;?!])/g,
    to: "$1 is a fan oven",
  },
  // "cookbook gives 165 c in an ordinary oven. mine has the fan on, setting?": one question, and no ganache that sets
  {
    marks: ["fan"],
    from: /(?<=\d.*)[.,;] ?(?:but |and )?(?:(mine|ours|my oven|our oven)(?:'s| has| is|s)?(?: got)? (?:a |the |an? )?(?:fan(?: one| oven| on| assisted| running)?|convection(?: one| oven)?)|with (?:my|the|our) fan on)(?=[,.;?]| what| which| how|$)/g,
    to: ", mine is a fan oven",
  },
  {
    marks: ["without a fan", "no fan", "without fan"],
    from: /(?<=\d.*(?:without (?:a |the )?|no )fan)[.,;] ?(?:but |and )?(?:mine|ours|my oven)(?:'s| has|s)? (?:got )?(?:one|it)\b/g,
    to: ", mine is a fan oven",
  },
  // "165 c, ordinary oven. what on a fan one?"
  {
    marks: ["fan", "convection"],
    from: /(?<=\d.*\b(?:oven|conventional|static)\b[^.?!]*)[.;] (?=(?:and |so )?what (?:on|in|for|about|does that make|setting|temperature|temp|do i set)\b[^.?!]*\b(?:fan|convection)\b)/g,
    to: ", ",
  },
  // "cookbook gives 150 c fan. mine has no fan"
  {
    marks: ["no fan", "without a fan", "without fan"],
    from: /(?<=\d.*\bfan\b.*)[.;,] ?(?:but |and )?(?:mine|ours|my oven|our oven)(?:'s| has| is|s)?(?: got)? (?:no fan|without (?:a |the )?fan)(?=[,.;?]|$)/g,
    to: ", mine is an ordinary oven",
  },
];
