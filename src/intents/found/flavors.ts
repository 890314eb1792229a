/** Puts tastes and their forms together: "pistachio" + "paste", "super strength" + "peppermint" + "oil". */
import { forms, type TasteRow, tastes } from "../../../data/words/flavors.ts";
import type { Thing } from "../../tools/contract/index.ts";
import type { Mender } from "../text/mend.ts";
import type { Item } from "./scan.ts";

type FlavorThing = Thing & { form?: string };

const rowOf = new Map<string, TasteRow>(tastes.map((row) => [row.taste, row]));
const doseOf = new Map(forms.map((row) => [row.form, row.dose]));
const isColor = (form: string | undefined) => form !== undefined && / color$|^color$/.test(form);

/** Words that never name a taste, though they may stand before "flavor". */
const notTastes = new Set(
  "used without no gets getting takes taking wants needs one ones three four five six getting save recipe formula show list triple quadruple forget note log keep call named called label how much many of the my a an some any for in what whats which this that more add use strong liquid good best nice enough too little bit less extra another other same your our their to and or with want need put no not is are it its into into per at grams gram g pure really very get gives make makes little lot lots concentrated concentrate natural artificial food drops drop bottle of have has got i we you only just left on from total amount weight plain about instead if then there theres so please pls me give add adding added goes go should would could can do does all each both first second new old right correct max maximum min minimum usual normal weak weaker stronger ive im hey hi ok okay hello now when why who where will be been was were as by up out off over under again also still even maybe written scale rescale resize split divide convert halve double triple half twice center centre middle inside outside edge rim says said gonna wanna gotta lets lemme let dont didnt wont cant going trying decided ill id thatd thatll itd itll theyd theyll well youre try doing being labelled marked called think thought barely hardly scarcely properly fully truly nearly almost slightly actually quite faintly clearly never ever always sometimes usually rename cancel stop pause restart delete clear start set change".split(
    " ",
  ),
);

/** Joins runs of taste and form into one flavor each, and finds tastes that no table knows. */
export function joinFlavors(items: readonly Item[], { knows }: Mender): Item[] {
  const out: Item[] = [];
  for (let i = 0; i < items.length; ) {
    const run = listed(items, i) ? i + 1 : flavorRun(items, i);
    if (run === i) {
      out.push(items[i] as Item);
      i += 1;
      continue;
    }
    const things = items.slice(i, run).flatMap((item) => (item.is === "thing" ? [item.thing] : []));
    const invented = things.some((thing) => thing.taste || (thing.dose && !thing.form))
      ? []
      : takeInvented(out, things, knows);
    out.push({ is: "thing", thing: joined(things, invented) });
    i = run;
  }
  return out;
}

const isFlavorPart = (thing: FlavorThing) =>
  Boolean(thing.taste || thing.form || (thing.dose && thing.taste !== undefined));

/**
 * "2 flavors raspberry pistachio": the flavors are counted, and as many tastes stand behind them. They are none of that
 * name, and each taste is one by itself.
 */
function listed(items: readonly Item[], i: number): boolean {
  const isTaste = (item: Item | undefined) =>
    item?.is === "thing" && item.thing.taste !== undefined && !item.thing.base && !item.thing.count;
  const isSign = (item: Item | undefined) => item?.is === "sign" && /^[:,-]$/.test(item.text);
  // back over the tastes, and a colon before them, to the flavors
  let head = i;
  while (isTaste(items[head])) head -= 1;
  if (head < i && isSign(items[head])) head -= 1;
  const flavors = items[head];
  const many = items[head - 1];
  if (flavors?.is !== "thing" || !/^(?:flavou?rs|tastes)$/.test(flavors.thing.text)) return false;
  if (many?.is !== "amount" || many.amount.dim !== "number" || many.amount.unit !== "") return false;
  let from = head + 1;
  if (isSign(items[from])) from += 1;
  let end = from;
  while (isTaste(items[end])) end += 1;
  return end - from === many.amount.value;
}

/** Where the run of tastes and forms from `i` ends; `i` itself when there is none. "zest of lime" is one run. */
function flavorRun(items: readonly Item[], i: number): number {
  let end = i;
  for (;;) {
    const item = items[end];
    if (item?.is === "thing" && isFlavorPart(item.thing) && !item.thing.base && !item.thing.count) {
      if (end > i && item.thing.ingredient && !item.thing.form && !item.thing.taste) break;
      end += 1;
      continue;
    }
    const then = items[end + 1];
    const last = items[end - 1];
    const ofForm =
      item?.is === "word" &&
      item.text === "of" &&
      last?.is === "thing" &&
      last.thing.form &&
      !last.thing.taste;
    if (end > i && ofForm && then?.is === "thing" && then.thing.taste && !then.thing.ingredient) end += 2;
    else break;
  }
  return end;
}

