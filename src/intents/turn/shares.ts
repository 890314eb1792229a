/** A share that is told, the bowl it is of, and what that comes to: one question in two or three sentences. */
import { asks, type Ear, longest, type Part } from "./part.ts";

const isFlavor = (part: Part): boolean =>
  part.some((item) => item.is === "thing" && Boolean(item.thing.dose ?? item.thing.taste));

/** "the pear should make up 5 percent of the finished filling", "she stops at 4.5 percent with the rose flavoring". */
const tellsShare = (part: Part, ear: Ear): boolean =>
  part.length <= longest &&
  !asks(part, ear) &&
  part.filter((item) => item.is === "amount").length === 1 &&
  /<percent>/.test(ear.mask(part)) &&
  isFlavor(part);

const ofFinished = /(?:^| )(?:finished|final|total|whole|end)(?: |$)/;
const bowl =
  /<weight> (?:of )?(?:[a-z]+ )?\S*<[^>]*base=|<[^>]*base=[^>]*> (?:\S+ ){0,3}(?:is|weighs|weighed|was|came to|comes to|makes|made) (?:\S+ ){0,2}\S*<weight>/;
/** "so what's that in grams", "how much is that then", "what do i weigh out": of the share that was told. */
const pointing =
  /(?:^| )(?:(?:so|and|then|now) )*(?:(?:what|whats|how much|how many)(?: (?:is|are|does|do|would|will|might|should|s|g|grams\S*))*(?: (?:that|it|this))(?: (?:be|is|make|come to|comes to|come out at|work out at|work out as|amount to|weigh))?(?: (?:in|by|as) (?:\S*<unit=g>|weight))?|(?:what|how much|how many \S*<unit=g>)(?: of it)? (?:do|should|must|shall|would|will|can|am) (?:i|we) (?:to )?(?:weigh|measure|put|use|need|add|stir|tip|want)(?: (?:out|in|up|into it|in it))?)(?: (?:then|please|pls|now|exactly|,))*(?: \?)?$/;

/** The share goes with the bowl that is told behind it, where the bowl is asked nothing else. */
export const isShareOf = (told: Part, part: Part, ear: Ear): boolean =>
  part.length <= longest &&
  tellsShare(told, ear) &&
  !isFlavor(part) &&
  bowl.test(ear.mask(part)) &&
  (ofFinished.test(ear.mask(told)) || pointing.test(ear.mask(part)));

/** "what do i weigh out?" behind a share and its bowl. */
export const asksWeightOf = (before: Part, part: Part, ear: Ear): boolean =>
  before.length <= longest &&
  part.length <= longest &&
  !asks(before, ear) &&
  isFlavor(before) &&
  /<percent>/.test(ear.mask(before)) &&
  /<weight>/.test(ear.mask(before)) &&
  !part.some((item) => item.is === "amount") &&
  pointing.test(ear.mask(part));
