/** What is wanted of a ganache: its composition, its ratio, a part of it, or a mend for one gone wrong. */
import type { Reading } from "../contract/index.ts";
import { says, weighed } from "../lib/find.ts";
import type { GanacheInputs } from "./ganache.ts";
import { isChocolateHere } from "./kind-said.ts";

type Draft = Partial<GanacheInputs>;

/** Cream was weighed and no chocolate: how much of that is to be worked out. */
export const asksChocolate = (reading: Reading): boolean =>
  weighed(reading).some((each) => each.thing?.ingredient === "cream") &&
  !weighed(reading).some(
    ({ thing }) =>
      thing?.chocolate || /chocolate/.test(thing?.ingredient ?? "") || isChocolateHere(reading, thing),
  );

/** "how do i get my ganache thicker" */
const isToBe = (reading: Reading, how: RegExp): boolean =>
  new RegExp(`(?:^| )(?:get|make|getting|making) (?:\\S+ ){1,4}${how.source}(?: |$)`).test(reading.mask);

export function readWant(reading: Reading): Draft {
  // "how much chocolate gets it to piping", of the bowl there is
  const brings =
    /how (?:much|many) \S*<[^>]*ingredient=(?:\w+_)?(cream|chocolate)[^>]*> (?:gets|brings|takes|makes|would get|will get|to get|does it take to get) (?:it|that|this|them) (?:up |down |back )?(?:to|into)/.exec(
      reading.mask,
    )?.[1];
  if (brings) return { want: "mend", fault: brings === "cream" ? "stiff" : "loose" };
  const verb = says(
    reading,
    /(?:^| )(?:loosen|soften|thin)\S* (?:it|this|that|down)|hard_?as|hard as|rock hard|like (?:a )?(?:brick|concrete|cement)/,
  )
    ? "stiff"
    : isToBe(reading, /(?:softer|looser|thinner|runnier)/)
      ? "stiff"
      : isToBe(reading, /(?:thicker|firmer|stiffer)/)
        ? "loose"
        : says(
              reading,
              /(?:^| )(?:thicken|firm|stiffen)\S* (?:it|this(?! time)|that|up)|(?:came out|turned out|is|its|way|so|really|bit) (?:\S+ )?(?:thin|runny|liquid|loose|soupy|watery)(?:<| |$)/,
            )
          ? "loose"
          : undefined;
  const fault = reading.things.find(
    (each) => each.symptom === "loose ganache" || each.symptom === "stiff ganache",
  )?.symptom;
  if (
    says(
      reading,
      /(?:^| )water\S* activity|(?:^| )a _ w(?: |$)|(?:^| )fat content|what(?:s| is) the (?:fat|sugar\S*|water\S*)(?: |$)|percent ?wise|(?:in|by|as) (?:percent|percentages)(?: |$)|(?:percentage|percent|share|much|proportion)\S* (?:of )?(?:the )?(?:fat|water\S*|sugar\S*)(?: |$)|(?:^| )(?:fat|water|sugar)\S* (?:percentage|percent|%<unit=%>|share|content|proportion)|%<unit=%> (?:of )?(?:the )?(?:fat|water|sugar)\S*(?: |$)|composition|made of|(?:water|fat|sugar)\S* (?:\S+ ){0,3}(?:and|,|&) (?:\S+ ){0,2}(?:water|fat|sugar)|(?:^| )a ?w(?: |$)|how (?:fatty|watery|sweet) (?:is|are)|how (?:much|fatty|wet).*(?:(?:^| )fat(?: |$)|(?:^| )water)/,
    )
  )
    return { want: "composition" };
  if (weighed(reading).length === 0 && says(reading, /(?:^| )(?:ratio|proportions?)(?: |$)/))
    return { want: "ratio" };
  if (
    reading.things.some((each) => each.symptom === "split ganache") ||
    /(?:^|(?:and|now|oh|no|oops|but|ok|so|,) )(?:it|its|that) (?:has |just |all |is |went and )*split(?:<\S+)?(?: |$)/.test(
      reading.mask,
    )
  )
    return { want: "split" };
  if (
    (!fault || asksChocolate(reading)) &&
    says(reading, /how (?:much|many) (?:of )?(?:the )?\S*<[^>]*ingredient=(?:cream|chocolate)/)
  )
    return { want: "build" };
  const more = /how (?:much|many) (?:more|extra) \S*<[^>]*ingredient=(cream|chocolate)/.exec(
    reading.mask,
  )?.[1];
  const both = weighed(reading).some((each) => each.thing?.ingredient === "cream") && !asksChocolate(reading);
  if (more && both) return { want: "mend", fault: more === "cream" ? "stiff" : "loose" };
  // "too soft to roll, 260 dark and 150 cream"
  const isSoft = says(reading, /(?:^| )too_soft/) && both && weighed(reading).length > 1;
  if (isSoft && !fault) return { want: "mend", fault: "loose" };
  if (verb && !fault) return { want: "mend", fault: verb };
  if (fault) return { want: "mend", fault: fault === "loose ganache" ? "loose" : "stiff" };
  return {};
}
