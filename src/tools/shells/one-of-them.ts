/** "what does one of those weigh once it's baked", behind a bowl of them: a single shell, of their size. */
import { diameter, says } from "../lib/find.ts";
import { type ShellsWay, sized } from "./turn.ts";

const single =
  /(?:^| )(?:(?:one(?:<number>)?|each|any|a single) of (?:(?:them|those|these|the|my) ?)+|(?:one(?:<number>)?|each|it) (?=weigh|(?:will|would|does|should) )|(?:an?|one(?:<number>)?|each|per|single|every) (?:(?:single|\S*bak\S*) )*\S*<count=shells|(?:for|per|of) (?:one|each)(?:<number>)?(?: |$))/;
const weighs = /(?:^| )(?:weigh\w*|weight|heavy|grams?|g)(?:<| |$)|how much/;
const baking = /(?:^| )\S*(?:bak(?:ed|es?|ing)|oven)(?:<| |$)/;
/** What it holds, what it takes or how many there are is another question. */
const other =
  /(?:^| )(?:fill\w*|flavou?r\w*|colou?r\w*|whites?|eggs?|trays?|how many|macarons?|cost)(?:<| |$)/;

export const oneOfThem: ShellsWay = ({ reading, before }) => {
  if (before === undefined || !says(reading, single) || says(reading, other)) return undefined;
  const isOne = reading.amounts.every(
    ({ dim, value }) => dim === "length" || (dim === "number" && value === 1),
  );
  const isBaked = says(reading, baking);
  if (!isOne || !(isBaked || says(reading, weighs))) return undefined;
  return { ...sized(diameter(reading) ?? before.diameter_mm), want: isBaked ? "one_baked" : "one" };
};
