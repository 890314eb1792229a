/** "450 g ganache, no oil", "no flavor, 300 g smbc": a mix by its weight, and what is left out of it. */
const none =
  "(?:no|without|minus|skip|forget|leave out|not) (?:any |the )?(?:{dose}|{taste})(?: (?:in it|in there|this time|today|please|pls|then|now|at all))*";

/** @param base the mix, as a cue's facet wants it: "ganache" */
export const leftPlain = (base: string): string[] => {
  const mix = `(?:(?:i |need |want |make |have |do |just |plain )*){weight} (?:of )?(?:[a-z]+ |{chocolate} )*{base=${base}}`;
  const end = "(?: (?:please|pls|then|today))*(?: [?.])?$";
  return [
    `^(?:(?:ok|so|and|oh|no|actually|,) )*${none}(?: ?[,.:;])? ${mix}${end}`,
    `^(?:(?:ok|so|and|oh|no|actually|,) )*${mix}(?: [,.:;])? ${none}${end}`,
  ];
};
