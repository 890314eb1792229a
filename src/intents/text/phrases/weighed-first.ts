/** A weight told apart from what was weighed: "scale says 185, thats buttercream", "cream is the limit, 85 g of it". */
import type { Phrase } from "./phrase.ts";

const lead =
  "((?:(?:ok|okay|and|now|so|right|well|hi|hey|also|then|alas|sadly|annoyingly|unfortunately|luckily|hm),? )*)";
const grams = "(\\d{2,4}(?:\\.\\d+)?)(?: ?(?:grams?|gr|g))?(?: (?:now|exactly|flat|dead))?";
const scale = "(?:the |my |our )?(?:kitchen |digital )?(?:scales?|display|readout|read out|weighing scales?)";
const about = "(?:(?:about|around|roughly|only|just|exactly|now|bang on|a|at|on) )*";
const shows =
  "(?:says?|said|reads?|reading|shows?|showed|showing|gives?|gave|is|sits|stands|stops?|stopped|settles|settled)";

const kind = "(?:dark|milk|white|plain|vanilla|swiss|italian|french|chocolate|choc|meringue)";
const mix = `((?:${kind} ){0,3}(?:butter ?cream|smbc|bc|ganache|filling|batter))`;
/** The bowl is off the number: it says nothing more. */
const bowlOff =
  "(?:,? (?:(?:with|and|but|once|after) )?(?:the |my )?(?:bowl|dish|tub|pot|jug|container)(?: (?:is|was|already|all|being))* (?:tared|tare|zeroed|zerod|taken|not counted|not included|left out|excluded|deducted|off)(?: (?:off|out|away))?|,? (?:without|minus|not counting) (?:the |my )?(?:bowl|dish|tub|pot|jug|container)|,? net)";

/** Each way to tell the number, with the number as its only group. */
const readings = [
  `${scale} (?:${shows} )?${about}${grams}`,
  `(?:on|by) ${scale}(?:,)? (?:(?:its|it's|it is|theres|there's|there is|i have|ive got|is|we have) )?${about}${grams}`,
  `(?:i |we )?(?:read|get|got|see|have) ${about}${grams} (?:off|on|from) ${scale}`,
  `(?:its |it's |it is |theres |there's |there is )?${about}${grams} (?:it says|it reads|says ${scale}|(?:is )?(?:on|by) ${scale}|is what ${scale} (?:says|shows|reads))`,
];
const that =
  "(?:(?:and|so|which|its|it's|it|thats|that's|that|is|this|these|are|all|just|only|of|the|my|a|pure) )*";
const meant = "(?: (?:that|this|it) is|,? i mean| in there| on (?:its|it's) own| alone| only| by itself)?";

const limit =
  "(?:limit|limits|limiting|limited|bottleneck|short|lacking|tight|scarce|hold|holds|holding|stops|stopping|decides|deciding|constrains|running)";
const part = "((?:(?:dark|milk|white|heavy|double|whipping|single) )?(?:chocolate|choc|couverture|cream))";
const links =
  "(?:what|whats|what's|the|thing|one|is|thats|that's|which|all|i|i'm|im|am|ive|i've|we|my|our|a)";
const behindLimit =
  "(?: (?:me|us|of|on|up|back|out|low|by|here|it|today|this time|factor|ingredient|one|thing|part))*";
const thereIs =
  "(?:(?:only|just|i|i've|ive|we|weve|have|got|theres|there's|there|there are|is|its|it's|about|exactly|all|with|but) )*";
const ofIt =
  "(?: (?:of it|of that|of the stuff|left|there is|there|in all|to go on|to hand|here|in the house|only))*";

export const weighedFirst = (): readonly Phrase[] =>
  readings
    .map(
      (reading): Phrase => ({
        marks: ["scale", "display", "readout", "read out", " it says", " it reads"],
        from: new RegExp(
          `^${lead}${reading}${bowlOff}?(?:,|;|:|\\.| -| and|, and) ${that}${mix}${meant}${bowlOff}?(?= ?[.,;:?!]|$)`,
          "g",
        ),
        to: "$1$2 g $3",
      }),
    )
    .concat([
      // "my chocolate is the limit, 200 g of it"
      {
        marks: [
          "limit",
          "bottleneck",
          "short",
          "lacking",
          "tight",
          "scarce",
          "hold",
          "stop",
          "decid",
          "constrain",
          "running",
        ],
        from: new RegExp(
          `^${lead}(?:only |its |it's |it is |just )?(?:the |my |our )?${part} (?:(?:is|was|'s|thats|that's|which) )?(?:${links} )*${limit}${behindLimit}(?:,|;|:|\\.| -| and| as|, and|, as) ${thereIs}(\\d{2,4}(?:\\.\\d+)?) ?(?:grams?|gr|g)${ofIt}(?= ?[.,;:]|$)`,
          "g",
        ),
        to: "$1i have $3 g $2",
      },
    ]);
