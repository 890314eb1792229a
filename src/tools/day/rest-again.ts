/** "and with the rest as usual", "now with resting", "same with the usual rest": behind a plan without a rest it is put back. */

const habit = "(?:usual|always|normal|ever|before|(?:i|we) (?:usually|normally|always) (?:do|would))";
const usual = `(?:(?:as|like) ${habit}|the usual (?:way|time)|normally)`;
const end = "(?: (?:then|please|now|instead|again|after all|too))*(?: [?.!])*$";

/** How long is said: then there is one. */
export const restsFor =
  /<step=rest> (?:of|for|is|at|,) \S*<time>|<time> (?:of )?\S*<step=rest>|(?:^| )rest(?:ing)? (?:(?:them|it) )?(?:for |of )?\S*<time>/;

export const restsAgain: readonly string[] = [
  `with (?:(?:the|a|my|an|usual|normal|full|proper|standard) )*\\S*<step=rest>(?: (?:${usual}|back in|in|put back))?${end}`,
  `\\S*<step=rest> (?:(?:them|it|mine|those|the \\S+) )?${usual}${end}`,
  `rest(?:s|ing)? (?:(?:them|it|mine|those) )?${usual}${end}`,
  // "the rest as" is heard as what is left over
  `with (?:the_|my_)?rest_as<remainder> ${habit}${end}`,
];
