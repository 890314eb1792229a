/** What a sizing question leans on: a bare number in the place of one that was said, the batter or the order on the table. */
import type { Memory, Reading } from "../contract/index.ts";
import { bareNumbers, pointsBack, says } from "../lib/find.ts";
import { isNamed } from "../lib/parts.ts";
import { inBase } from "../lib/units.ts";
import type { ShellsInputs } from "./shells.ts";

type Draft = Partial<ShellsInputs>;

/** "how many macarons from 270", "and from the white", behind batter that was split. */
export function ofBowl(reading: Reading, { table, last, follows }: Memory): Draft | undefined {
  const [bare, ...others] = bareNumbers(reading);
  const asked = /how many (?:\S+ )?\S*<count=(shells|macarons)/.exec(reading.mask)?.[1] as
    | "shells"
    | "macarons";
  const named = (table.parts ?? []).filter((each) => isNamed(reading, each.name));
  // "how many shells from the pink", behind a split
  if (
    asked &&
    table.mass?.thing === "batter" &&
    named.length === 1 &&
    named[0] &&
    reading.amounts.length === 0
  )
    return {
      batter_g: named[0].grams,
      want: asked,
      ...(table.diameter_mm === undefined ? {} : { diameter_mm: table.diameter_mm }),
    };
  // "trays for the pink"
  const forPart =
    /<count=trays\S* (?:(?:do|will|would|i|need|needed) )*for (?:the |my )?\S*<(?:[^>]*,)?(?:color|taste)=/;
  if (
    table.mass?.thing === "batter" &&
    named.length === 1 &&
    named[0] &&
    reading.amounts.length === 0 &&
    says(reading, forPart)
  )
    return {
      batter_g: named[0].grams,
      want: "trays",
      ...(table.diameter_mm === undefined ? {} : { diameter_mm: table.diameter_mm }),
    };
  if (table.mass?.thing !== "batter" || !says(reading, /(?:^| )(?:from|out of) (?:the |my )?\S*<?/))
    return undefined;
  const want = "macarons" as const;
  if (
    bare &&
    others.length === 0 &&
    bare.value >= 40 &&
    says(reading, /how many \S*<count=macarons\S* .*(?:from|out of) (?:the |my )?\S*<number>(?: \?)?$/)
  )
    return { batter_g: bare.value, want };
  const part = table.parts?.find(({ name }) =>
    reading.things.some((each) => (each.color ?? each.taste) === name),
  );
  const again =
    follows &&
    last?.tool === "shells" &&
    says(reading, /^(?:and |so |what about |how about )*(?:from|out of) the \S+(?: \?)?$/);
  const was = (last?.inputs as Draft | undefined)?.want;
  return part && again ? { batter_g: part.grams, want: was === "shells" ? was : want } : undefined;
}

/** "eggs of 55 g each, how many for 120 g whites": what an egg weighs in its shell says nothing of its white. */
export function eggsFor(reading: Reading): Draft | undefined {
  const whites = reading.amounts.find((each) => each.dim === "weight" && each.of?.ingredient === "whites");
  const egg = reading.amounts.find((each) => each.dim === "weight" && each !== whites);
  return whites &&
    reading.things.some((each) => each.ingredient === "egg") &&
    says(reading, /how many .*(?:for|to get|make|give) /)
    ? {
        whites_g: inBase(whites.value, whites.unit),
        want: "whites",
        ...(egg ? { egg_g: inBase(egg.value, egg.unit) } : {}),
      }
    : undefined;
}

/** "and 38 mm ones" carries a length; "and for 300" the number that was said before. */
export function fromBareNumber(reading: Reading, memory: Memory): Draft {
  const before = memory.last?.tool === "shells" ? (memory.last.inputs as Draft) : undefined;
  const bare = bareNumbers(reading)[0];
  // "three colours": bowls, and no macarons
  if (!bare || bare.of?.count === "bowls") return {};
  // "how much batter for the 20", of which the trays were asked before
  if (!memory.follows) return before?.macarons === bare.value ? { macarons: bare.value } : {};
  // "trays for the 40", behind the shells for 40 macarons
  if (bare.value === memory.table.macarons && before?.trays === undefined) return { macarons: bare.value };
  // "i have only 4" is no weight where hundreds of grams were
  for (const slot of ["macarons", "shells", "batter_g", "whites_g", "whites_count", "trays"] as const)
    if (slot.endsWith("_g") && bare.value >= 0 && bare.value < (before?.[slot] ?? 0) / 25) continue;
    else if (before?.[slot] !== undefined || memory.slot === slot) return { [slot]: bare.value };
  return {};
}

/** What earlier answers left: the batter weighed out, the macarons planned. */
export function fromTable(reading: Reading, memory: Memory, want: ShellsInputs["want"]): Draft {
  // what was known before is kept by the conversation; the table would only repeat its outcome
  if (memory.last?.tool === "shells") return {};
  const { mass, macarons, shells, diameter_mm } = memory.table;
  const size =
    diameter_mm !== undefined && reading.amounts.every((each) => each.dim !== "length")
      ? { diameter_mm }
      : {};
  const { part } = memory.table;
  if (
    part?.thing === "batter" &&
    says(
      reading,
      /(?:each|every|one) (?:of (?:those|these|the|my) )?\S*<count=bowls>|(?:per|in|from) (?:each|one) (?:bowl|of them)/,
    )
  )
    return { batter_g: part.grams, ...size };
  const wantsYield = want === "macarons" || want === "shells";
  if (want === "tray" || want === "one") return size;
  if (mass?.thing === "batter" && (wantsYield || (pointsBack(reading) && macarons === undefined)))
    return { batter_g: mass.grams, ...ofBatter(want), ...size };
  // "so trays?": of the shells there are, with the spares among them
  if (want === "trays" && shells !== undefined && reading.amounts.length === 0)
    return { ...(macarons === undefined ? { shells } : { macarons }), ...size };
  if (macarons !== undefined && !wantsYield) return { macarons, ...size };
  if (shells !== undefined) return { shells, ...size };
  if (mass?.thing === "batter") return { batter_g: mass.grams, ...ofBatter(want), ...size };
  return macarons !== undefined && want === "shells" ? { macarons, ...size } : {};
}

/** Of a bowl of batter it is the whites in it that are asked for. */
export const ofBatter = (want: ShellsInputs["want"]): Draft => (want === "whites" ? { of_batter: true } : {});
