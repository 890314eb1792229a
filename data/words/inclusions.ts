/** What is folded in by the piece and has no dose: it is no flavor, and how much of it goes in is by eye. Only words. */

const pieces =
  "biscuits?|cookies?|wafers?|crackers?|cornflakes|pretzels?|honeycomb|meringues?|macarons?|shells|nuts|almonds?|hazelnuts?|pistachios?|walnuts?|pecans?|peanuts?|cashews?|macadamias?|candy|candies|candy canes?|sweets|lollies|mints|toffee|nougat|chocolate|praline|brittle|ginger ?snaps|gingernuts|shortbread|cake|popcorn|ice cream cones?";

/** "crushed biscuit crumbs", "chopped hazelnuts", "sprinkles", "popping candy". */
export const inclusion = new RegExp(
  `^(?:(?:finely|roughly|coarsely|lightly|toasted|roasted|salted|little|whole) )*(?:(?:crushed|chopped|broken|crumbled|smashed|bashed|flaked|slivered|grated|diced)(?: up)? (?:[a-z]+ )?(?:${pieces})(?: (?:crumbs?|pieces|bits|chunks|crumble|crunch))?|(?:[a-z]+ )?(?:crumbs|crumble|sprinkles|nonpareils|jimmies|nibs|choc(?:olate)? chips|chips|marshmallows|feuilletine|popping candy|hundreds and thousands|(?:biscuit|cookie|wafer|brownie|cake|praline|toffee|nougat|honeycomb|nut|chocolate|fudge|meringue|caramel) (?:crumb|pieces|bits|chunks|shards|crunch)))(?![a-z])`,
);
