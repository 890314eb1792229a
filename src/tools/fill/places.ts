/** Where in a macaron a filling goes, by the words for it, and which filling is named for it. */
import type { FillInputs } from "./fill.ts";

/** At the edge. */
export const ringWord = "(?:rings?|borders?|rims?|dams?|walls?|outer|outside)";
/** Inside of it: "center_jam" is read as one word where the jam is named right behind it. */
export const centerWord = "(?:centers?|centres?|middles?|cores?|insides?|inner)(?:_\\S*)?";

/** "around the edge buttercream, jam in the center". */
export const edgeAndCenter = new RegExp(
  `(?:^| )(?:edges?|outside) .*(?: )${centerWord}(?: |$)|(?:^| )${centerWord} .*(?: )(?:edges?|outside)(?: |$)`,
);

const edge = "(?:rings?|borders?|rims?|dams?|walls?|edges?|outside|perimeter)";
const inner = "(?:centers?|centres?|middles?|cores?|insides?)";
const put =
  "(?:(?:a |the )?(?:rings?|borders?|dams?|walls?) of |(?:goes|comes|is|gets|with|its|i want|i pipe|use|the|some|a|:|,) )*";
const thing = "([^ <]+)<[^ >]*(?:base|taste|ingredient|dose|chocolate)=[^ >]*>";
const piped = "(?:(?:piped?|goes|comes|is|as|for|in|on|at|along|round|around|to|the|a|of) )+";

const ringNamed = [
  `(?:^| )${edge} of (?:the |my )?${thing}`,
  `${thing} ${edge}(?: |$)`,
  `${thing} ${piped}${edge}(?: |$)`,
  // "lemon curd in the middle and buttercream piped round it"
  `${thing} (?:(?:piped\\S*|pipe\\S*|going|goes|all) )*a?round(?: (?:it|that|them))?(?: [,.]| and|$)`,
  `(?:^| )(?:round|around|on|along|at|for|to) the ${edge} ${put}${thing}`,
  `(?:^| )(?:outside|edge) ${put}${thing}`,
].map((each) => new RegExp(each));

const centerNamed = [
  `(?:^| )${inner} of (?:the |my )?${thing}`,
  `${thing} ${inner}(?: |$)`,
  `(?:^| )${inner}_${thing}`,
  `${thing} ${piped}${inner}(?: |$)`,
  `(?:^| )(?:in|for|at|to) the ${inner} ${put}${thing}`,
  `(?:^| )(?:the )?${inner} ${put}${thing}`,
].map((each) => new RegExp(each));

const nameIn = (mask: string, ways: readonly RegExp[]): string | undefined =>
  ways.map((way) => way.exec(mask)?.[1]?.replaceAll("_", " ").trim()).find((name) => name !== undefined);

/** "caramel center with a buttercream ring", "around the edge buttercream and in the center jam". */
export function namesByPlace(mask: string): Partial<FillInputs> {
  const ring = nameIn(mask, ringNamed);
  const center = nameIn(mask, centerNamed);
  return { ...(ring ? { ring } : {}), ...(center && center !== ring ? { center } : {}) };
}
