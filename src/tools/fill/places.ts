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
  new RegExp(`(?:^| )${edge} of (?:the |my )?${thing}`),
  new RegExp(`${thing} ${edge}(?: |$)`),
  new RegExp(`${thing} ${piped}${edge}(?: |$)`),
  // "lemon curd in the middle and buttercream piped round it"
  new RegExp(
    `${thing} (?:(?:piped\\S*|pipe\\S*|going|goes|all) )*a?round(?: (?:it|that|them))?(?: [,.]| and|$)`,
  ),
  new RegExp(`(?:^| )(?:round|around|on|along|at|for|to) the ${edge} ${put}${thing}`),
  new RegExp(`(?:^| )(?:outside|edge) ${put}${thing}`),
];

const centerNamed = [
  new RegExp(`(?:^| )${inner} of (?:the |my )?${thing}`),
  new RegExp(`${thing} ${inner}(?: |$)`),
  new RegExp(`(?:^| )${inner}_${thing}`),
  new RegExp(`${thing} ${piped}${inner}(?: |$)`),
  new RegExp(`(?:^| )(?:in|for|at|to) the ${inner} ${put}${thing}`),
  new RegExp(`(?:^| )(?:the )?${inner} ${put}${thing}`),
];

const nameIn = (mask: string, ways: readonly RegExp[]): string | undefined =>
  ways.map((way) => way.exec(mask)?.[1]?.replaceAll("_", " ").trim()).find((name) => name !== undefined);

/** "caramel center with a buttercream ring", "around the edge buttercream and in the center jam". */
export function namesByPlace(mask: string): Partial<FillInputs> {
  const ring = nameIn(mask, ringNamed);
  const center = nameIn(mask, centerNamed);
  return { ...(ring ? { ring } : {}), ...(center && center !== ring ? { center } : {}) };
}
