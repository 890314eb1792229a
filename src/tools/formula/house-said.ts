/** Reads which recipe is to stand in for the book's shells. */
import type { Reading } from "../contract/index.ts";
import { says } from "../lib/find.ts";
import type { Draft } from "./draft.ts";

/** "use grandmas from now on", "make that one my default". */
const forGood =
  /^(?:(?:please|ok|so|and|then|now|can you|could you|lets|i want to|id like to|i will|ill) )*(?:always )?(?:use|take|go by|go with|stick to|stick with|work with|make|set|bake|switch to) .*(?:from now on|from here on|in future|for good|every time|by default|always|(?:as )?(?:my|the|our) (?:house|usual|standard|default|go to)(?: (?:one|recipe|formula|shells))?)(?: (?:please|then|on))*$|^always (?:use|take|go by|go with) \S+(?: \S+){0,3}$|^(?:from now on|in future) (?:please )?(?:always )?(?:use|take|go by|go with) /;
const pointsAtIt = /(?:^| )(?:that|this|it|the)(?: (?:one|recipe|formula))?(?: |$)/;

/** "use snowy shells as my house recipe", "back to the book's recipe", "what is my house recipe". */
export function readHouse(
  reading: Reading,
  saved: string | undefined,
  shown?: string | undefined,
): Draft | undefined {
  const meant = saved ?? (says(reading, pointsAtIt) ? shown : undefined);
  if (meant && says(reading, forGood) && reading.amounts.length === 0) return { does: "house", name: meant };
  if (!says(reading, /(?:^| )(?:house|usual|standard|default|book\S*)(?: |$|<)/)) return undefined;
  if (
    says(
      reading,
      /(?:back to|use|go by|follow) the books?(?: |$|<)|(?:forget|reset|drop|clear) (?:my|the|our) house/,
    )
  )
    return { does: "book house" };
  if (
    saved &&
    says(
      reading,
      /(?:as|is|for|be|to|:) (?:my |the |our )?(?:house|usual|standard|own|default)|(?:my|the|our) (?:house|usual|standard|default) (?:recipe|formula) (?:is|will be|should be|be|to|:)/,
    )
  )
    return { does: "house", name: saved };
  return says(reading, /(?:what|which|whats|show) .*house/) ? { does: "house" } : undefined;
}
