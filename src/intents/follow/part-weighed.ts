/** "no, the mint only wants 180", "rose should get 200", behind a bowl that was split: that part's new weight, and no bowl. */
import { opening } from "../../../data/words/openers.ts";
import { vessel } from "../../../data/words/vessels.ts";
import type { Amount, Reading } from "../../tools/contract/index.ts";
import { gramsOf } from "../../tools/lib/units.ts";
import { spaced } from "./spaced.ts";
import type { State, Topic } from "./state.ts";

/** Lighter than this no part of a bowl is; as many parts or shares there may be. */
const leastPart_g = 40;

const part = `(?: (?:${vessel}|part|one|half|bit|lot|share))?`;
const gets =
  "(?: ?(?:,|only|just|now|really|actually|then|customer|will|would|should|must|has|have|to|be|is|was|get|gets|getting|got|want|wants|need|needs|take|takes|about|more like|nearer|at|down|up|s))+";
const tail = "(?: (?:of it|of that|then|now|please|pls|instead|after all|this time|not #|though))*[ .!]*$";

/** The number in grams, as it stands in the text. */
const isWeight = ({ dim, unit, fraction, high }: Amount): boolean =>
  high === undefined && (dim === "weight" || (dim === "number" && unit === "" && !fraction));

/** What may be asked in between while the parts still lie there. */
const between: ReadonlySet<string> = new Set("split dose timer note convert".split(" "));
const places = "first second third fourth fifth sixth last".split(" ");

/** The part that is named, as it stands in the text and as the split calls it. */
function partNamed(
  { text, things }: Reading,
  names: readonly string[],
): { said: string; part: string } | undefined {
  if (things.some(({ dose, base }) => dose ?? base)) return undefined;
  const kinds = things.filter(({ count }) => !count);
  const [only, ...others] = kinds;
  const name = only && (only.color ?? only.taste ?? only.text);
  if (only && name && others.length === 0)
    return names.includes(name) ? { said: only.text, part: name } : undefined;
  const [place, ...more] = places.filter((each) => new RegExp(`\\b${each}\\b`).test(text));
  if (!place || more.length > 0 || kinds.length > 0) return undefined;
  return place === "last" || places.indexOf(place) < names.length
    ? { said: place, part: `the ${place} part` }
    : undefined;
}

/** Undefined where no part of the split before is named with a weight. Pure. */
export function partWeighed(reading: Reading, state: State): { text: string; topic: Topic } | undefined {
  const { text, amounts, whens } = reading;
  const { past = [], table, last } = state;
  const at = past.findLastIndex(({ tool }) => tool === "split");
  const topic = last?.tool === "split" ? last : past[at];
  if (!topic || !last || at < 0 || past.slice(at).some(({ tool }) => !between.has(tool))) return undefined;
  const total = topic.inputs.total_g;
  const [only, ...others] = amounts;
  if (typeof total !== "number" || !only || others.length > 0 || whens.length > 0) return undefined;
  const grams = gramsOf(only);
  if (!isWeight(only) || grams < leastPart_g || grams >= total) return undefined;
  const named = partNamed(
    reading,
    (table.parts ?? []).map(({ name }) => name),
  );
  if (!named) return undefined;
  const put = spaced(`${text.slice(0, only.at[0])}#${text.slice(only.at[1])}`);
  const pattern = new RegExp(
    `^(?:${opening}|(?:no|and|but|so|ok|oh|sorry|wait|actually|make|give|put) ?,? ?)*(?:the |my )?NAME(?: colou?r)?${part}${gets} ?#${tail}`,
  );
  const isMade = new RegExp(
    `^(?:(?:no|and|ok|so|now|then|,) )*(?:make|give) (?:the |my )?NAME${part} #${tail}`,
  );
  const masked = put.replace(named.said, "NAME");
  if (!pattern.test(masked) && !(isMade.test(masked) && named.part.startsWith("the "))) return undefined;
  return {
    text: named.part.startsWith("the ") ? `${named.part} is ${grams} g` : `${named.part} ${grams} g`,
    topic,
  };
}
