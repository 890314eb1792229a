/** Whites that stay foam, told in many ways: "cant get the meringue to peak, its just foam". All are one fault. */
import type { Phrase } from "./phrase.ts";

const lead = "(?:(?:i|we|im|i'm|we're|were|just|still|really|simply|have|had) )*";
const cant =
  "(?:can'?t|cannot|can not|couldn'?t|am not able to|am unable to|not able to|unable to|struggling to|failing to|fail to|failed to|not managing to|never manage to|don'?t manage to|don'?t know how to)";
const whites =
  "(?:(?:the|my|these|this|those|our) )?(?:(?:french |swiss )?meringue|(?:egg )?whites|egg white)";
const stiff =
  "(?:(?:form|make|hold|reach|get to|come to|go to|take|keep) )?(?:any |a |its |their |the )*(?:(?:proper|stiff|firm|soft|real|decent) )?(?:peaks?|peaking|stiffen(?: up)?|stiff|firm up|firm|fluff up|fluffy|whip(?: up)?|whisk up|thicken(?: up)?|come together|hold (?:its|their|a|any) shape|stand up|past (?:the )?foam|beyond (?:the )?foam|glossy)";
const never =
  "(?:won'?t|will not|wouldn'?t|doesn'?t|does not|don'?t|do not|refuses? to|isn'?t|is not|aren'?t|are not|never|not|no longer|just|simply|still|ever|even|seem to|want to|going to|gonna|get|gets|getting|go|goes|going|turn|turning|quite|really)";
const denial =
  /\b(?:won'?t|will not|wouldn'?t|doesn'?t|does not|don'?t|do not|refuses? to|isn'?t|is not|aren'?t|are not|never|not|no longer)\b/;
const doing =
  "(?:peak(?:s|ing)?|(?:hold|holds|holding|form|forms|forming|make|makes|making|reach|reaches|reaching) (?:any |a |its |their |the )*(?:(?:proper|stiff|firm|soft|real) )?(?:peaks?|shape)|whip(?:ping)?(?: up)?|stiffen(?:s|ing)?(?: up)?|stiff|firm(?:s|ing)?(?: up)?|thicken(?:s|ing)?(?: up)?|fluff(?:s|ing)?(?: up)?|com(?:e|es|ing) together|(?:gets? |getting |go |goes )?(?:past|beyond|further than) (?:the |a )?(?:foam|froth|bubbles)(?: stage)?)";
const foam = "(?:foam|froth|frothy|foamy|bubbles|bubbly|suds|soup with bubbles)";
/** What it is instead, right behind: no second thing to ask. */
const tail = `(?:,? (?:(?:and|but|so|its|it's|it is|theyre|they're|they are|is|are|stays?|just|only|all|still|nothing but|always|liquid|loose|wet|a) )+${foam})?`;
const marks = ["meringue", "whites", "egg white"];
const fault = "my meringue wont peak";

/** What isn't asked of a fault: the step itself, or a batter. */
const asked =
  /\b(?:how (?:long|stiff|far|many|much)|should|shall|need to be|until|till|once|when|before|after|note|log|if)\b/;
const unlessAsked = (whole = "", ...found: string[]): string =>
  asked.test(String(found.at(-1)).replace(whole, "")) ? whole : fault;

export const meringueWont = (): readonly Phrase[] => [
  // "cant get the meringue to peak", "i cant seem to whip my whites stiff"
  {
    marks,
    from: new RegExp(
      `(?<=^|[ ,])${lead}${cant} (?:seem to |ever |even )*(?:get|make|whip|beat|whisk|bring|have|turn) ${whites}(?: up)?(?: (?:to|into|so they|so it|past))* ${stiff}${tail}(?=$|[ ,.?!])`,
      "g",
    ),
    to: unlessAsked,
  },
  // "the meringue isnt peaking", "egg whites just froth and never peak", "meringue never gets beyond foam"
  {
    marks,
    from: new RegExp(
      `(?<=^|[ ,])${whites}(?: (?:just |only |still |all )*(?:froths?|foams?|bubbles?)(?: up)?,?(?: (?:and|but))?)?(?: ${never}){1,5} ${doing}${tail}(?=$|[ ,.?!])`,
      "g",
    ),
    // "the meringue gets stiff": no fault
    to: (whole = "", ...found) => (denial.test(whole) ? unlessAsked(whole, ...found) : whole),
  },
  // "no peaks on my meringue, only foam", "i cant get stiff peaks"
  {
    marks: ["peak"],
    from: new RegExp(
      `(?<=^|[ ,])(?:${lead}${cant} (?:seem to |ever |even )*(?:get|make|reach|whip(?: up)?|form)(?: any| to| up)*|(?:there are |theres |there's |ive got |i've got |i have |i get |im getting |getting |still |absolutely )*(?:no|not a single|not any|zero)) (?:sign of |hint of )?(?:(?:proper|stiff|firm|soft|real|decent) )*peaks?(?: (?:on|in|from|with|out of|at all from|at all on) ${whites})${tail}(?=$|[ ,.?!])`,
      "g",
    ),
    to: unlessAsked,
  },
  {
    marks: ["peak"],
    from: new RegExp(
      `(?<=^|[ ,])${lead}${cant} (?:seem to |ever |even )*(?:get|reach|whip(?: up)?)(?: any| to)* (?:(?:proper|stiff|firm|soft) )+peaks${tail}(?=$|[ ,.?!])`,
      "g",
    ),
    to: unlessAsked,
  },
  // "cant get the whites up, just froth", "my meringue is nothing but foam"
  {
    marks,
    from: new RegExp(
      `(?<=^|[ ,])${whites}(?: (?:is|are|was|stays?|stayed|remains?|keeps? being))(?: (?:just|only|all|still|nothing but|nothing more than|no more than|always|liquid|loose|wet|a|mere))+ ${foam}(?=$|[ ,.?!])`,
      "g",
    ),
    to: unlessAsked,
  },
  // "whites have been going 15 min and no peaks yet", "whipped the whites ten mins, still just froth"
  {
    marks,
    from: new RegExp(
      `(?<=^|[ ,])(?:(?:i|ive|i've|have|just|been) )*(?:(?:whipped|whisked|beaten|beat|whipping|whisking|beating) )?${whites}\\b[^.?!]{0,60}?(?:\\bno (?:(?:stiff|soft|firm|real) )*peaks?(?: (?:yet|at all|so far|in sight|whatsoever))?|\\bstill (?:just |only |nothing but |all |a )*${foam}|\\bnothing but ${foam})(?=$|[ ,.?!])`,
      "g",
    ),
    to: unlessAsked,
  },
  // "cant get my buttercream stiff", "cant get the ganache to firm up": the same of a filling
  {
    marks: ["buttercream", "ganache"],
    from: new RegExp(
      `(?<=^|[ ,])${lead}${cant} (?:seem to |ever |even )*(?:get|make|whip|beat|bring|have) (?:the |my |this )?(buttercream|ganache)(?: up)? (?:to )?(?:(?:go|get|turn|come) )?(?:stiff|firm up|firm|thicken(?: up)?|set(?: up)?|come together|fluffy|hold (?:its|a|any) shape|pipeable|thick)(?=$|[ ,.?!])`,
      "g",
    ),
    to: (_, mix = "") => `my ${mix} wont ${mix === "ganache" ? "firm up" : "come together"}`,
  },
];
