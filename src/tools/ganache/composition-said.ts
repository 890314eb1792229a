/** What a mix is made of: a part of it asked for, or the mix before with one of its lines changed. */
import { says } from "../lib/find.ts";
import { onTable } from "./aim.ts";
import type { GanacheInputs } from "./ganache.ts";
import { readMix } from "./mix-said.ts";
import type { Draft, GanacheTurn, GanacheWay, Lines } from "./turn.ts";

const takenApart = ["composition", "moves", "target"];

/** "and the sugar?" behind a composition: the same mix, another part of it. */
export const partAgain: GanacheWay = ({ reading, memory, last, weights }) => {
  if (!memory.follows || !takenApart.includes(last?.want ?? "") || weights.length > 0) return undefined;
  if (reading.amounts.some((each) => each.dim === "percent")) return undefined;
  const named = (["sugar", "fat", "water"] as const).find((each) =>
    says(reading, new RegExp(`(?:^| )${each}(?:<| |$)`)),
  );
  const part: GanacheInputs["part"] = says(reading, /composition|made of/) ? "all" : named;
  return part && { want: "composition", part, ...(last?.want === "target" ? onTable(memory, {}) : {}) };
};

/** A way of going on from a composition whose lines are known. */
const onward =
  (way: (turn: GanacheTurn, lines: Lines) => Lines | undefined): GanacheWay =>
  (turn) => {
    const { before, common } = turn;
    const lines = before?.want === "composition" && before.lines ? way(turn, before.lines) : undefined;
    return lines && { ...common, want: "composition", lines };
  };

const isKind = /^(?:dark|milk|white) chocolate$/;

/** "and with milk chocolate instead of the dark", of a mix with dark chocolate in it. */
const ofAnotherKind: GanacheWay = (turn) => {
  const { reading, before, common } = turn;
  const [was, ...more] = before?.lines?.filter((each) => isKind.test(each.name)) ?? [];
  if (!was || more.length > 0 || reading.amounts.length > 0) return undefined;
  const kinds = [...reading.things.map((each) => each.chocolate), common.chocolate];
  const kind = kinds.find((each) => each && `${each} chocolate` !== was.name);
  const changed =
    kind &&
    onward((_, lines) =>
      lines.map((each) => (each === was ? { name: `${kind} chocolate`, grams: each.grams } : each)),
    )(turn);
  return changed && { ...changed, chocolate: kind };
};

/** "and with 300 g of the chocolate", of a mix with dark chocolate in it. */
const ofItsChocolate = onward(({ lines: [first] }, lines) => {
  const own = lines.find((each) => /chocolate$/.test(each.name))?.name;
  return first?.name === "chocolate" && own
    ? lines.map((each) => (each.name === own ? { ...each, grams: first.grams } : each))
    : undefined;
});

const adds =
  /^(?:(?:and|what|how|about|if|so|but|now|then|ok) )*(?:with|plus|add|adding) |(?:put|add|added|stir|stirred|adding) \S*<weight>.* (?:as well|too|in)(?: |$)|<weight> (?:of )?(?:\S+ )?\S*<[^>]*ingredient=\S+ (?:(?:went|goes|going|gone|put|stirred|melted)(?:<\S+)? )?(?:on top|as well|too|in (?:it|that|there|as well|too)|besides|added|also)(?: |$)/;
const onTop = /(?:^| )(?:more|less|extra|another|how)(?: |$)/;
const corrects =
  /^(?:(?:no|nope|sorry|oops|oh|actually|wait|make|it|its|was|that|change|set|say|try|only|just|and|what|if|the|i|meant|used|,) )*(?:\S*<(?:weight|number)> (?:of )?(?:the )?\S*<[^>]*ingredient=\S+|\S*<[^>]*ingredient=\S+ (?:to |is |was |are )?\S*<(?:weight|number)>)(?: (?:instead|then|now|please))?(?: \?)?$/;

/** "and with 30 g butter in it", "no, 90 cream": one weight added, or put right in its place. */
const withLine = onward(({ reading, lines: [only, ...others] }, lines) => {
  if (!only || others.length > 0) return undefined;
  if (says(reading, adds)) return [...lines.filter((each) => each.name !== only.name), only];
  const isThere = lines.some((each) => each.name === only.name);
  return isThere && !says(reading, onTop) && says(reading, corrects)
    ? lines.map((each) => (each.name === only.name ? { ...each, grams: only.grams } : each))
    : undefined;
});

/** "and without butter", "without the butter but only 100 g cream". */
const without = onward(({ reading, lines: now }, lines) => {
  const asks = /(?:^| )(?:without|no|minus|leave out|leaving out) (?:the |any )?\S*<ingredient=/;
  const gone = reading.things.filter(({ at }) =>
    /(?:without|\bno|minus|leav\w+ out) (?:the |any )?$/.test(reading.text.slice(0, at[0])),
  );
  const kept = lines.filter(
    (each) => !gone.some((thing) => thing.ingredient === each.name || thing.text === each.name),
  );
  return says(reading, asks) && kept.length < lines.length
    ? kept.map((each) => now.find(({ name }) => name === each.name) ?? each)
    : undefined;
});

/** "with 20 g butter too, so 240 g chocolate, 100 g cream, 20 g butter": told twice, and in it once. */
const once = (lines: Lines): Lines =>
  lines.filter(
    (each, at) => !lines.slice(0, at).some((one) => one.name === each.name && one.grams === each.grams),
  );

/** Several weights behind a composition: another mix to take apart. */
const anotherMix: GanacheWay = ({ before, lines, common }) =>
  before?.want === "composition" && lines.length > 1
    ? { ...common, want: "composition", lines: once(lines) }
    : undefined;

const mixNamed: GanacheWay = ({ reading, memory, want, common }): Draft | undefined =>
  want.want === "composition" ? { ...common, ...readMix(reading, memory) } : undefined;

export const compositionWays: readonly GanacheWay[] = [
  ofAnotherKind,
  ofItsChocolate,
  withLine,
  without,
  anotherMix,
  mixNamed,
];
