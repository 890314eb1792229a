/**
 * "oops a blob went on the floor, scale says 128 now": some of what was weighed is gone, and the scale says what is left
 * of it: the recipe again, from so much of the same.
 */
import type { Reading } from "../../tools/contract/index.ts";
import { sameIngredient } from "../../tools/lib/lines.ts";
import { gramsOf } from "../../tools/lib/units.ts";
import { spaced } from "./spaced.ts";
import type { State } from "./state.ts";

/** What happened to it. */
const gone =
  /\b(?:blob|bit|some|few|part|splash|drop|spoonful|dollop|yolk|it|i|we|that|cat|dog|kid|kids)\b.*\b(?:went|gone|fell|dropped|dripped|spilled|spilt|splashed|stuck|sticks|stayed|lost|slipped|landed|missed|knocked|tipped|leaked|ran|out|licked|floor|sink|counter|worktop|table)\b|\b(?:spilled|spilt|dropped|lost|knocked|tipped|splashed)\b/;
/** Where the number is read off. */
const shown =
  /\b(?:scales?|display|it|that)(?: now| actually| really)? (?:says?|said|reads?|shows?|shown|weighs|is|is at|is down to|is now|stands at|comes to)(?: now| only| just| about| at)* $/;
const down =
  /\b(?:down to|so its|so it's|now its|now it's|now|only|leaves|leaving|so|have|ive got|got)(?: only| just| about)? $/;
const behind = /^ (?:is |are |g )?(?:left|remain\w*|remaining|on the scales?|now|still there|to go)\b/;
/** Another thing is asked, or more than one is told. */
const otherMatter =
  /\?|\b(?:how|what|when|why|which|can|should|is it|timer|note|log|more|another|added|add)\b/;

interface Stock {
  name: string;
  grams: number;
}

/** Nobody scales shells by less (from memory): a smaller number behind is read as something else. */
const leastWeight_g = 15;

/** The one thing that the recipe was scaled by. */
function stockOf({ inputs }: NonNullable<State["last"]>): Stock | undefined {
  const { have } = inputs as { have?: Stock[] };
  return have?.length === 1 ? have[0] : undefined;
}

/** "i lost 20 g", "dropped 15 g on the floor": so much less than there was. */
const lostSo =
  /^(?:(?:oh|oops|argh|ugh|no|damn|well|and|but|so|sorry|whoops|i|we|ive|weve|have|just|think|then|must have|about|some|,) )*(?:lost|spilled|spilt|dropped|splashed|tipped out|poured away|wasted) (?:about |around |some |maybe )?$/;
const ofIt =
  /^(?: (?:of (?:it|that|them)|(?:of )?(?:the |my )?what|on the (?:floor|table|counter|worktop|side)|down the (?:sink|drain)|in the sink|already|just now|there|sadly))*[ .!]*$/;

/** "added another, 104 g now", of whites that were weighed: so much in all. */
const oneMoreSaid = /^[^?]*\b(?:another|one more|a second|a third|two more)\b[^?]*$/;
const oneMore =
  /^(?:(?:and|so|ok|oh|then|now|i|ive|we|just|have) )*(?:added|cracked|put in|threw in|broke|separated|found) (?:another|one more|a second|a third|a fourth|two more)(?: (?:one|egg|white))?[,.;]? (?:(?:so|its|it's|it is|thats|that's|makes|making|comes to|now|which|that|weighs?|they|all|together|in all|total) )*$/;

/** The sentence put plainly; undefined where nothing was weighed or nothing is gone. Pure. */
export function weighedAnew(
  { text: said, amounts, things, whens }: Reading,
  { last, table }: State,
): string | undefined {
  const stock = last?.tool === "scale" ? stockOf(last) : undefined;
  const [only, ...others] = amounts;
  if (!stock || !only || others.length > 0 || whens.length > 0) return undefined;
  const isGrams = only.dim === "weight" || (only.dim === "number" && only.unit === "" && !only.fraction);
  if (
    !isGrams ||
    only.high !== undefined ||
    only.of?.count ||
    (otherMatter.test(said) && !oneMoreSaid.test(said))
  )
    return undefined;
  const grams = gramsOf(only);
  const named = things.filter(
    ({ ingredient, base, dose, taste }) => (ingredient ?? base ?? dose ?? taste) && ingredient !== "egg yolk",
  );
  const isOwn = named.every(({ ingredient }) => ingredient === stock.name);
  const before = `${spaced(said.slice(0, only.at[0]))} `;
  const after = said.slice(only.at[1]);
  const [other, ...more] = named;
  const [from, to] = other?.at ?? [0, 0];
  const about = from < only.at[1] ? after : `${said.slice(only.at[1], from)}what${said.slice(to)}`;
  if (lostSo.test(before) && ofIt.test(about)) {
    const had = isOwn
      ? stock
      : table.recipe?.find(({ name }) => sameIngredient(name, other?.ingredient ?? ""));
    if (!had || more.length > 0 || grams >= had.grams) return undefined;
    return isOwn ? `${had.grams - grams} g ${had.name}` : `i only have ${had.grams - grams} g ${had.name}`;
  }
  if (oneMore.test(before) && stock.name === "whites" && isOwn && grams > stock.grams)
    return `${grams} g ${stock.name}`;
  const isRead = shown.test(before) || behind.test(after) || down.test(before);
  // "a few cracked, 8 left" counts
  if (!isRead || !gone.test(said) || grams < leastWeight_g) return undefined;
  if (isOwn) return `${grams} g ${stock.name}`;
  return other?.ingredient && more.length === 0 && !other.base && !other.dose
    ? `i only have ${grams} g ${other.text}`
    : undefined;
}
