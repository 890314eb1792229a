/** Reads an order about a recipe: its name, its lines, and what couldn't be read of them. */
import type { Memory, Reading, RecipeRead } from "../contract/index.ts";
import { pointsBack, says } from "../lib/find.ts";
import { merged, nameOf, readLines } from "../lib/lines.ts";
import type { Draft } from "./draft.ts";
import { readHouse } from "./house-said.ts";
import {
  cleaned,
  fileIn,
  nameAfter,
  nameBeforeLines,
  nameBehind,
  nameIn,
  nameOfFile,
  newName,
} from "./names.ts";
import { asksForSize, putsLineRight } from "./size-said.ts";

export function readFormula(reading: Reading, memory: Memory): Draft {
  const saved = longest(
    memory.names.formulas.filter((name) =>
      new RegExp(`(?:^|\\W)${escaped(name.toLowerCase())}(?:\\W|$)`).test(reading.text),
    ),
  );
  const before = memory.last?.tool === "formula" ? (memory.last.inputs as Draft) : undefined;
  // "which line of it, and to how many grams?": its lines, and never a recipe of one line in its place
  if (memory.slot === "lines" && before?.name && before.does === "change")
    return { does: "change", name: before.name, ...changed(reading) };
  if (memory.slot === "lines" && before?.name)
    return { does: "save", name: before.name, ...linesFrom(reading, 0, memory) };
  const file = fileIn(reading.said);
  if (file) return { does: "save", file, ...nameOfFile(reading.said) };
  const ofScaled =
    memory.last?.tool === "scale" ? (memory.last.inputs.formula as string | undefined) : undefined;
  const housed = readHouse(reading, saved, before?.name ?? ofScaled);
  if (housed) return housed;
  if (
    memory.slot === "name" &&
    before?.lines &&
    !listsAll.test(reading.mask) &&
    !ordersOther.test(reading.mask)
  )
    return { ...before, name: cleaned(reading.text) };
  if (
    says(reading, forgets) &&
    !slippedHerMind.test(reading.mask) &&
    !says(reading, /(?:remove|drop|take) .*<ingredient.* (?:from|out)/)
  ) {
    const name =
      saved ??
      nameAfter(
        reading.text,
        /(?:forget|delete|remove|drop|lose|throw (?:out|away)|erase|scrap|bin|ditch|trash|get rid of)(?: about)?(?: the| my)?(?: recipe| formula)?(?: for| called)?/,
      );
    // "forget that one", behind the list
    const ofScale =
      memory.last?.tool === "scale" ? (memory.last.inputs.formula as string | undefined) : undefined;
    const known = ofScale ?? before?.name;
    if (!saved && known && /\b(?:that|this|the) (?:recipe|formula|one)\b/.test(reading.text))
      return { does: "forget", name: known };
    const [only, ...others] = memory.names.formulas;
    if (/^(?:(?:that|this|the|it) ?(?:one)?)$/.test(name ?? "") && only && others.length === 0)
      return { does: "forget", name: only };
    return {
      does: "forget",
      ...(name ? { name } : before?.name && pointsBack(reading) ? { name: before.name } : {}),
    };
  }
  if (says(reading, /(?:^| )(?:recipes|formulas|formulae)(?: |$)/) && !saved) return { does: "list" };
  if (says(reading, renames) && saved)
    return { does: "rename", name: saved, ...newName(reading.text, saved) };
  // "show me the recipe as saved", behind a scaling of it
  const scaled =
    memory.last?.tool === "scale" ? (memory.last.inputs.formula as string | undefined) : undefined;
  const pointed = says(reading, /(?:the|that|this) (?:recipe|formula)(?: |$)/)
    ? (scaled ?? before?.name)
    : undefined;
  const name = saved ?? pointed ?? (memory.follows && pointsBack(reading) ? before?.name : undefined);
  const weighs = reading.amounts.some(
    (each) => each.dim === "weight" || each.dim === "volume" || each.dim === "number",
  );
  const headed = /^(?:(?:my|new|a|the|save|add|please|pls|ok) )*(?:recipe|formula) \S[^:]*:/.test(
    reading.text,
  );
  // "make the butter 200", "but only 200 g butter, amounts", of the one just spoken of
  const ofBefore = memory.follows && (putsLineRight(reading) || asksForSize(reading));
  const righted = saved ?? (ofBefore ? before?.name : undefined);
  // "mint smbc now has 200 g butter, save that": the one line, and no recipe of one line
  const keepsIt =
    reading.amounts.length === 1 && /(?:^| )(?:save|keep|remember) (?:that|it|this)$/.test(reading.mask);
  if (
    righted &&
    weighs &&
    !headed &&
    (keepsIt ||
      says(reading, /(?:^| )from now on(?: |$)/) ||
      !says(reading, /(?:^| )(?:save|remember|store|keep)(?: |$)/))
  )
    return {
      does: asksForSize(reading) ? "change or scale" : "change",
      name: righted,
      ...changed(reading),
    };
  if (name && says(reading, /(?:remove|drop|take|leave) .*<ingredient.* (?:from|out)|without \S*<ingredient/))
    return { does: "drop line", name, ...lineOf(reading) };
  if (weighs || headed || says(reading, /(?:^| )(?:save|remember|store|keep|call)(?: |$)/))
    return readSave(reading, memory, saved);
  return {
    does: "show",
    ...(name
      ? { name }
      : {
          name: nameAfter(
            reading.text,
            /(?:show|read|tell|give|whats|what is|what's)(?: me)?(?: in| the| my)*(?: recipe| formula)?(?: for| called)?/,
          ),
        }),
  };
}

/** "rename it to ...", "tangy cream should be called cheesecake cream from now on". */
const renames =
  /(?:^| )rename(?: |$)|<formula\S* (?:(?:recipe|formula) )?(?:should|shall|must|will|is to|to|has to) (?:now )?(?:be|get) (?:now )?(?:called|named|renamed)(?: |$)|<formula\S* is (?:now )?(?:called|named) \S+.* (?:now|from now on)$/;

/** "list my recipes", where its name was asked for: no name. */
const listsAll =
  /^(?:(?:please|ok|and) )*(?:list|show|which|what) (?:me )?(?:\S+ ){0,2}(?:recipes|formulas)(?: |$)/;

/** "now show me cloud shells", where a name was asked for: another order, and no name. */
const ordersOther =
  /^(?:(?:now|ok|and|so|no|please|pls|actually|then) )*(?:(?:show|list|open|read|tell|give|scale|make|double|halve|triple|forget|delete|undo|let|can|could|what|whats|how|where|which|why|when|is|are|do|does|start|set|stop|note|log) |(?:undo|help|cancel)$)/;

const forgets =
  /(?:^| )(?:chuck|toss|clear|fling|sling|kick) .*<formula|<formula\S* (?:(?:recipe|formula) )?(?:can|may|should|must|has to|is to) (?:go|be (?:deleted|removed|forgotten|binned|thrown|dropped))(?: |$)|(?:^| )(?:take|put|cross|strike) .*<formula\S* (?:(?:recipe|formula) )?(?:away|out|off|in the (?:bin|trash|rubbish|garbage)|of (?:my|the) (?:list|recipes|collection|book))(?: |$)|(?:^| )(?:forget|delete|remove|drop|lose|throw|erase|scrap|bin|ditch|trash|rid of)(?: |$)|(?:^| )(?:dont|do not) (?:need|want) .*<formula.* (?:any ?more|any longer|now)$|(?:^| )no longer (?:need|want) .*<formula/;

/** "i forget what's in cloud shells", "i always forget the names": nothing is to be thrown away. */
const slippedHerMind =
  /(?:^| )(?:i|ive|we|she|he|you|they)(?: (?:have|always|never|just|keep|do|only|often|usually|clean|quite|completely|totally|tend to|will|may|might|can))* (?:forget|forgets|forgot|forgotten|lose|lost|drop|dropped)(?: |$)/;

const longest = (names: readonly string[]) => [...names].sort((a, b) => b.length - a.length)[0];
const escaped = (text: string) => text.replace(/[.*+?^${}()|[\]\\]/g, "\\$&");

/** The name and the lines: "save recipe NAME: ...", "save my recipe, call it NAME: ...", "save that as NAME". */
function readSave(reading: Reading, memory: Memory, saved: string | undefined): Draft {
  const head = headOf(reading);
  const named = nameBehind(reading.text) ?? saved ?? nameIn(head.text);
  const later = named === undefined && head.isMarked ? nameLater(reading, head.end) : undefined;
  const name = named ?? later?.name;
  const read = linesFrom(reading, head.end + (later?.length ?? 0), memory);
  if (name && !read.lines && /:\s*$/.test(reading.text)) return { does: "save", name, collecting: true };
  if (read.lines) return { does: "save", ...(name ? { name } : {}), ...read };
  // what a planned day left is shells and fillings together, no recipe
  const table = memory.last?.tool === "day" ? undefined : memory.table.recipe;
  return {
    does: "save",
    ...(name ? { name } : {}),
    ...(table?.length ? { lines: table.map((each) => ({ name: each.name, grams: each.grams })) } : {}),
  };
}

const nameLater = (reading: Reading, from: number) =>
  nameBeforeLines(reading.text.slice(from), (name) =>
    reading.things.some((each) => (each.ingredient || each.chocolate) && each.text === name),
  );

/** What stands before the lines: up to a colon, else up to the first weight. */
function headOf(reading: Reading): { text: string; end: number; isMarked?: boolean } {
  const first = reading.amounts[0]?.at[0] ?? reading.text.length;
  const colon = reading.text.indexOf(":");
  const named = reading.things.find(
    (each) =>
      (each.ingredient || each.chocolate) &&
      each.at[0] < first &&
      (/(?:^|[,:]\s*)$/.test(reading.text.slice(0, each.at[0])) ||
        // "again but with butter 240 g": the first line begins with its thing
        (/^ (?:at |to )?$/.test(reading.text.slice(each.at[1], first)) &&
          bringsLines.test(reading.text.slice(0, each.at[0])))),
  );
  if (colon >= 0) return { text: reading.text.slice(0, colon), end: colon + 1, isMarked: true };
  // "exam week shells - whites 100 g", "call it pebble. whites 100 g": the name ends there
  const dash = reading.text.slice(0, first).search(/\s[-–—]\s|\.\s+(?=[a-z]{3})/);
  if (dash > 0) return { text: reading.text.slice(0, dash), end: dash + 2, isMarked: true };
  const end = Math.min(first, named?.at[0] ?? first);
  return { text: reading.text.slice(0, end).replace(leadsOver, ""), end };
}

/** "moonlight, its 96 g whites", "toffee middle, it has 160 g sugar": what leads over from the name to the lines. */
const leadsOver =
  /[\s,]+(?:(?:and )?(?:(?:it|they|that|this|which|there)(?:'?s|'?re)? ?(?:is|are|has|have|takes?|needs?|uses?|goes|wants?|contains?|holds?|gets?|in it)?|being|having|made (?:of|from|with|up of)|consisting of|containing|composed of)(?: in it)?)\s*$/;
const bringsLines =
  /\b(?:with|but|of|from|has|have|is|are|takes?|uses?|needs?|goes|now|then|again|time|and) (?:the |now |this time |only )?$/;

/** "save that", "please remember it": no line of a recipe. */
const talk =
  /^(?:(?:please|pls|save|remember|keep|store|note|it|that|this|them|thanks|thank you|cheers|for me|ok|okay|as|my|the|recipe|shells|house)\b\s*)+$/;

function linesFrom(reading: Reading, from: number, memory: Memory): Draft {
  const read = memory.recipe?.(reading.text.slice(from, endOf(reading))) ?? plainly(reading, from);
  const unread = read.unread.filter((each) => !talk.test(each.toLowerCase().replace(/[.!?]+$/, "")));
  if (read.lines.length === 0) return {};
  return {
    lines: read.lines,
    ...(unread.length ? { unread } : {}),
    ...(read.unweighed.length ? { unweighed: read.unweighed } : {}),
    ...(read.doubts.length ? { doubts: read.doubts } : {}),
    ...(read.taken.length ? { taken: read.taken } : {}),
  };
}

/** Where nothing reads text, the sentence's own finds have to do. */
function plainly(reading: Reading, from: number): RecipeRead {
  const { lines, unread, taken } = readLines(reading, from);
  return {
    lines: merged(lines.map(({ name, grams }) => ({ name, grams }))),
    unread,
    unweighed: [],
    taken,
    doubts: [],
  };
}

/** The recipe ends where the next sentence begins, behind its last amount. */
function endOf(reading: Reading): number {
  const last = Math.max(0, ...reading.amounts.map((each) => each.at[1]));
  const end = reading.text.slice(last).search(/[?!]|\.\s+(?=[a-z])(?!.*\d)/);
  return end < 0 ? reading.text.length : last + end;
}

function changed(reading: Reading): Draft {
  const lines = readLines(reading).lines.filter((each) => each.thing && !each.thing.formula);
  if (lines.length > 0) return { lines: lines.map(({ name, grams }) => ({ name, grams })) };
  // "change the almond flour in snowy shells to 128 g": the weight stands apart from its name
  const owner = reading.things.find(
    (each) => !each.formula && (each.ingredient || each.chocolate || each.dose),
  );
  const weight = reading.amounts.find(
    (each) => each.dim === "weight" || (each.dim === "number" && each.unit === ""),
  );
  const grams =
    weight?.dim === "weight"
      ? readLines({ ...reading, amounts: [{ ...weight, of: owner }] }).lines[0]?.grams
      : weight?.value;
  return owner && grams !== undefined ? { lines: [{ name: nameOf(owner), grams }] } : {};
}

const lineOf = (reading: Reading): Draft => {
  const owner = reading.things.find((each) => each.ingredient || each.chocolate || each.dose);
  return owner ? { line: nameOf(owner) } : {};
};
