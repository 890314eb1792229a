/** "add 20 g hazelnut paste", "without the butter", "its salted butter": the label before, with that changed in it. */
import type { Memory, Reading, Thing } from "../contract/index.ts";
import { nameOf, sameIngredient } from "../lib/lines.ts";
import type { LabelInputs } from "./label.ts";

type Draft = Partial<LabelInputs>;
type Line = NonNullable<LabelInputs["lines"]>[number];

/** Words of a label of its own. */
const anotherLabel =
  /(?:^| )(?:us|eu|usa|european|american|new|another)? ?labels?(?: (?:for|of)|[^?]*:)|<count=macarons>|(?:^| )(?:recipe|batch)(?: |<|$)/;
const goes =
  /\b(?:without|no|minus|leave out|leaving out|skip|drop|remove|take out|forget) (?:the |any |that )?$/;
const comes =
  /^(?:(?:and|ok|oh|so|now|what|if|i|but|also|please) )*(?:add|put|with|plus|use|swap|there is|theres|it has|they have)\b/;

/** The general name of what is sold in kinds. Nut butters and cocoa butter are foods of their own, with other allergens. */
const general = (name: string): string =>
  name.replace(/^(?:un)?salted (?=butter$)|^(?:dark|milk|white) (?=chocolate$)/, "");

/** "salted butter" is a butter, "dark chocolate" a chocolate; dark is no milk chocolate. */
const isKind = (one: string, other: string): boolean =>
  sameIngredient(one, other) || sameIngredient(general(one), other) || sameIngredient(one, general(other));

const isFood = (each: Thing): boolean => Boolean(each.ingredient || each.chocolate || each.taste);

/**
 * Nothing where the sentence is about another label.
 * @param said the lines with weights that it holds
 */
export function amended(reading: Reading, { last }: Memory, said: readonly Line[]): Draft | undefined {
  const before: Draft = last?.tool === "label" ? { ...(last.inputs as Draft), bare_g: undefined } : {};
  if (!before.lines || anotherLabel.test(reading.mask) || said.length > 2) return undefined;
  const foods = reading.things.filter(isFood);
  if (foods.length === 0) return undefined;
  const gone = foods.filter(({ at }) => goes.test(reading.text.slice(0, at[0])));
  if (gone.length > 0 && said.length === 0) {
    const lines = before.lines.filter(({ name }) => !gone.some((each) => isKind(nameOf(each), name)));
    return lines.length < before.lines.length ? { ...before, lines } : undefined;
  }
  if (said.length > 0) {
    // "swap the butter for 40 g hazelnut paste": what stands before "for" goes
    const swap = /\b(?:swap|swapped|replace|replaced|exchange|change)\b.*?\b(?:for|with|by|to)\b/.exec(
      reading.text,
    );
    const end = swap ? swap.index + swap[0].length : 0;
    const swapped = foods.filter(({ at }) => at[0] < end);
    const stays = before.lines.filter(({ name }) => !swapped.some((each) => isKind(nameOf(each), name)));
    // "10 g more butter" comes on top of what there is
    const onTop = /\b(?:add|more|another|extra|plus)\b/.test(reading.text);
    const had = (name: string) => stays.find((each) => isKind(name, each.name))?.grams ?? 0;
    const now = said.map((each) => (onTop ? { ...each, grams: each.grams + had(each.name) } : each));
    const others = stays.filter(({ name }) => !said.some((each) => isKind(each.name, name)));
    return { ...before, lines: [...others, ...now] };
  }
  const [food, ...more] = foods;
  if (!food || more.length > 0) return undefined;
  // "its salted butter": the same line by its right name
  const own = before.lines.filter(({ name }) => isKind(nameOf(food), name));
  if (
    own.length === 1 &&
    /^(?:(?:and|oh|actually|but|sorry|no) )*(?:its|it is|it was|thats|the butter is|i used|used|with) /.test(
      reading.text,
    )
  )
    return {
      ...before,
      lines: before.lines.map((each) => (each === own[0] ? { ...each, name: nameOf(food) } : each)),
    };
  return comes.test(reading.text) ? { ...before, also: [...(before.also ?? []), nameOf(food)] } : undefined;
}
