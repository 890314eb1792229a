/** Shells that can't be used: those that broke of so many, and those that are gone of the ones piped. */
import type { Amount, Reading } from "../contract/index.ts";
import { says } from "../lib/find.ts";
import { isNumber, type ShellsWay, sized } from "./turn.ts";

const unusable =
  /^ (?:of (?:them|those|these) )?(?:are |were |got |have |came out |is |was )?(?:cracked|broken?|hollow|burnt|burned|ruined|lost|stuck|bad|duds?|no good|unusable|in the bin|smashed|ugly)\b/;

/** "112 shells, 6 cracked". */
export function lostOf({ amounts, text }: Reading, all: Amount): number {
  const lost = amounts.find(
    (each) =>
      each !== all && isNumber(each) && each.value < all.value && unusable.test(text.slice(each.at[1])),
  );
  return lost?.value ?? 0;
}

const areGone =
  /(?:^| )(?:ate|eaten|lost|dropped|gave away|smashed|binned|threw away|tossed) (?:about |only )?\S*<number> (?:of (?:the|my) )?\S*<count=shells/;

/** "the kids ate 6 shells", of those that were piped: what is left still pairs up. */
export const lostSome: ShellsWay = ({ reading, memory: { table } }) => {
  const [only, ...more] = reading.amounts;
  if (!only || more.length > 0 || table.shells === undefined || !says(reading, areGone)) return undefined;
  return only.value < table.shells
    ? { shells: table.shells - only.value, lost: only.value, want: "macarons", ...sized(table.diameter_mm) }
    : undefined;
};

const soMany =
  /(?:(?:^| )so|leaves|leaving|(?:that|it) makes|thats|that is|down to|left with|only|now|have|ive got|got|[,=]) (?:(?:me|only|just|now|with|at|about|i|ive|have|got|theres|its) )*\S*<number>(?: \S*<count=shells>)?(?: (?:left|now|shells|good ones|whole ones|then|of them))*(?: [.,;])?(?: (?:so )?how many \S*<count=macarons.*)?(?: [?])?$/;
const broke =
  /(?:^| )(?:broken?|cracked|crumbled|smashed|ruined|burnt|burned|hollow|stuck|dropped|ate|eaten|gone|lost|fell|bad|dud|binned|no good)(?:<|_| |$)/;

/** "one shell is broken so 29": how many there are then is said, and they pair up. */
export const soManyLeft: ShellsWay = ({ reading, memory: { table } }) => {
  const numbers = reading.amounts.filter(isNumber);
  const [gone, left, ...more] = numbers;
  const ofShells = reading.things.some(({ count }) => count === "shells");
  if (!gone || !left || more.length > 0 || numbers.length !== reading.amounts.length || !ofShells)
    return undefined;
  if (left.value <= gone.value || !says(reading, soMany) || !says(reading, broke)) return undefined;
  return { shells: left.value, lost: gone.value, want: "macarons", ...sized(table.diameter_mm) };
};