/** Takes up to three unknown words back from before a bare form: "yuzu kosho flavor". */
function takeInvented(
  out: Item[],
  things: FlavorThing[],
  knows: (word: string) => boolean,
): { text: string; from: number }[] {
  if (things.every((thing) => isColor(thing.form))) return [];
  const taken: { text: string; from: number }[] = [];
  while (taken.length < 3) {
    const last = out.at(-1);
    if (last?.is !== "word" || notTastes.has(last.text) || last.text.length < 3) break;
    // behind an unknown word everyday words still belong to it ("smoked paprika"); alone they count too
    if (taken.length > 0 && knows(last.text) && notTastes.has(last.text)) break;
    taken.unshift({ text: last.text, from: last.at[0] });
    out.pop();
  }
  return taken;
}

function joined(things: FlavorThing[], invented: { text: string; from: number }[]): Thing {
  const first = things[0] as FlavorThing;
  const last = things.at(-1) as FlavorThing;
  const from = invented[0]?.from ?? first.at[0];
  const words = [...invented.map((each) => each.text), ...things.map((thing) => thing.text)].join(" ");
  const tasteParts = [
    ...invented.map((each) => each.text),
    ...things
      .filter((thing) => thing.taste && !(thing.form && things.length > 1 && !thing.taste))
      .map((thing) => thing.taste as string),
  ];
  const ready = things.length === 1 ? first : undefined;
  const taste = tasteParts.length ? [...new Set(tasteParts)].join(" ") : undefined;
  const dose = ready?.dose ?? doseFor(things);
  const { form: _form, ...facets } = ready ?? first;
  return {
    ...facets,
    id: taste ?? ready?.id ?? dose ?? first.id,
    ...(ready?.ingredient && !invented.length
      ? { ingredient: ready.ingredient }
      : things.length > 1
        ? { ingredient: things.find((thing) => thing.ingredient && thing.dose)?.ingredient }
        : {}),
    ...(taste ? { taste } : {}),
    ...(dose ? { dose } : {}),
    text: words,
    at: [from, last.at[1]],
  };
}

/** The dose row that a run of tastes and forms names; the more particular form wins over "flavor". */
function doseFor(things: FlavorThing[]): string | undefined {
  const said = new Set(things.flatMap((thing) => (thing.form ? [thing.form] : [])));
  const row = things.map((thing) => rowOf.get(thing.taste ?? thing.id)).find(Boolean);
  const taste = things.find((thing) => thing.taste)?.taste ?? "";
  const wet = ["purée", "jam"].find((form) => said.has(form));
  if (things.some((thing) => isColor(thing.form)))
    return doseOf.get([...said].find(isColor) ?? "") ?? "color";
  if (said.has("oil")) return "oil";
  if (said.has("freeze-dried powder")) return "fruit powder";
  if (wet) return doseOf.get(wet);
  if (said.has("zest")) return "zest";
  if (said.has("extract")) return "extract";
  if (said.has("bean paste")) return "vanilla paste";
  if (said.has("nut paste") || said.has("fruit paste"))
    return taste === "vanilla" ? "vanilla paste" : row?.fruit ? "fruit paste" : "nut paste";
  if (said.has("powder") || said.has("tea powder") || said.has("coffee powder"))
    return powderFor(taste, row, things);
  if (said.has("liqueur")) return "spirit";
  if (said.has("flavor")) return "flavor";
  return things.find((thing) => thing.dose)?.dose;
}

function powderFor(taste: string, row: TasteRow | undefined, things: FlavorThing[]): string {
  const known = things.find((thing) => thing.dose && !thing.form)?.dose;
  if (known) return known;
  if (row?.usual === "tea powder" || /tea|earl grey|matcha|hojicha/.test(taste)) return "tea powder";
  if (/coffee|espresso|mocha/.test(taste)) return "coffee powder";
  if (/cocoa|cacao/.test(taste)) return "cocoa powder";
  return row?.fruit ? "fruit powder" : taste ? "other powder" : "powder";
}
