/** "not frozen", "if i don't freeze them": the fridge is asked about, though it is the freezer that is named. */

const ice =
  "(?:fr[eo]+z\\w*|fre+z\\w*|(?:go(?:ing)?|put|kept|keep|keeping) (?:\\w+ )?in (?:the |a )?freezer)";
const between =
  "(?:(?:be|been|being|get|got|getting|go|going|gonna|to|have|having|yet|ever|even|actually|want|wanting|plan|planning|need|bother|bothering|with|the|any|that|for|all) )*";
const denied =
  "(?:isnt|arent|wasnt|werent|hasnt|havent|hadnt|didnt|is not|are not|was not|were not|has not|have not|had not|did not)";
const wont = "(?:dont|wont|wouldnt|didnt|havent|cant|couldnt|do not|will not|cannot|can not)";

const ways = [
  "unfrozen",
  // "can they not be frozen", "or not frozen" ask about the freezer
  `(?<!\\b(?:why|can|could|should|may|must|or|can i|can they|could i|should i|are they|is it|do they) )(?:not|never|without|instead of|rather than|no) ${between}${ice}`,
  `without (?:the |a |any )?freezer`,
  `(?:they|those|these|ones|it|that|which|if \\w+) ${denied} ${between}${ice}`,
  `(?:i|we|you) ${wont} ${between}${ice}`,
  `(?:if|when|that|which|ones) (?:they|it|those|these) (?:dont|wont|doesnt) ${between}(?:get|be|go) ${between}${ice}`,
  "(?:skip|skipping|leave out|leaving out|avoid|avoiding) (?:the )?(?:freezer|freezing)",
];
/** "they don't freeze well": of the freezer all the same. */
const unfrozen = new RegExp(
  `\\b(?:${ways.join("|")})\\b(?! (?:well|hard|solid|right|properly|enough|through|again))`,
  "g",
);

/** The words with the fridge in the place of such a phrase. */
export const fridgeForUnfrozen = (words: string): string => words.replace(unfrozen, "fridge");
