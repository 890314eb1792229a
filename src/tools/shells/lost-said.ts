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
