/** "double the rum", "half that": of what was put into a bowl, the bowl staying as it is. */
import type { Memory, Reading } from "../contract/index.ts";
import { isOfQuality } from "../lib/find.ts";
import { type Draft, doseBefore } from "./draft.ts";
import { isFlavor, nameOf } from "./flavor-said.ts";

/** What would be of the bowl: asked for anew, poured into a part of it, or the whole made again. */
const ofBowl =
  /\bhow (?:much|many)\b|\b(?:bowl|batch|recipe|mix|filling|whole|everything|lot|strength|all)\b|<[^>]*base=|\b(?:for|in|into|from|to) (?:just |only |about |the |a |an |that |other )*\S*<(?:factor|number,fraction)>| of it\b/;

const ofFlavor =
  /<(?:factor|number,fraction)> (?:of )?(?:as much|that|this|it|(?:the |my )?(?:amount|dose|quantity)|(?:(?:the|my|that|as much) )?\S*<[^>]*(?:dose|taste)=)|^(?:\S+ ){0,4}\S*<(?:factor|number,fraction)>(?: then| instead| please)*(?: \?)?$/;

/** @returns the bowl that was checked, with its flavor so many times; undefined where the words speak of the bowl */
export function readTimes(reading: Reading, memory: Memory): Draft | undefined {
  const before = doseBefore(memory);
  if (before?.flavor_g === undefined || before.base_g === undefined || before.want === "flavor")
    return undefined;
  const [share, ...others] = reading.amounts;
  const isShare = share?.dim === "number" && (share.unit === "times" || share.fraction !== undefined);
  if (!isShare || others.length > 0 || /percent|%/.test(share.text) || isOfQuality(reading, share))
    return undefined;
  if (ofBowl.test(reading.mask) || !ofFlavor.test(reading.mask)) return undefined;
  const named = reading.things.filter(isFlavor);
  const isSame = named.every((each) => {
    const { dose, taste } = nameOf(each, reading);
    return each.dose === "flavor" || (taste !== undefined ? taste === before.taste : dose === before.dose);
  });
  const { dose, taste, name, bare, base_g, base, flavor_g } = before;
  return isSame
    ? {
        ...Object.fromEntries(
          Object.entries({ dose, taste, name, bare, base }).filter(([, value]) => value !== undefined),
        ),
        base_g,
        flavor_g: flavor_g * share.value,
        want: "check",
      }
    : undefined;
}
