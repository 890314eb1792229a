/** "how much gel for each", behind a bowl that was split unevenly: a dose for each part, by its color. */
import { vessel, vessels } from "../../../data/words/vessels.ts";
import type { Memory, Reading } from "../contract/index.ts";
import type { Draft } from "./draft.ts";

const ofEach = new RegExp(
  `\\b(?:each|every one|each one|every(?= ${vessel}))(?: (?:one|colou?r|${vessel}|of (?:them|those|these)))?(?: (?:would|will|should|might))?(?: then)?(?: (?:needs?|wants?|gets?|takes?|requires?))? ?[?.!]?$`,
);
const ofAll = new RegExp(
  `\\b(?:for|in) (?:all|the lot|everything)(?: (?:of (?:them|it)|three|four|the ${vessels}))?(?: together)? ?[?.!]?$`,
);

/** What lies there in parts, or the batter of an order by the shares that were said of it: "half pistachio, half mint". */
export function partsOf({ table, last }: Memory): { name: string; grams: number; of?: string }[] {
  const { mass, parts, shares } = table;
  const isOrder = last?.tool === "shells" || parts === undefined;
  if (!isOrder || !shares || mass?.thing !== "batter") return parts ?? [];
  return shares.map(({ name, share }) => ({ name, grams: mass.grams * share }));
}

/** Mixes that have doses of their own. */
const mixes: ReadonlySet<string> = new Set(["buttercream", "ganache"]);

/** The drafts as they are, where the parts are equal or none was split. */
export function forParts(drafts: Draft[], reading: Reading, memory: Memory): Draft[] {
  const [draft, ...others] = drafts;
  const parts = partsOf(memory);
  const [first] = parts;
  const isUneven = first && parts.some((each) => Math.abs(each.grams - first.grams) > 1e-6);
  // "99 g raspberry buttercream, 99 g pistachio ganache": as much of each, and not the same dose
  const isMixed = first?.of !== undefined && parts.some(({ of }) => of !== undefined && of !== first.of);
  if (!draft || others.length > 0 || !(isUneven || isMixed) || reading.amounts.length > 0) return drafts;
  if (ofAll.test(reading.text))
    return [{ ...draft, base_g: parts.reduce((sum, each) => sum + each.grams, 0) }];
  if (!ofEach.test(reading.text)) return drafts;
  const color = / color$/.test(draft.dose ?? "") ? (draft.name ?? draft.dose) : undefined;
  return parts.map(({ grams, name, of }) => ({
    ...draft,
    base_g: grams,
    ...(isMixed && of && mixes.has(of) ? { base: of } : {}),
    ...(color ? { hue: name, name: `${name} ${color}` } : {}),
  }));
}
