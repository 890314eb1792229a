/** "how much plain then", "buttercream needed to tame it": plain mix for a bowl that holds too much of its flavor. */
import { bringsItDown, neededFor } from "../../../data/words/mending-talk.ts";
import { says, weighed } from "../lib/find.ts";
import type { WantWay } from "./want-said.ts";

const plain = "\\S*(?:plain|unflavou?red)(?:[_<]\\S*)?";
const mix = "\\S*<[^>]*base=\\S+";
const amountOf =
  "(?:how (?:much|many)(?: g| grams)?(?:<\\S+)?|(?:grams|amount|weight|quantity)(?:<\\S+)? of)(?: of| more| extra| the| my| some| additional)*";

/** Plain mix is named: whatever bowl was weighed, it goes on top. */
const namesPlain = new RegExp(
  `(?:^| )(?:${amountOf} ${plain}|${plain} (?:${mix} )?(?:${neededFor}|how much|amount|(?:that )?i (?:have to|need to|must|should) \\S+))(?: |$)`,
);

/** The mix alone, or none: behind a bowl with its flavor in. */
const namesMix = new RegExp(
  `(?:^| )(?:${mix} ${neededFor}(?: |$)|(?:extra|more|additional) ${mix}(?: \\?)?$|(?:what|whats|how (?:much|many)|needed) (?:\\S+ ){0,6}${bringsItDown}(?: |$))`,
);

export const plainAsked: WantWay = ({ reading, before }) => {
  const isBefore = before?.flavor_g !== undefined && before.base_g !== undefined;
  // "15 g melon flavor landed in 250 g, how much plain tames that"
  if (!isBefore && weighed(reading).length < 2) return undefined;
  return says(reading, namesPlain) || (isBefore && says(reading, namesMix)) ? { want: "mend" } : undefined;
};
