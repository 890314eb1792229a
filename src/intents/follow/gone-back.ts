/**
 * "and back to 36 for 6 pm", "and with 99 g whites", with something else asked since: the plan or her own recipe that was
 * spoken of before, said plainly.
 */
import type { Amount, Reading } from "../../tools/contract/index.ts";
import { spaced } from "./spaced.ts";
import { type State, sizing, type Topic } from "./state.ts";

export interface GoneBack {
  text: string;
  /** The question that it goes on from. */
  topic: Topic;
}

const list = (words: string): ReadonlySet<string> => new Set(words.split(/\s+/).filter(Boolean));
const all = (text: string, words: ReadonlySet<string>): boolean =>
  spaced(text.toLowerCase())
    .split(" ")
    .every((word) => word === "" || words.has(word));

const ahead =
  list(`and so ok okay no nope oh right now then but actually sorry wait go going back to make it only just lets
  let us do we i want need again stay stick with at change that after all please , maybe id like rather`);
const between = list(
  "again of them instead only after all then , and but macarons macs for by at ready due until then",
);
const behind = list(
  "? , . when do i start must should to what time begin how early please pls now then whats the plan",
);
/** Nobody bakes fewer for a day (from memory): an hour or a tray is meant. */
const fewest = 6;

/** So many again for another hour: what is planned for is asked for with both. */
function ofPlan({ text, amounts, whens }: Reading, { topics, last }: State): GoneBack | undefined {
  const topic = last?.tool === "day" ? last : topics.findLast(({ tool }) => tool === "day");
  const [number, ...others] = amounts;
  const [when, ...more] = whens;
  if (!topic || !number || !when || others.length > 0 || more.length > 0) return undefined;
  const isCount =
    number.dim === "number" && !number.fraction && number.unit === "" && Number.isInteger(number.value);
  const isOrdered =
    isCount && number.value >= fewest && when.minute !== undefined && number.at[1] <= when.at[0];
  const isOther = number.of !== undefined && number.of.count !== "macarons";
  if (!isOrdered || isOther || number.high !== undefined) return undefined;
  const lead = text.slice(0, number.at[0]);
  const joint = text.slice(number.at[1], when.at[0]);
  if (!all(lead, ahead) || !all(joint, between) || !all(text.slice(when.at[1]), behind)) return undefined;
  // "make 36 for 5 pm" says it whole, and goes its own way
  if (last?.tool === "day" && joint.trim() === "for" && !/\b(?:back|again)\b/.test(lead)) return undefined;
  return {
    text: `${number.value} macarons for ${when.text.replace(/^(?:for|by|at|until) /, "")}, when do i start`,
    topic,
  };
}

const namesPlan =
  /^(?:(?:and|so|ok|okay|right|now|anyway|hm|oh|but|then|actually|back|go|going|return|returning|to|about|on|as|for|regarding),? )*(?:the|my|that|our) (?:baking |bake |day )?(?:plan|schedule|timetable|timeline)(?: (?:again|then|now|though))? ?(?:[,.:;-]+ ?|(?=but |with |make |they |she |he |for ))/;

/** "back to the plan, they now want them at 3", "so the schedule: 72 now": what is said behind its name is of the plan. */
function ofNamedPlan({ text, amounts, whens }: Reading, { topics, last }: State): GoneBack | undefined {
  if (!last || last.tool === "day" || amounts.length + whens.length === 0) return undefined;
  const [name] = namesPlan.exec(text) ?? [];
  const topic = name === undefined ? undefined : topics.findLast(({ tool }) => tool === "day");
  const rest = text.slice(name?.length).trim();
  return topic && rest !== "" ? { text: rest, topic } : undefined;
}

const wanting =
  list(`they she he we it theyre theyd the client customer bride party order now wants want wanted need
  needs needed would like them all everything collected collect collecting pick picked picking up ready due be is to at by
  for sooner earlier later instead actually turns out so oh hm ok and but has have been moved come coming already , .`);
const isWanted = /\b(?:wants?|wanted|needs?|needed|like|collect\w*|pick\w*|ready|due|moved|come|coming)\b/;

/** "they now want them at 3", behind the filling for a plan: no three macarons, but the hour at which they are due. */
function ofItsHour({ text, amounts, whens }: Reading, { topics, last }: State): GoneBack | undefined {
  const [when, ...more] = whens;
  if (!last || !sizing.has(last.tool) || !when || more.length + amounts.length > 0) return undefined;
  if (when.minute === undefined || !/\b(?:at|by|for) \S+$/.test(text.slice(0, when.at[1]))) return undefined;
  const rest = `${text.slice(0, when.at[0])} ${text.slice(when.at[1])}`;
  if (!isWanted.test(rest) || !all(rest, wanting)) return undefined;
  const topic = topics.findLast(({ tool }) => tool === "day");
  return topic && { text, topic };
}

const talk =
  list(`and so ok okay now then but with for if from only just what i have ive got had use using of the my egg
  eggs whites white how about make it do please pls instead again , . ? id say to at we theres there is are left today`);
/** Whites are something else behind these. */
const others = list("buttercream scale convert cost buy shelf label formula exchange");

/** So much of one of its lines: her own recipe once more. */
function ofRecipe({ text, amounts, things }: Reading, { topics, last }: State): GoneBack | undefined {
  if (!last || others.has(last.tool)) return undefined;
  const topic = topics.findLast(({ tool }) => tool === "scale");
  const isOwn = topic && (topic.inputs.lines !== undefined || topic.inputs.formula !== undefined);
  const [amount, ...more] = amounts;
  if (!isOwn || !amount || more.length > 0 || !isWhites(amount)) return undefined;
  const isWhole = things.every(({ ingredient }) => ingredient === "whites");
  const rest = `${text.slice(0, amount.at[0])} ${text.slice(amount.at[1])}`;
  return isWhole && all(rest, talk) ? { text: `and with ${amount.text} whites`, topic } : undefined;
}

const isWhites = ({ dim, of, high }: Amount): boolean =>
  dim === "weight" && of?.ingredient === "whites" && high === undefined;

/** Undefined where the sentence comes back to neither. */
export const goneBack = (reading: Reading, state: State): GoneBack | undefined =>
  ofPlan(reading, state) ??
  ofNamedPlan(reading, state) ??
  ofItsHour(reading, state) ??
  ofRecipe(reading, state);
