/**
 * "batter again pls", "what was the price again", "36 now, ring and center again": a figure of an earlier answer, with
 * anything asked since. As it was, or with the one amount that has changed.
 */
import { opening } from "../../../data/words/openers.ts";
import type { Amount, Reading } from "../../tools/contract/index.ts";
import { sameIngredient } from "../../tools/lib/lines.ts";
import type { Earlier } from "./earlier-one.ts";
import { spaced } from "./spaced.ts";
import type { State, Topic } from "./state.ts";

const once = "(?:again|once more|one more time|once again)";
const polite = "(?: (?:please|pls|plz|now|then|though|for me|,))*";
const wish =
  "(?:(?:(?:what|whats|what's|which|how much) (?:(?:was|were|is|are) )?|(?:can|could) (?:i|you) (?:have|get|see|give me|tell me|show me) |(?:give|tell|show) me |so |and |need |i need )?)";
const asked = new RegExp(
  `^${opening}${wish}(?:the |my |that |those |all the )?([a-z]+(?: [a-z]+){0,4}?) ${once}(?: (?:for|with|at|from|of|but for|but with|but at) (?:the |just |only )?([^,?]+?))?${polite}[ ?.!]*$`,
);

/** What an answer of each calculator is called by. */
const named: readonly (readonly [RegExp, readonly string[]])[] = [
  [/^(?:shell )?batter$|^(?:number of )?(?:trays|shells)$|^batter and (?:the )?trays$/, ["shells", "scale"]],
  [
    /^fillings?$|^rings?(?: and (?:the )?cent(?:er|re)s?)?$|^cent(?:er|re)s?(?: and (?:the )?rings?)?$/,
    ["fill"],
  ],
  [/^(?:\w+ )?ganache$|^(?:choc|chocolate|cream)(?: and (?:the )?(?:choc|chocolate|cream))?$/, ["ganache"]],
  [/^(?:price|cost|margin|mark ?up|profit|food cost|selling price)$/, ["cost"]],
  [/^(?:plan|schedule|starting time|start time|timetable)$/, ["day"]],
  [/^(?:split|shares?|parts|thirds|halves|quarters|weights of the (?:parts|bowls))$/, ["split"]],
  [/^(?:shopping )?list$|^shopping$/, ["buy"]],
  [/^(?:us |eu )?label$/, ["label"]],
  [/^(?:oven )?(?:temp|temperature)$|^oven$/, ["method"]],
  [/^(?:conversion|grams|ounces|celsius|fahrenheit|degrees|cups?)$/, ["convert"]],
  [/^(?:dose|dosage|flavou?r|flavou?ring|amount of flavou?r)$/, ["dose"]],
];

const hasRecipe: ReadonlySet<string> = new Set(["scale", "buttercream", "ganache"]);

const mixes: ReadonlySet<string> = new Set(["buttercream", "ganache", "fill"]);

/** "same coffee again", behind the mix that has changed: as much of it as the mix takes now. */
function sameInMix(name: string, { things }: Reading, { last, past = [], table }: State): string | undefined {
  const flavor = things.find(({ text }) => name === `same ${text}`);
  const bowl = table.mass;
  if (!flavor || !bowl || !last || !mixes.has(last.tool)) return undefined;
  const own = past.findLast(
    ({ tool, inputs }) =>
      tool === "dose" && (flavor.taste ? inputs.taste === flavor.taste : inputs.dose === flavor.dose),
  );
  const named = own?.inputs.name ?? flavor.text;
  const base = own?.inputs.base ?? bowl.thing ?? "filling";
  return own && `how much ${named} for ${bowl.grams} g ${base}`;
}

/** The earlier question that a name is of; the last of them. */
function topicOf(name: string, { things }: Reading, past: readonly Topic[]): Topic | undefined {
  const tools = named.find(([pattern]) => pattern.test(name))?.[1];
  if (tools) return past.findLast(({ tool }) => tools.includes(tool));
  const [thing, ...others] = things.filter(({ text }) => name === text || name === `${text} one`);
  if (!thing || others.length > 0) return undefined;
  const { taste, dose, ingredient, base } = thing;
  if (base) return past.findLast(({ tool }) => tool === base);
  const flavored =
    (taste ?? dose) &&
    past.findLast(
      ({ tool, inputs }) =>
        tool === "dose" && (taste ? inputs.taste === taste : inputs.dose === dose && dose !== undefined),
    );
  if (flavored) return flavored;
  return ingredient === undefined
    ? undefined
    : past.findLast(
        ({ tool, table }) =>
          hasRecipe.has(tool) && table?.recipe?.some((each) => sameIngredient(each.name, ingredient)),
      );
}

