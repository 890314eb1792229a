/** Feet that aren't there, counted on none of them: "not a foot in sight", "feet on none of them". */
import type { Phrase } from "./phrase.ts";

const seen =
  "(?: (?:in sight|to be seen|anywhere|among them|amongst them|on (?:any|a single one|one|the tray|the whole tray)(?: of (?:them|these))?))?";

export const feetMissing = (): readonly Phrase[] => [
  {
    marks: [" foot", " feet", " frill"],
    from: new RegExp(
      `\\b(?:not|never|without|nor) (?:so much as )?(?:a single|a|one|any) (?:foot|feet|frill)${seen}(?=$|[ ,.!?])(?! (?:note|batter))`,
      "g",
    ),
    to: "no feet",
  },
  {
    marks: [" feet", " frills"],
    from: /\b(?:the )?(?:feet|frills) on (?:none|not one|not a single one|no shell|zero)(?: of (?:them|these|the (?:shells|macarons|lot)))?\b/g,
    to: "no feet",
  },
  // "none of them got feet", "nobody has feet": of shells that are spoken of
  {
    marks: ["none ", "not one ", "not a single "],
    from: /\b(?:none|not one|not a single one|not any|not a single shell)(?: of (?:them|these|those|mine|the (?:shells|macarons|lot)))? (?:has |have |had |ever )*(?:got|grew|grown|developed|gotten|showing|shows?|with) (?:any |their )?(?:feet|a foot|frills?)\b/g,
    to: "no feet",
  },
];
