/** Which scale a bare heat is in, where the sentence speaks of one by the device that shows it: "oven's in f, it says 310". */
import type { Reading } from "../contract/index.ts";

type Scale = "°C" | "°F";

interface Heat {
  /** The scale that the number is in. */
  unit: Scale;
  /** The one that is wanted. */
  to: Scale;
}

const scale = "\\S*<unit=(°[CF])>";
const device =
  "(?:ovens?|mines?|dials?|thermometers?|probes?|displays?|screens?|panels?|thermostats?|cookers?|stoves?)";
const paper = "(?:recipes?|books?|cards?|sheets?|pages?)";
/** What the number is shown by, between the scale and the number. */
const shows =
  "(?:(?:and|but|so|it|the|my|now|just|that|which|is|its|at|on|only|dial|display|screen|panel|readout|number|says?|shows?|reads?|reading|showing|saying|set|to|,|[.]) )*";

const asked = new RegExp(
  `(?:what|whats|what is|wats|how much|how many|how hot|convert|turn|put|give me|tell me|need|want) (?:(?:is|are|it|its|that|this|thats|would|will|be|me|the|temp|temperature|number|should|i|set|have|degrees|instead) )*(?:in|to|into|as)? ?${scale}`,
);
/** "..., in c?", "310, c?": asked for at the end. */
const askedLast = new RegExp(
  `(?:[,.:;=]|so|and) (?:(?:in|to|into|as|what|whats|so|that|is|the) )*${scale}(?: (?:please|pls|then))*(?: \\?)?$`,
);
const ofPaper = new RegExp(`(?:^| )${paper} (?:(?!${device} )\\S+ ){0,5}${scale}`);
const ofDevice = new RegExp(
  `(?:^| )(?:${device}|it|one) (?:(?!${paper} )\\S+ ){0,5}?${scale} ${shows}\\S*<number>`,
);

const other = (unit: Scale): Scale => (unit === "°C" ? "°F" : "°C");
const scaleIn = (pattern: RegExp, mask: string) => pattern.exec(mask)?.[1] as Scale | undefined;

/**
 * The scales of a bare number, where the words settle them.
 * @param heats the scales that the sentence names, in their order
 */
export function scalesOf({ mask }: Reading, heats: readonly string[]): Heat | undefined {
  const named = new Set(heats);
  const wanted = scaleIn(asked, mask) ?? scaleIn(askedLast, mask);
  const shown = scaleIn(ofDevice, mask);
  // "oven's stuck in f, it says 310, what's that in c": two scales, and one of them is asked for
  if (named.size > 1 && wanted) return { unit: other(wanted), to: wanted };
  const written = scaleIn(ofPaper, mask);
  if (named.size > 1 && written) return { unit: written, to: other(written) };
  // "my oven is in f and says 310, what is that": no recipe speaks, so it is the oven's own number
  return shown && !wanted && !new RegExp(`(?:^| )${paper}(?: |$)`).test(mask)
    ? { unit: shown, to: other(shown) }
    : undefined;
}
