/** "my name is Ida Holm, 3 Mill Lane": who is responsible, as she typed it. */
import type { Reading, Span } from "../contract/index.ts";

export interface Maker {
  name: string;
  /** Where it stands in the text that was read: nothing within is an ingredient. */
  at: Span;
}

const intro =
  /\b(?:(?:my|our|the|add|add the|add my|put) (?:name|address)(?: and (?:my )?address)?|name and address|name on it|made by)(?: (?:is|are))? ?[:,]? ?(?=\S)/;
const end =
  /\s*(?:;|\bnet (?:weight|wt)\b|\bbest (?:before|by)\b|,?\s*\b(?:and |please |can you |could you )*(?:put|add|print|write|use) (?:it|that|this|them|both)\b|:|$)/;
/** A shorter piece is no name. */
const leastLetters = 3;

function spanIn(text: string): Span | undefined {
  const found = intro.exec(text.toLowerCase());
  if (!found) return undefined;
  const from = found.index + found[0].length;
  return [from, from + (end.exec(text.slice(from).toLowerCase())?.index ?? 0)];
}

/** It is cut out of what she typed, with its capitals, and out of the text that the finds lie in. */
export function makerSaid({ said, text }: Reading): Maker | undefined {
  const [typed, at] = [spanIn(said), spanIn(text)];
  if (!typed || !at || typed[1] - typed[0] < leastLetters) return undefined;
  return { name: said.slice(...typed).trim(), at };
}

export const within = ({ at }: Maker, span: Span): boolean => span[0] >= at[0] && span[1] <= at[1];
