/** "whats that in fahrenheit", "and in f?", with a timer set since: the heat that was told before, on the other scale. */
import type { Outcome, Reading } from "../../tools/contract/index.ts";
import { plain } from "../../tools/lib/show.ts";
import { fahrenheit } from "../../tools/lib/units.ts";
import type { State } from "./state.ts";

/** The heat that an answer gives, in °C; the first where it gives several. */
export const heatIn = ({ figures = [] }: Outcome): number | undefined =>
  figures.find(({ unit }) => unit === "°C")?.value;

const asks =
  /^(?:(?:and|so|ok|okay|oh|hm|sorry|please|what|whats|what's|is|how much|give me|tell me|say|that|thats|it|its|this|the|my|oven|heat|temp|temperature|one|be|would|will|now|in|as|to|into|convert|degrees) )+(f|fahrenheit|c|celsius|centigrade)(?: (?:please|pls|then|too|instead|again|though))*[ ?.!]*$/;

/** The sentence with the heat; undefined where none is meant. Behind a conversion it is that one's. */
export function heatAsked({ text, amounts, whens }: Reading, { heat_c, last }: State): string | undefined {
  if (heat_c === undefined || last?.tool === "convert" || amounts.length > 0 || whens.length > 0)
    return undefined;
  const [, scale] = asks.exec(text.toLowerCase()) ?? [];
  if (scale === undefined) return undefined;
  return scale.startsWith("f") ? `${plain(heat_c)} c in f` : `${plain(fahrenheit(heat_c))} f in c`;
}
