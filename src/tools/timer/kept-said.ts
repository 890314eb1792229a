/** "opened cream 4 days": how long something has been kept, which is no order to time it. */

import { type Piece, textOf } from "../lib/pieces.ts";
import { inBase } from "../lib/units.ts";
import { day_min } from "../lib/when.ts";

const orders =
  /(?:^| )(?:timers?|timed?|alarms?|set|start|begin|run|remind\w*|ping|nudge|wake|buzz|ring|alert|tell|shout|countdown|count|let|give|another|more|until|till|ready)(?: |$)/;
const states =
  "open|opened|unopened|old|frozen|froze|thawed|defrosted|bought|purchased|kept|stored|left|sat|stood|expired|unrefrigerated";
const isState = new RegExp(`(?:^| )(?:${states})(?: |$)`);
const places =
  /(?:^| )(?:in|from|on) (?:the |a |my )?(?:fridge|freezer|counter|pantry|cupboard|tin|jar|tub|box|carton|shelf)(?: |$)/;

/** The length, as said, where days or weeks stand beside food, or hours behind "open", and nothing asks for a timer. */
export function keptSaid(some: readonly Piece[]): string | undefined {
  const text = textOf(some);
  const lengths = some.flatMap((each) => (each.amount?.dim === "time" ? each.amount : []));
  const [first] = lengths;
  if (!first || orders.test(text)) return undefined;
  const isStep = some.some((each) => each.thing?.step && !/^(?:thawed|defrosted)/.test(each.text));
  if (isStep) return undefined;
  const food = some.some(
    ({ thing }) => thing?.ingredient ?? thing?.base ?? thing?.dose ?? thing?.taste ?? thing?.count,
  );
  const shortest = Math.min(...lengths.map((each) => inBase(each.value, each.unit)));
  const isLong = shortest >= day_min && (food || isState.test(text) || places.test(text));
  return isLong || (shortest >= 60 && food && isState.test(text)) ? first.text : undefined;
}
