/** The words by which stock comes, goes or is counted. One list each: cues and reading go by the same. */
import { opening, takingBack } from "../../../data/words/openers.ts";

/** Verbs of taking out, however it went: used, given away, spilled, eaten, sold. */
export const takingWord = `(?:${[
  "us(?:e|ed|ing)|consumed?|finish(?:ed)?|gone through|go(?:t|ne)? through|went through|gone|went",
  "took|take[ns]?|taking|grabbed|fetched|drew|dipped into|remov(?:e|ed|ing)|delete[d]?|deduct(?:ed|ing)?|subtract(?:ed|ing)?|minus",
  "reduc(?:e|ed|ing)|lower(?:ed)?|decreased?|cut|shaved?|knock(?:ed)?",
  "g(?:a|i)ve[ns]?|giving|len[dt]|loaned|donated?|shared|sold|sell",
  "threw|throw[ns]?|toss(?:ed)?|bin(?:ned)?|dump(?:ed)?|discard(?:ed)?|poured|chucked",
  "los[et]|spil[lt]|spilled|spilt|drop(?:ped)?|burn(?:t|ed)?|wasted?|ruined|spoiled|spoilt|broke|smashed|cracked",
  "ate|eat|eaten|nibbled|snacked",
  "ran out|run out|out of",
].join("|")})`;

/** Those of them that nobody says of a recipe: with a weight and an ingredient they are an order on the shelf. */
export const goneWord =
  "(?:deduct(?:ed)?|subtract(?:ed)?|gave(?: away)?|given away|give away|lent|loaned|donated|threw (?:out|away)|thrown (?:out|away)|throw (?:out|away)|tossed|binned|dumped|discarded|lost|wasted|spoiled|spoilt|ate|eaten|sold|took out|take out|took away|take away)";

/** Words of putting there. */
export const addingWord = `(?:${[
  "put|add|added|adding|stick|stuck|chuck|pop|popped|bung|save|keep|store|stock(?:ed)? up|restock(?:ed)?|refill(?:ed)?|top(?:ped)? up",
  "bought|buy|picked|just got|got|found|received|arrived|came|come|delivered|delivery|brought",
  "more|another|extra|too|also|plus|new|increased?|raised?",
].join("|")})`;

/** Words that make a sentence one of the shelf, where nothing before it was. */
export const shelfWord =
  "(?:pantry|larder|cupboard|shelf|stock|stores?|kitchen|fridge|freezer|house|save|keep|remember|note|write|mark|record|log|track|bought|buy|picked|just got|received|arrived|came|delivered|delivery|restocked|stocked up|found)";

/** What stands for an amount in the mask. */
export const amountSign = "\\S*<(?:weight|volume|number)[^>]*>";

const word = (source: string) => new RegExp(`(?:^| )${source}(?:<\\S*)?(?= |$)`);
const about = "(?: (?:about|around|only|just|still|roughly|at|exactly|now|really|more like|maybe))*";
const thing = "(?: (?:of|the|my|in|\\S*<[^>]*>))*";

export const takes = word(takingWord);
export const adds = word(addingWord);
export const ofShelf = word(shelfWord);

/** "gave me 200 g", "was given some", "butter went up by 100 g", "put 50 g back": what sounds of going and comes. */
export const comes =
  /(?:^| )(?:(?:gave|given|give|lent|sold|handed|brought|got) (?:me|us)|(?:was|were|got|been) (?:given|lent|sold)|(?:took|taken|take) delivery|(?:went|gone|goes|go) up by)(?: |$)|(?:^| )put .*(?:^| )?back(?: |$)/;

/** Neither "didn't use" nor "took it back" says which way. */
export const undoes = new RegExp(
  `(?:^| )(?:didnt|did not|havent|have not|never|dont|do not|wont|couldnt) (?:\\S+ )?${takingWord}(?= |$)|(?:^| )back(?: |$)(?!(?:out|off)(?: |$))`,
);

/** "got 50 g butter out again", "130 g flour left the pantry", "200 g came off the shelf": out, whatever the verb says elsewhere. */
export const leaves =
  /(?:^| )(?:got|get|getting|pulled|brought|fished|lifted|had) (?:\S+ ){1,5}(?:back )?out(?: (?:again|for|of (?:the|my) (?:pantry|larder|cupboard|stock|shelf|fridge|freezer))|$)|(?:^| )(?:left|came off|went from|came out of|is out of|are out of|has left|have left) (?:the|my) (?:pantry|larder|cupboard|stock|shelf)(?: |$)|(?:^| )(?:came|is|are|went|goes) back out(?: |$)/;

