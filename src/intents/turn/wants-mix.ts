/** "3 tbsp butter in g, and i want 300 g dark ganache": behind a question of another matter a wish is an order of its own. */
import type { Ear, Part } from "./part.ts";

const wish =
  /^(?:(?:and|also|then|plus|so|but|,) )*(?:(?:i|we|id|ill)(?: (?:also|really|will|would|still|just|do|am))* (?:want|need|like|make|making|got to make|have to make|after)|(?:make|mix|give me|mix me|make me)) (?:to (?:make|have|mix) )?(?:about |roughly )?\S*<weight> (?:of )?(?:(?!for|in|into|with)\S+ ){0,2}?\S*<[^>]*base=(?:ganache|buttercream|batter)/;

/** Calculators that have nothing to do with how much of a mix is made. */
const others = ["convert", "timer", "keep", "label", "trouble", "method"];

/**
 * @param before a question or order
 * @param part what stands behind it
 */
export const wantsMix = (before: Part, part: Part, ear: Ear): boolean =>
  wish.test(ear.mask(part)) &&
  ["ganache", "buttercream", "scale", "shells"].includes(ear.claimed(part)?.name ?? "") &&
  others.includes(ear.claimed(before)?.name ?? "");

const partsAsked =
  /(?:^| )(?:what goes in|what do i put in|ingredients?|(?:the|all|in its) (?:two|three|four)(?:<number>)?|weights|amounts|quantities|recipe|breakdown|list)(?: |$)|\S*<[^>]*ingredient=\S*chocolate[^>]*> (?:and|,) \S*<[^>]*ingredient=cream/;
const flavorOfIt =
  /^(?:(?:and|also|then|plus|so|,) )*(?:how much )?(?:\S+ ){0,3}?\S*<[^>]*dose=[^>]*>(?: \S+){0,2}? (?:for|in|into) (?:it|that|this|them|all of (?:it|that|this)|the lot|(?:the|this|my) (?:whole|entire|full) (?:\S*batch\S*|\S*bowl\S*|lot|thing|amount|quantity|mix))(?: (?:too|as well|also|then|please|pls|\?))*$/;

/** "750 g smbc, what goes in. vanilla extract for the whole batch too": the parts of a mix, and its flavor besides. */
export const flavorsMix = (before: Part, part: Part, ear: Ear): boolean =>
  flavorOfIt.test(ear.mask(part)) &&
  /<[^>]*base=(?:ganache|buttercream)/.test(ear.mask(before)) &&
  / ?\S*<weight>/.test(ear.mask(before)) &&
  !/<[^>]*(?:dose|taste)=/.test(ear.mask(before)) &&
  partsAsked.test(ear.mask(before));
