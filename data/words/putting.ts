/**
 * How it is told that something went into a bowl, as alternatives of a pattern over the mask. The second list says so only
 * with its "in": "I weighed 230 g" puts nothing anywhere.
 */
const alone = `put added used poured tipped dumped stirred squeezed stuck\\S* popped chucked threw thrown splashed dropped
  glugged plopped slid slipped slopped sloshed leaked trickled bunged lobbed tossed sprinkled dripped drizzled shook`;
const withIn = "weighed measured spooned scooped whisked folded beat beaten worked mixed swirled";

const verbs = alone.split(/\s+/);
export const putWords: string = [...verbs, ...withIn.split(" ").map((verb) => `${verb} in`)].join("|");

/** The verbs of both alone, for where an "in" stands behind anyway. */
export const putVerbs: string = [...verbs, ...withIn.split(" ")].join("|");

/** What goes in by itself: "12 g slipped in". */
export const wentWords =
  "slipped|slid|went|gone|fell|dropped|landed|tipped|got|plopped|glugged|ended up|splashed|slopped|sloshed|leaked|trickled|poured|came|jumped";
