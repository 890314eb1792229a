/**
 * How things came to be or how it is in the kitchen, told beside what is asked: "i looked away, and when i looked back
 * 16 g lay in the bowl", "kitchen is damp", "egg whites, 98 g, stand here at room temp".
 */
import type { Phrase } from "./phrase.ts";
import { count } from "./spelt.ts";

export const toldScene = (): readonly Phrase[] => [
  // "the phone rang, i looked round, and when i looked back sixteen grams ..."
  {
    marks: ["when i ", "by the time i ", "as i "],
    from: new RegExp(
      `^[^\\d?:]{0,120}?\\b(?:when|by the time|as) i (?:looked|turned|came|got|glanced|walked|popped|was)(?: (?:back|round|around|again|up|down|in|home|over))+,? (?=(?:there (?:was|were|lay) )?${count} ?(?:g|grams?|ml|oz)\\b)`,
      "g",
    ),
    to: "",
  },
  // "tray needs 10 more min, kitchen is damp": why, where nothing is asked
  {
    marks: ["kitchen", "room", "house", "weather", "outside", "in here"],
    from: /^(?!.*\b(?:how|what|whats|why|when|which|should|is that|note|log|runny|cracked|hollow|sticky|feet)\b)(.*\b(?:min|mins|minutes?|hours?|timer|alarm)\b[^,.;]*?)(?:,|\.|;| -| as| because| since|, as|, because|, since) (?:the |my |our |it'?s )?(?:kitchen|room|house|weather|air|it|day)(?:'?s| is| feels| was)? (?:so |very |really |a bit |quite |too |all |rather )*(?:damp|humid|muggy|wet|sticky|hot|cold|warm|cool|dry|freezing|boiling|raining|rainy|draughty|drafty|chilly|stuffy|steamy|tropical)(?: (?:today|in here|here|outside|out|now|again|tonight))*(?= ?[.!]*$)/g,
    to: "$1",
  },
  // "egg whites, 98 g, stand here at room temp. ...": where they are weighed and nobody asks how they keep
  {
    marks: ["room temp"],
    from: new RegExp(
      `^(?!.*\\b(?:how long|can|may|safe|ok|okay|keep|still|hours?|days?|overnight)\\b)((?:[a-z]+ ){0,3}[a-z]*,? ?${count} ?(?:g|grams?|oz)(?: (?:of )?[a-z]+){0,2}),? (?:(?:which|that|all|and) )*(?:are |is )?(?:stands?|standing|sits?|sitting|lying|waiting|ready)(?: (?:here|out|ready|now|already|on the [a-z]+))* at room temp(?:erature)?\\b`,
      "g",
    ),
    to: "$1",
  },
  // "last sunday's batch, i forgot to note it: cardamom, lopsided feet"
  {
    marks: [" to note", " note", " log", "write", "wrote"],
    from: /^((?:ok|oh|so|and|also|right|well),? )*((?:the |my )?(?:(?:last|this) [a-z]+'?s?|yesterday'?s?|today'?s?|[a-z]+day'?s|the [a-z]+day'?s|the day before yesterday'?s?)(?: (?:batch|bake|one|lot|macarons|shells))?),? (?:which |that )?(?:i|we) (?:forgot|never got round|never got around|didn'?t get round|still have|still need|have yet|neglected|omitted|failed|haven'?t yet|haven'?t|didn'?t|never) (?:to |yet )?(?:note|noted|noting|log|logged|write|wrote|written|put)(?: (?:it|that|them|those|one))?(?: (?:down|up|in|yet))*(?:,? so(?: here)?)? ?[:,.;-]+ /g,
    to: "note for $2: ",
  },
];
