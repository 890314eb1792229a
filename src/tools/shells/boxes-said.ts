/** "how many boxes of 12 for 50 macarons", "and if 4 break": macarons, how many a box holds, and those that go into none. */
import type { Amount, Reading } from "../contract/index.ts";
import { bareNumbers, counted, says } from "../lib/find.ts";
import { isNumber, type ShellsTurn, type ShellsWay } from "./turn.ts";

/** "boxes of 12", "12 in a box", "12 to a box", "a box holds 12". */
const holdsSo = ({ text }: Reading, amount: Amount): boolean =>
  isNumber(amount) &&
  (/\bbox(?:es)? (?:of|with|holds?|takes?|fits?|for) (?:up to )?$/.test(text.slice(0, amount.at[0])) ||
    /^ (?:macarons? |macs |of them |go |fit )?(?:in|into|to|per|a|for) (?:a |each |every |one |the |my )?box\b/.test(
      text.slice(amount.at[1]),
    ));

const gone =
  "(?:breaks?|broke|broken|cracks?|cracked|fails?|failed|ruined|hollow|eaten|burnt?|no good|lost|bad|go missing|get (?:eaten|broken|lost)|(?:are|is|were|come out|came out) (?:broken|cracked|hollow|bad|ruined|burnt|no good|ugly|duds?)|dont make it|didnt make it|wont do|for (?:us|me|tasting|the kids|the family))";
const goneBehind = new RegExp(`^ (?:of (?:them|those) |macarons? |macs |more |have |got |get )*${gone}\\b`);
const goneBefore =
  /\b(?:break|broke|crack|cracked|lose|lost|eat|ate|keep|kept|drop|dropped|burn|burnt|ruin|ruined|minus|less|without|throw out|threw out|bin|binned) (?:about )?$/;

/** "and if 4 break": macarons that go into no box. */
const broken = (reading: Reading): Amount | undefined =>
  reading.amounts.find(
    (each) =>
      // "i keep 6 in a box" says what a box holds
      !holdsSo(reading, each) &&
      isNumber(each) &&
      Number.isInteger(each.value) &&
      (goneBehind.test(reading.text.slice(each.at[1])) || goneBefore.test(reading.text.slice(0, each.at[0]))),
  );

/** "and 2 for us", behind some that broke: those are gone too; "and if 6 break" is another guess. */
const isMore = /^(?:and|also|plus|another|then)\b(?!.*\b(?:if|instead)\b)|\b(?:another|more)\b/;

/** A weight, a price or a profit: boxes of another question. */
const isOtherwise = (reading: Reading): boolean =>
  reading.amounts.some((each) => each.dim === "weight" || each.dim === "money") ||
  says(reading, /profit|margin|earn|break even|sell|cost|charge/);

const holdsOf = (reading: Reading) => reading.amounts.find((each) => holdsSo(reading, each));

/** This turn goes on from a number of boxes. */
const goesOn = ({ memory, before }: ShellsTurn): boolean => memory.follows && before?.want === "boxes";

/** "and 12s", "and boxes of 8". */
const anotherSize: ShellsWay = (turn) => {
  const size =
    /^(?:(?:and|or|what about|how about|with|in|if|now) )*(?:boxes of )?(\d+)s?(?: (?:in|to) (?:a|each) box)?(?: \?)?$/.exec(
      turn.reading.text,
    )?.[1];
  return goesOn(turn) && size !== undefined ? { want: "boxes", in_box: Number(size) } : undefined;
};

/** "6", "a box holds 6", where that was asked. */
const sizeAnswered: ShellsWay = ({ reading, memory, before }) => {
  if (memory.slot !== "in_box" || before?.want !== "boxes" || isOtherwise(reading)) return undefined;
  const lost = broken(reading);
  const amount = holdsOf(reading) ?? bareNumbers(reading).find((each) => each !== lost);
  return { want: "boxes", in_box: amount?.value };
};

const asksBoxes =
  /how (?:many|much) (?:more )?\S*<count=boxes|^\S*<count=boxes> of \S*<number> , (?:i |we )?(?:have |got |made )+\S*<number> \S*<count=macarons>/;

/** "how many boxes of 12 for 50", "boxes of 6, got 48 macarons", "and if 4 break". */
const boxesCounted: ShellsWay = (turn) => {
  const { reading, memory, before } = turn;
  const again = goesOn(turn) && !says(reading, /batter|<count=(?:shells|trays)/);
  if ((!again && !says(reading, asksBoxes)) || isOtherwise(reading)) return undefined;
  const holds = holdsOf(reading);
  const lost = broken(reading);
  const [bare] = bareNumbers(reading).filter((each) => each !== holds && each !== lost);
  const said = counted(reading, "macarons");
  // "12 macarons in a box", "4 macarons broke": counted, and not how many there are
  const isElse = said === holds?.value || (lost?.of && said === lost.value);
  const macarons =
    (isElse ? undefined : said) ?? bare?.value ?? (again ? before?.macarons : memory.table.macarons);
  return {
    want: "boxes",
    ...(macarons === undefined ? {} : { macarons }),
    ...(holds ? { in_box: holds.value } : {}),
    ...(lost ? { broken: lost.value + (isMore.test(reading.text) ? (before?.broken ?? 0) : 0) } : {}),
  };
};

export const boxWays: readonly ShellsWay[] = [anotherSize, sizeAnswered, boxesCounted];
