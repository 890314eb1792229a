/** Reads an order or a question about the shelf. */
import type { Memory, Reading } from "../contract/index.ts";
import { says } from "../lib/find.ts";
import { readBottle } from "./bottle-said.ts";
import { boughtList } from "./bought-list.ts";
import { bought, type Does, entriesOf, prices } from "./entries.ts";
import type { ShelfInputs } from "./shelf.ts";
import { readPack, readWhole } from "./whole.ts";

type Draft = Partial<ShelfInputs>;

export function readShelf(reading: Reading, memory: Memory): Draft {
  const whole = readWhole(reading, memory);
  if (whole) return whole;
  const pack = readPack(reading);
  if (pack) return pack;
  const bottle = readBottle(reading);
  if (bottle) return bottle;
  const before = memory.last?.tool === "shelf" ? (memory.last.inputs as Draft) : undefined;
  const told = ofBottle(reading, memory, before);
  if (told) return told;
  if (
    before?.does === "use" &&
    memory.follows &&
    says(reading, /zero|nothing|empty|all of it|use it up|go ahead|^(?:yes|yep|yeah|ok|okay|do it)/)
  )
    return { ...before, to_zero: true };
  const list = boughtList(reading);
  if (list) return { does: "add", entries: list };
  const came = bought(reading);
  if (came) return { does: "add", entries: [came] };
  const does = doesWhat(reading, before, memory);
  const priced = does === "price" ? prices(reading) : [];
  const found = priced.length > 0 ? priced : entriesOf(reading, before, memory, does);
  const entries = putRight(reading, memory, { does, entries: found });
  const taste = reading.things.find((each) => each.taste && !each.ingredient)?.taste;
  if (does === "forget" && taste && says(reading, /bottle/)) return { does, taste };
  if (does === "list" && taste && says(reading, /bottle|label/)) return { does: "ask", taste };
  if (does === "list") return { does };
  return {
    ...(does ? { does } : {}),
    ...(entries.length > 0 ? { entries } : taste && (does === "forget" || does === "ask") ? { taste } : {}),
    ...(does === "use" && says(reading, /to zero|go to nothing|even so/) ? { to_zero: true } : {}),
  };
}

const corrects =
  /^(?:(?:oh|ah|wait|hang on|hold on|er|hmm?|,) )*(?:no|nope|sorry|actually|wait|hang on|i meant?|oops)(?: |$)/;

/** "no hang on, i used 150", "no, 800": in place of what was taken or put there just before. */
function putRight(reading: Reading, { follows, last }: Memory, { does, entries = [] }: Draft) {
  const before = follows && last?.tool === "shelf" ? (last.inputs as Draft) : undefined;
  const [now, ...others] = entries;
  const [was] = before?.entries ?? [];
  const isSame =
    others.length === 0 &&
    before?.entries?.length === 1 &&
    (does === "use" || does === "add") &&
    before.does === does &&
    now?.name === was?.name;
  return isSame && now?.grams !== undefined && was?.grams !== undefined && says(reading, corrects)
    ? [{ ...now, instead_g: was.grams }]
    : entries;
}

/** "raspberry", where the flavor was asked for; "no 2 %", of the bottle that was saved. */
function ofBottle(reading: Reading, { slot }: Memory, before: Draft | undefined): Draft | undefined {
  if (before?.does !== "bottle") return undefined;
  const thing = reading.things.find((each) => each.taste);
  if (slot === "taste" && thing?.taste && reading.amounts.length === 0)
    return { ...before, taste: thing.taste };
  const [share, ...others] = reading.amounts;
  const corrects = /^(?:(?:oh|no|nope|sorry|actually|wait|i meant|its|it is) )+/.test(reading.mask);
  if (!corrects || share?.dim !== "percent" || others.length > 0) return undefined;
  const { does, taste, form } = before;
  return {
    does,
    ...(taste ? { taste } : {}),
    ...(form ? { form } : {}),
    low_percent: share.value,
    high_percent: share.high ?? share.value,
  };
}

function doesWhat(reading: Reading, before: Draft | undefined, memory: Memory): Does | undefined {
  if (says(reading, /^(?:please |pls |ok |and )*(?:forget|remove|delete|drop|take .* off)/)) return "forget";
  const asks = says(
    reading,
    /how (?:much|many)|do i have|have i (?:still )?got (?:any|some)|is there (?:any|still)|any .* left|(?:in stock|on the shelf|left|in the (?:house|cupboard|pantry)) \?$|whats left|what is left|^(?:and )?(?:the |my )?\S*<(?:ingredient|chocolate|taste)\S* (?:\S*<\S* )?left(?: \?)?$/,
  );
  const hasPrice =
    reading.amounts.some((each) => each.dim === "money") ||
    says(reading, /(?:costs?|cost me|paid|price) \S*<number|<number> (?:per|a|the) \S*<unit=(?:kg|g|lb|oz)/);
  if (hasPrice && !asks) return "price";
  if (
    says(
      reading,
      /\b(?:used|use|using|took|gone through|got through|spilt|spilled|threw|binned|finished|used up|ran out|run out|out of|all gone|is gone)\b/,
    ) &&
    !asks
  )
    return "use";
  if (asks)
    return reading.things.some((each) => each.ingredient || each.taste) || memory.follows || before?.entries
      ? "ask"
      : "list";
  if (
    says(reading, /(?:what|whats|show|list|tell|which) /) &&
    !reading.amounts.some((each) => each.dim === "weight")
  )
    return "list";
  const left = says(
    reading,
    /(?:only|just) .*left|(?:there is|theres|ive got|i have|i got) .* left|(?:^| )left(?: |$)|set .* to|actually|correct|should be|now have|change/,
  );
  if (left && !says(reading, /(?:^| )(?:put|add|bought)(?: |$)/)) return "set";
  // "pantry: 50 g sugar" tells what is there; "put", "bought", "more" add to it
  const adds = says(
    reading,
    /(?:^| )(?:put|add|adding|bought|buy|stick|chuck|pop|bung|more|another|extra|too|also|plus|picked|just got|new|save|keep|store)(?: |$)/,
  );
  // "and another 160", behind what was used
  const goesOn = /^(?:(?:and|then|plus|ok) )*(?:another|more|a further) \S*<(?:weight|number)>/;
  if (before?.does === "use" && (says(reading, goesOn) || (!adds && says(reading, corrects)))) return "use";
  if (!adds && says(reading, /(?:^| )(?:pantry|larder|cupboard|stock|shelf)(?: |$)/)) return "set";
  // "and for 120", behind a question of what there is: nothing came
  if (before?.does === "ask" && says(reading, /^(?:(?:and|or|what about|how about|ok) )*for \S*<number/))
    return undefined;
  if (reading.amounts.some((each) => each.dim === "weight" || each.dim === "volume" || each.dim === "number"))
    return "add";
  return before?.does;
}
