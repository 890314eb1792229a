/** Reads an order about a recipe: its name, its lines, and what couldn't be read of them. */
import type { Memory, Reading, RecipeRead } from "../contract/index.ts";
import { pointsBack, says } from "../lib/find.ts";
import { merged, nameOf, readLines } from "../lib/lines.ts";
import type { FormulaInputs } from "./formula.ts";

type Draft = Partial<FormulaInputs>;

export function readFormula(reading: Reading, memory: Memory): Draft {
  const saved = longest(
    memory.names.formulas.filter((name) =>
      new RegExp(`(?:^|\\W)${escaped(name.toLowerCase())}(?:\\W|$)`).test(reading.text),
    ),
  );
  const before = memory.last?.tool === "formula" ? (memory.last.inputs as Draft) : undefined;
  if (memory.slot === "lines" && before?.name)
    return { does: "save", name: before.name, ...linesFrom(reading, 0, memory) };
  const file = fileIn(reading.said);
  if (file) return { does: "save", file, ...nameOfFile(reading.said) };
  const housed = readHouse(reading, saved);
  if (housed) return housed;
  if (memory.slot === "name" && before?.lines) return { ...before, name: cleaned(reading.text) };
  if (
    says(reading, /(?:^| )(?:forget|delete|remove|drop|lose|throw)(?: |$)/) &&
    !says(reading, /(?:remove|drop|take) .*<ingredient.* (?:from|out)/)
  ) {
    const name =
      saved ??
      nameAfter(
        reading.text,
        /(?:forget|delete|remove|drop|lose|throw out)(?: about)?(?: the| my)?(?: recipe| formula)?(?: for| called)?/,
      );
    return {
      does: "forget",
      ...(name ? { name } : before?.name && pointsBack(reading) ? { name: before.name } : {}),
    };
  }
  if (says(reading, /(?:^| )(?:recipes|formulas|formulae)(?: |$)/) && !saved) return { does: "list" };
  if (says(reading, /(?:^| )rename(?: |$)/) && saved)
    return { does: "rename", name: saved, ...newName(reading.text, saved) };
  const name = saved ?? (memory.follows && pointsBack(reading) ? before?.name : undefined);
  const weighs = reading.amounts.some(
    (each) => each.dim === "weight" || each.dim === "volume" || each.dim === "number",
  );
  const headed = /^(?:(?:my|new|a|the|save|add|please|pls|ok) )*(?:recipe|formula) \S[^:]*:/.test(
    reading.text,
  );
  if (saved && weighs && !headed && !says(reading, /(?:^| )(?:save|remember|store|keep)(?: |$)/))
    return { does: "change", name: saved, ...changed(reading) };
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

const longest = (names: readonly string[]) => [...names].sort((a, b) => b.length - a.length)[0];
const escaped = (text: string) => text.replace(/[.*+?^${}()|[\]\\]/g, "\\$&");

/** The name and the lines: "save recipe NAME: ...", "save my recipe, call it NAME: ...", "save that as NAME". */
function readSave(reading: Reading, memory: Memory, saved: string | undefined): Draft {
  const head = headOf(reading);
  const name = saved ?? nameIn(head.text);
  const read = linesFrom(reading, head.end, memory);
  if (name && !read.lines && /:\s*$/.test(reading.text)) return { does: "save", name, collecting: true };
  if (read.lines) return { does: "save", ...(name ? { name } : {}), ...read };
  const table = memory.table.recipe;
  return {
    does: "save",
    ...(name ? { name } : {}),
    ...(table?.length ? { lines: table.map((each) => ({ name: each.name, grams: each.grams })) } : {}),
  };
}

/** What stands before the lines: up to a colon, else up to the first weight. */
function headOf(reading: Reading): { text: string; end: number } {
  const first = reading.amounts[0]?.at[0] ?? reading.text.length;
  const colon = reading.text.indexOf(":");
  const named = reading.things.find(
    (each) =>
      (each.ingredient || each.chocolate) &&
      each.at[0] < first &&
      /(?:^|[,:]\s*)$/.test(reading.text.slice(0, each.at[0])),
  );
  if (colon >= 0) return { text: reading.text.slice(0, colon), end: colon + 1 };
  const end = Math.min(first, named?.at[0] ?? first);
  return { text: reading.text.slice(0, end), end };
}

const patterns = [
  /(?:call(?:ed)? (?:it|this|that)?|name(?:d)? (?:it|this|that)?|(?:save|store|keep) (?:it|that|this|that recipe|this recipe) as|\bas) ?(.+)$/,
  /(?:my|our|the|her|his) (.+?) (?:recipe|formula)s?\b(?: is| are| takes| has| goes)?$/,
  /(?:recipe|formula)(?: for| of| called| named| is)? (.+)$/,
  /(?:my|our) (.+?) (?:are|is|take|takes|use|uses|have|has)$/,
];

function nameIn(head: string): string | undefined {
  for (const pattern of patterns) {
    const name = cleaned(pattern.exec(head.trim())?.[1] ?? "");
    if (name) return name;
  }
  return undefined;
}

/** Quotes, a "recipe" behind it and joining words taken off. */
function cleaned(text: string): string | undefined {
  const name = text
    .replace(/["'?!.,:]+|\s-+(?=\s|$)/g, " ")
    .replace(/^\s*(?:(?:the|my|a|new|recipe|formula|please|pls|for|called|named|it)\s+)+/g, "")
    .replace(/\s+(?:recipe|formula|please|pls|with|is|are|has|have|go(?:es)?)\s*$/g, "")
    .replace(/\s+/g, " ")
    .trim();
  return name.length > 0 && name.length <= 60 && !/^(?:recipe|formula|that|this|it|so|me)$/.test(name)
    ? name
    : undefined;
}

const nameAfter = (text: string, lead: RegExp) =>
  cleaned(new RegExp(`${lead.source}\\s+(.+)$`).exec(text)?.[1] ?? "");

function newName(text: string, saved: string): Draft {
  const behind = text.slice(text.indexOf(saved.toLowerCase()) + saved.length);
  const name = cleaned(behind.replace(/^\s*(?:to|as|into)\s+/, ""));
  return name ? { new_name: name } : {};
}

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

/** "read recipe from shells.txt", "load my recipe out of \"shells one.txt\"": the path as it was typed. */
function fileIn(said: string): string | undefined {
  const found =
    /\b(?:read|load|import|open|get|take|fetch|save|add)\b.*?\b(?:from|in|out of|file)\s+(?:the |my )?(?:file |text file )?(?:"([^"]+)"|'([^']+)'|((?:~|\.{0,2})\/\S+|\S+\.[a-z]{2,4}\b))/i.exec(
      said,
    );
  return (found?.[1] ?? found?.[2] ?? found?.[3])?.replace(/[?!,;]+$/, "");
}

const nameOfFile = (said: string): Draft => {
  const name = cleaned(
    (/(?:\.[a-z]{2,4}|["'])\s+(?:as|and call it|called|named)\s+(.+)$/i.exec(said)?.[1] ?? "").toLowerCase(),
  );
  return name ? { name } : {};
};

/** "use snowy shells as my house recipe", "back to the book's recipe", "what is my house recipe". */
function readHouse(reading: Reading, saved: string | undefined): Draft | undefined {
  if (!says(reading, /(?:^| )(?:house|usual|standard|default|book\S*)(?: |$|<)/)) return undefined;
  if (
    says(
      reading,
      /(?:back to|use|go by|follow) the books?(?: |$|<)|(?:forget|reset|drop|clear) (?:my|the|our) house/,
    )
  )
    return { does: "book house" };
  if (
    saved &&
    says(
      reading,
      /(?:as|is|for|be|to|:) (?:my |the |our )?(?:house|usual|standard|own|default)|(?:my|the|our) (?:house|usual|standard|default) (?:recipe|formula) (?:is|will be|should be|be|to|:)/,
    )
  )
    return { does: "house", name: saved };
  return says(reading, /(?:what|which|whats|show) .*house/) ? { does: "house" } : undefined;
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
