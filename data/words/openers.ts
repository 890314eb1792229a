/**
 * How a turn begins before it says anything: words that lead in, and words that take back what was said. Patterns over
 * the mask or the text are made with them, so that all of them hear the same ones.
 */

/** They change nothing. */
export const leadingIn = "oh|ah|uh|um|er|erm|hm|hmm|and|so|ok|okay|but|well|right|now|then|please|pls";

/** What follows stands instead of something said before. */
export const takingBack =
  "no|nope|nah|sorry|oops|whoops|actually|wait|hang on|hold on|i mean|i meant|rather|correction|my mistake|my bad|my error|typo|i (?:misspoke|mistyped|misremembered|misread it|was wrong|made a mistake|stand corrected)|i (?:said|got|wrote|had) (?:that|it) wrong|i take (?:that|it) back|(?:thats|that is|that was) wrong|let me correct (?:that|it|myself)|scratch that|strike that|(?:i )?tell a lie|(?:sod|screw|stuff|blow|hang|bugger) (?:it|that)|on second thoughts?|oh what the heck";

/** Any number of either, each with its space; commas are tokens in a mask. */
export const opening = `(?:(?:${leadingIn}|${takingBack}|,) )*`;

/** At least one that takes back, with whatever leads in around it. */
export const takesBack = `(?:(?:${leadingIn}|,) )*(?:(?:${takingBack}) (?:, )?)+`;
