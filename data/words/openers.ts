/**
 * How a turn begins before it says anything: words that lead in, and words that take back what was said. Patterns over
 * the mask or the text are made with them, so that all of them hear the same ones.
 */

/** They change nothing. */
export const leadingWords: readonly string[] =
  "oh ah uh um er erm hm hmm ugh argh grr and so ok okay but well right now then also please pls".split(" ");

const itOrThat = (...leads: string[]) => leads.flatMap((lead) => [`${lead} it`, `${lead} that`]);

/** What follows stands instead of something said before. */
export const takingBackPhrases: readonly string[] = [
  ..."no nope nah sorry oops whoops actually wait rather correction typo".split(" "),
  ...["hang on", "hold on", "i mean", "i meant", "my mistake", "my bad", "my error"],
  ...["misread", "misjudged", "miscounted", "misweighed", "mismeasured"].flatMap((said) => [
    `i ${said}`,
    said,
  ]),
  ...["i misspoke", "i mistyped", "i misremembered", "i misread it", "i was wrong", "i made a mistake"],
  ...["i stand corrected", "tell a lie", "i tell a lie", "on second thought", "on second thoughts"],
  ...["i said", "i got", "i wrote", "i had"].flatMap((lead) => itOrThat(lead)).map((said) => `${said} wrong`),
  ...["thats wrong", "that is wrong", "that was wrong", "i take it back", "i take that back"],
  ...["let me correct it", "let me correct that", "let me correct myself", "scratch that", "strike that"],
  ...itOrThat("sod", "screw", "stuff", "blow", "hang", "bugger"),
  "oh what the heck",
];

/** Either as alternatives of a pattern. */
export const leadingIn = leadingWords.join("|");
export const takingBack = takingBackPhrases.join("|");

/** Any number of either, each with its space; commas are tokens in a mask. */
export const opening = `(?:(?:${leadingIn}|${takingBack}|,) )*`;

/**
 * Words that lead in as they stand in a text, where a comma is no word of its own; for turns of phrase.
 * @param more what else may stand among them, as alternatives of a pattern
 */
export const leadingText = (...more: readonly string[]): string =>
  `(?:(?:${[leadingIn, ...more].join("|")}),? )*`;

/** The same with words that take back: what follows may stand in the place of something else. */
export const openingText = (...more: readonly string[]): string => leadingText(takingBack, ...more);

/** At least one that takes back, with whatever leads in around it. */
export const takesBack = `(?:(?:${leadingIn}|,) )*(?:(?:${takingBack}) (?:, )?)+`;
