/** A sentence as the timers hear it: "the first" is one of several and no day of the month, "the rest" is the resting. */
import type { Reading } from "../contract/index.ts";
import { type Piece, pieces } from "../lib/pieces.ts";

export interface Heard {
  some: Piece[];
  mask: string;
}

const place = /^(?:the )?(?:first|second|third|fourth|fifth|last)$/;

export function heard(reading: Reading): Heard {
  const some = pieces(reading).flatMap((each): Piece[] => {
    // "add 5 to the first"
    if (each.when && place.test(each.text)) return [{ text: each.text.replace(/^the /, "") }];
    // "the rest should be 20 min": a verb that was taken into what remains
    const verb = /^(?:the )?rest (should|is|be)$/.exec(each.text)?.[1];
    return verb && each.thing?.id === "remainder" ? [{ text: "the rest" }, { text: verb }] : [each];
  });
  return {
    some,
    mask: reading.mask
      .replace(/(^| )(?:the_)?(first|second|third|fourth|fifth|last)<when>/g, "$1$2")
      // "stick 3 back on", "drop 2", "cut 4 off": done to a timer, and no butter
      .replace(
        /(^| )(stick|drop|cut)<\S*> (?=(?:(?:another|the|those) )?\S*<(?:number|time)[^ ]*(?: (?:more|extra))?(?:$| back(?: |$)| on(?: (?:it|that|this))?$| off(?: |$)))/g,
        "$1$2 ",
      )
      .replace(/(^| )(?:the_)?rest_(should|is|be)<remainder>/g, "$1the rest $2"),
  };
}