/** What there is, whatever else is told: "200 g left", "down to 200 g", "reduce it to 200 g", "its 800 g now". */
export const stands = new RegExp(
  [
    `(?:^| )${amountSign}${thing} (?:is |are )?(?:left|remaining|remains?)(?= |$)`,
    `(?:^| )left${about} ${amountSign}`,
    `(?:^| )(?:reduc\\S*|lower\\S*|decreased?|cut|dropp?\\S*|br(?:ing|ought)|take|took|set|change\\S*|update\\S*|correct\\S*|adjust\\S*|increased?|raised?|down|went|up|shrunk|topped up)(?:<\\S*)?(?: \\S+){0,4}? to${about} ${amountSign}`,
    `(?:^| )(?:is|are|its|theres|have|ive|got)${about} ${amountSign}${thing} (?:right )?now(?= |$)`,
    `(?:^| )now${about} (?:have|at|is|got)${about} ${amountSign}`,
  ].join("|"),
);

/** "there's only 100 g", "i have 4 eggs", "i counted 90 g", "the butter is 90 g": a count, where no verb says otherwise. */
export const counts = new RegExp(
  [
    `(?:^| )(?:theres|there is|there are|there was|there were|i have|we have|ive got|weve got|i have got|ive|weve|only got|only have|counted|count|weighed|holds?|in total|altogether|that is all|thats all|thats it)${about}(?: got)?${about} ${amountSign}`,
    `^(?:(?:and|but|so|well|oh) )*(?:only|just) ${amountSign}`,
    `>(?: (?:is|are|weighs?))${about} ${amountSign}`,
    "(?:^| )(?:thats|that is|its|it is) (?:all|everything|it)(?: |$)",
  ].join("|"),
);

/** "no hang on 150", "make that 120", "it was 30", "i meant 5": in the place of the number before. */
export const corrects = new RegExp(
  `^${opening}(?:${takingBack}|i was wrong|make (?:that|it)|should (?:be|have been)|(?:it|that) (?:was|is|should be)|its|thats)(?= |$)|(?:^| )(?:actually|sorry|i mean|i meant|rather)$`,
);

/** "put 100 g in the cake": a bowl or a cake is no place of hers. */
export const putElsewhere =
  /(?:^| )(?:put|add|added|stick|chuck|pop|bung) .*(?:^| )?(?:into|in|to) (?:(?:a|the|my|some|that|this) )+(?!(?:\S+ )?(?:pantry|larder|cupboard|shelf|stock|stores?|kitchen|fridge|freezer|drawer|box|tin|jar|bag|tub|list|inventory|total|house|basement|garage)(?: |$))(?!\S*<[^>]*(?:ingredient|chocolate)=)[a-z]/;

const joints = new Set(
  "and then plus so ok okay of the my our some with a an please pls well oh um ah g".split(" "),
);

/** Nothing but amounts and things with what joins them. */
export const isBareList = (mask: string): boolean =>
  mask.split(" ").every((each) => each.includes("<") || !/[a-z]/.test(each) || joints.has(each));

/** Words that stand where a name would: "used another 160", "threw out 30 g". */
export const notNames =
  /^(?:(?:used?|using|took|came|come|went|back|again|shelf|pantry|larder|cupboard|fridge|freezer|another|more|left|gone|out|away|off|from|down|up|by|lost|only|just|now|no|wait|actually|about|i|ive|we|have|got|had|was|less|minus|make|sorry|meant|said|there|theres|on|at|not|but|so|had|did|counted|weighed) ?)+$/;

/** Verbs of taking that leave the rest: how much has to be said with them. */
export const partly =
  /(?:^| )(?:reduc\S*|lower\S*|decreased?|cut|shaved?|deduct\S*|subtract\S*|minus|less|take|took)(?: |$)/;

/** Words of all there is. */
export const wholly =
  /(?:^| )(?:all|up|rest|everything|lot|whole|gone|finished|empty|ran out|run out|out of)(?: |$)/;
