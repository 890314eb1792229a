/** The time is told first and the order to keep it stands behind: "i'll give the ganache an hour and ten, can you time that". */
import type { Phrase } from "./phrase.ts";

const lead = "(?:(?:ok|okay|and|so|oh|right|well|now|then|also|please|i think|i reckon),? )*";
const number =
  "(?:ten|fifteen|twenty|twenty five|thirty|thirty five|forty|forty five|fifty|five|a half|a quarter|\\d+)(?: ?(?:mins?|minutes?))?";
const time = `((?:\\d[\\d./ ]{0,6}|(?:(?!to |in |on )[a-z]+ ){1,4}?)(?:h|hrs?|hours?|mins?|minutes?)(?: (?:and )?${number})?)`;
const who = "(?:(?:i|we)(?:'ll|ll| will|'m| am|'re| are|'d| would)?|im|ill|well|lets|let's|going to|gonna) ";
const gives =
  "(?:(?:going to|gonna|just|to) )*(give|giving|leave|leaving|let|letting|allow|allowing|chill|chilling|rest|resting|put|putting|cool|cooling|bake|baking)";
const thing = "(it|them|this|these|that|(?:the|my|our|those|these) [a-z]+(?: [a-z]+)??)";
const state =
  "((?: (?:have|sit|set|stand|chill|cool|rest|bake|dry|firm up|wait|for|another|about|around|in the (?:fridge|freezer|oven)|on the side|on the counter|on the rack))*)";
const forWhat =
  "(?: (?:to (?:set|chill|cool|rest|bake|dry|firm up|stand|sit|harden|thicken|come up to room temp\\w*)|in the (?:fridge|freezer|oven)|on the (?:side|counter|rack)|of (?:rest|chilling|cooling)|first|then|now|more or less))*";
const keeps =
  "(?:(?:and|so|then|please|pls|just|if you would|,) ?)*(?:(?:can|could|will|would|wont|won't) you |mind |you (?:can |could |may )?)?(?:please |pls |just )*(?:time (?:it|that|them|this|those|me)|timing (?:it|that|them|this)|keep (?:the )?time(?: (?:of|on|for) (?:it|that|them|this))?|keep an eye on (?:the time|it|them|that)|keep track(?: of (?:it|that|them|this|the time))?|clock (?:it|that|them|this)|count (?:it|that|them) down|(?:set|start) (?:it|that|them|this|one|a timer)|(?:set )?(?:a )?timer|put (?:that|it|them) on (?:a|the) (?:timer|clock))";
const end = "(?:,? (?:for me|please|pls|thanks|then|ok|too))*[ ?.!]*$";

const named = /^(?:the|my|our|those|these) (.+)$/;
/** "let them rest 20 min": where only "them" is said, what they do. */
const doing = /\b(rest|chill|cool|dry|bake)/;
const order = (whole = "", what = "", length = "", done = ""): string => {
  const name = named.exec(what)?.[1] ?? doing.exec(done)?.[1];
  return length === "" ? whole : `set a ${name ? `${name} ` : ""}timer for ${length.trim()}`;
};

export const timeThat = (): readonly Phrase[] => [
  {
    marks: [" time ", " timing ", "keep time", "keep track", "eye on", "clock", "count ", " timer"],
    from: new RegExp(
      `^${lead}(?:${who})?${gives} ${thing}${state} ${time}${forWhat}(?:,|\\.|;)? ?${keeps}${end}`,
      "g",
    ),
    to: (whole, gives = "", what = "", state = "", length = "") => order(whole, what, length, gives + state),
  },
  // "the ganache gets 50 min, can you keep time", "ganache chills 50 min, can you keep time"
  {
    marks: [
      " time ",
      " timing ",
      "keep time",
      "keep track",
      "eye on",
      "clock",
      "count ",
      " timer",
      " set ",
      " start ",
    ],
    from: new RegExp(
      `^${lead}((?:(?:the|my|our|these|those) )?(?!i |we |you |it |they )[a-z]+(?: (?:ganache|curd|jam|syrup|buttercream|cream|shells|batter|dough))?) (?:gets?|needs?(?: to)?|has to|have to|must|should|ought to|wants to|chills?|rests?|sets?|cools?|bakes?|sits?|stands?|takes?|wants?)${state} ${time}${forWhat}(?:,|\\.|;)? ?${keeps}${end}`,
      "g",
    ),
    to: (whole = "", what = "", _state = "", length = "") =>
      order(whole, named.test(what) ? what : `the ${what}`, length),
  },
  // "what did you say the ganache has still to go", "what does the bake have to go"
  {
    marks: [" to go"],
    from: new RegExp(
      `^${lead}(?:what|how much|how many minutes) (?:(?:did you say|was it|is it|do you say|would you say|does|do|has|have|is|time) (?:that )?)*(?:the |my |our )([a-z]+(?: [a-z]+)?) (?:(?:has|have|had|got|still|yet|left) )*to go(?: (?:still|now|yet|then|again|please))*[ ?.!]*$`,
      "g",
    ),
    to: (_, what = "") =>
      `how long has the ${what.replace(/(?: (?:has|have|had|got|still|yet))+$/, "")} left`,
  },
];
