/** What a sizing question leans on: a bare number in the place of one that was said, the batter or the order on the table. */
import { bareNumbers, pointsBack, says } from "../lib/find.ts";
import type { ShellsInputs } from "./shells.ts";
import { type Draft, ofBatter, type ShellsTurn, sized } from "./turn.ts";

/** A weight that many times lighter than the one said isn't put in its place: "i have only 4" are whites or trays. */
const farLighter = 25;

/** "and 38 mm ones" carries a length; "and for 300" the number that was said before. */
export function fromBareNumber({ reading, memory, before }: ShellsTurn): Draft {
  const bare = bareNumbers(reading)[0];
  // "three colours": bowls, and no macarons
  if (!bare || bare.of?.count === "bowls") return {};
  // "how much batter for the 20", of which the trays were asked before
  if (!memory.follows) return before?.macarons === bare.value ? { macarons: bare.value } : {};
  // "trays for the 40", behind the shells for 40 macarons
  if (bare.value === memory.table.macarons && before?.trays === undefined) return { macarons: bare.value };
  for (const slot of ["macarons", "shells", "batter_g", "whites_g", "whites_count", "trays"] as const) {
    const was = before?.[slot];
    const isTooLight = slot.endsWith("_g") && bare.value >= 0 && bare.value < (was ?? 0) / farLighter;
    if (!isTooLight && (was !== undefined || memory.slot === slot)) return { [slot]: bare.value };
  }
  return {};
}

/** What earlier answers left: the batter weighed out, the macarons planned. */
export function fromTable({ reading, memory, before }: ShellsTurn, want: ShellsInputs["want"]): Draft {
  // what was known before is kept by the conversation; the table would only repeat its outcome
  if (before) return {};
  const { mass, macarons, shells, part, diameter_mm } = memory.table;
  const size = sized(reading.amounts.some((each) => each.dim === "length") ? undefined : diameter_mm);
  if (part?.thing === "batter" && says(reading, ofEachBowl)) return { batter_g: part.grams, ...size };
  if (want === "tray" || want === "one") return size;
  const batter = mass?.thing === "batter" ? { batter_g: mass.grams, ...ofBatter(want), ...size } : undefined;
  const wantsYield = want === "macarons" || want === "shells";
  if (batter && (wantsYield || (pointsBack(reading) && macarons === undefined))) return batter;
  // "so trays?": of the shells there are, with the spares among them
  if (macarons !== undefined && !wantsYield) return { macarons, ...size };
  if (shells !== undefined) return { shells, ...size };
  return batter ?? (macarons !== undefined && want === "shells" ? { macarons, ...size } : {});
}

const ofEachBowl =
  /(?:each|every|one) (?:of (?:those|these|the|my) )?\S*<count=bowls>|(?:per|in|from) (?:each|one) (?:bowl|of them)/;
