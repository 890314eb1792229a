/** Reads which recipe is to stand in for the book's shells. */
import type { Reading } from "../contract/index.ts";
import { says } from "../lib/find.ts";
import type { Draft } from "./draft.ts";

/** "use snowy shells as my house recipe", "back to the book's recipe", "what is my house recipe". */
export function readHouse(reading: Reading, saved: string | undefined): Draft | undefined {
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
