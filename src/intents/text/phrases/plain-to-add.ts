/** How much plain mix brings a strong bowl back, asked on the way: "what do i stir in", "the buttercream i have to add". */
import { leadingText } from "../../../../data/words/openers.ts";
import type { Phrase } from "./phrase.ts";

const lead = `^(?!.*\\d)(${leadingText()})`;

export const plainToAdd = (): readonly Phrase[] => [
  // "work out the extra plain buttercream"
  {
    marks: ["extra", "additional"],
    from: /^(?:(?:please|then|so|and|now),? )*(?:work out|calculate|compute|figure out|find|determine) (?:for me )?the (?=(?:extra|additional) (?:plain )?(?:buttercream|ganache|filling|batter|cream|chocolate)\b)/g,
    to: "how much ",
  },
  // "so whats the buttercream i still have to add", "what do i fold in of the plain stuff to get it back"
  {
    marks: ["to add", "the plain"],
    from: new RegExp(
      `${lead}(?:what'?s|what is|which is) (?:the )?(?:extra |more |plain |amount of )*(butter ?cream|ganache|filling|batter|smbc)(?: that)? i (?:still |now )?(?:have|need|got|ought|want) to (?:add|fold in|stir in|put in)\\b`,
      "g",
    ),
    to: "$1how much plain $2 do i add",
  },
  {
    marks: ["the plain"],
    from: new RegExp(
      `${lead}what (?:do|should|must|can) i (?:still |now )?(?:fold|stir|mix|add|put|work|beat)(?: in| into it| back in)? of the plain(?: stuff| one| mix)?\\b`,
      "g",
    ),
    to: "$1how much plain do i add",
  },
  // "way to strong": too strong
  {
    marks: [" to strong", " to weak", " to sweet"],
    from: /(?<!\bfrom \w+ )\bto (strong|weak|sweet)\b(?= ?(?:[.,;!?]|$)| (?:now|for|again|and|so|what|how|help|i)\b)/g,
    to: "too $1",
  },
  // "waaay too strong. what do i stir in"
  {
    marks: ["strong", "much", "intense", "overpowering"],
    from: /(\btoo? (?:strong|much|intense)\b|\boverpowering\b)( ?[.,;!?]+ ?(?:so )?)what (do|should|must|can) i (?:stir|fold|mix|work|beat) in(?: to (?:it|that))?(?= ?[?.!]*$)/g,
    to: "$1$2what $3 i add",
  },
];