const isNew =
  /^(?:(?:now|so|ok|its|it is|it's|were|we are|thats|make it|make that|they|theyve|theyre|theyd|she|shes|he|hes|i|ive|we|weve|you|them|have|has|had|got|gotten|is|are|want|wants|need|needs|gone|went|up|down|to|at|only|just|actually|really|instead|of|of them|now|then|in all|all told|total|order|the|number|bowl|rang|back|called|say|says|said|sorry|phone|no|wait|oops|oh|ugh|hang|on|and|but|for|with|from|that|be|being|will|going|changed|moved|customer|client|bride|in the end|after all|today|lot|all|\S+<[^>]*>) ?)*$/;

const told = (lead: string): boolean => {
  const plain = lead
    .replace(/\b(?:macarons|macs|shells|grams?)\b|[,.!]/g, " ")
    .replace(/ +/g, " ")
    .trim();
  return plain === "" || isNew.test(`${plain} `);
};

/** "make that 36", "batter again": the second is of so many, and no order beside another. */
export const asksOfNew = (left: string, right: string): boolean =>
  /\d/.test(left) && asked.test(spaced(right)) && told(left.replace(/\d+(?:\.\d+)?/, " "));

/** What stands before the name, where it holds the amount: "36 now, ". */
function changedAhead({ text, amounts }: Reading): { said: string; amount?: Amount } {
  const [amount, ...others] = amounts;
  const end = text.search(/, (?!.*, )/);
  if (!amount || others.length > 0 || end < 0 || amount.at[1] > end) return { said: text };
  const lead = `${text.slice(0, amount.at[0])} ${text.slice(amount.at[1], end)}`;
  return told(lead) ? { said: text.slice(end + 1).trim(), amount } : { said: text };
}

/** The question with its new amount, as its calculator goes on from it. */
function withAmount({ dim, text, value, of }: Amount, { tool, inputs }: Topic): string | undefined {
  if (dim === "percent") return `make it ${text}`;
  if (dim === "length") return `and at ${text}`;
  if (dim === "weight") return `and for ${text}${of ? ` ${of.text}` : ""}`;
  if (dim !== "number") return undefined;
  if (of?.count && of.count !== "macarons") return `and for ${value} ${of.count}`;
  const counts = inputs.macarons !== undefined || tool === "day" || tool === "buy";
  if (counts) return tool === "day" ? `make it ${value} macarons` : `and for ${value} macarons`;
  return inputs.shells !== undefined ? `and for ${value} shells` : `and for ${value}`;
}

export interface FigureAgain {
  text?: string;
  topic?: Topic;
  back?: Earlier;
}

/** Undefined where no figure is named that an earlier answer had. Pure. */
export function figureAgain(reading: Reading, state: State): FigureAgain | undefined {
  const { past = [] } = state;
  if (reading.whens.length > 0 || reading.amounts.length > 1 || past.length === 0) return undefined;
  const ahead = changedAhead(reading);
  const [, name, behind] = asked.exec(spaced(ahead.said)) ?? [];
  const same = name === undefined || behind !== undefined ? undefined : sameInMix(name, reading, state);
  if (same) return { text: same };
  const topic = name === undefined ? undefined : topicOf(name, reading, past);
  if (!topic) return undefined;
  const amount = ahead.amount ?? (behind === undefined ? undefined : reading.amounts[0]);
  // "and batter again", behind the filling for 55: for as many; "what was the batter again" was of those before
  const { macarons } = state.table;
  const had = topic.inputs.macarons;
  const isOther = typeof had === "number" && macarons !== undefined && had !== macarons;
  if (!amount && behind === undefined && isOther && !/\b(?:was|were|had)\b/.test(reading.text))
    return reading.amounts.length === 0 ? { text: `and for ${macarons} macarons`, topic } : undefined;
  if (!amount)
    return behind === undefined && reading.amounts.length === 0 ? { back: { topic, rest: "" } } : undefined;
  const text = withAmount(amount, topic);
  return text === undefined ? undefined : { text, topic };
}
