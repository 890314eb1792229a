/** Reads which notes are meant, and what is wanted of them. */

import { recallTalk } from "../../../data/words/note-talk.ts";
import { praise as praised } from "../../../data/words/symptoms.ts";
import type { Memory, Reading } from "../contract/index.ts";
import { isWhichDay } from "../lib/asked-again.ts";
import { type Piece, pieces } from "../lib/pieces.ts";
import { tastesIn, withBrownButter } from "../lib/tastes.ts";
import { ovenIn, timesIn } from "../note/heat.ts";
import { periodIn } from "./period.ts";
import type { RecallInputs } from "./recall.ts";

type Draft = Partial<RecallInputs>;

const usual =
  /(?:^| )(?:as a rule|usually|normally|normaly|typically|generally|mostly|tend|average|mean(?= (?:rating|score|mark|bake|rest|time))|usual|typical)(?: |$)|(?:^| )(?:my|do i) .*(?:normal|always)(?: |$)/;
const times = /(?:^| )how (?:often|many times)|how many \S*<count=batches/;
const totals = /(?:^| )how many \S*<count=(?:macarons|shells|trays)[^>]*> (?:have|did) i/;
const best = /(?:^| )(?:best|better|highest|higher|top|favou?rite|finest|high)(?: |$)/;
const worst = /(?:^| )(?:worst|lowest|poorest|low)(?: |$)/;
const compared = /(?:^| )(?:compar(?:e|ed|ing)|against|versus|vs)(?: |$)/;
const first = /(?:^| )first (?:time|\S*<count=batches)|did i first/;
const last =
  /(?:last|most recent|latest|newest) time|did i last|(?:^| )(?:the|my|me) (?:last|latest|newest|most recent)(?: |$)|^last \S*<|when did i (?:make|bake|do|\S*<step=bake)/;

/** "any tips from my notes": what she usually does. */
const learns = /(?:^| )(?:tips|lessons|advice|pointers)(?: \S+)* notes?(?: |$)|(?:^| )learn(?:ed)? from /;
const lastNoted =
  /^(?:(?:and|so|ok) )*(?:what|which)(?: \S+){0,2} (?:did|have|had) (?:i|we) (?:note|noted|write|wrote|written|log|logged|record|recorded|jot|put)(?: down)? (?:last|most recently|latest)(?: \?)?$/;

/** What has to stand in a question for the words that are left in it to be looked for. */
const asksNotes =
  /(?:^| )(?:show|list|find|search|look|see|read|get|pull|bring|which|what|whats|when|where|any|anything|everything|did|have|has|how|who|ones?|notes?|\S*<count=\S+|about|with|without|mention\S*|say|says|said|and|or|only|just|also|but|recipes?|last|first)(?: |$)|\?$/;

/** "and the one before, what happened with that": of the same kind, one further back. */
const oneBefore =
  /^(?:(?:and|what about|how about|ok|so|then|show me|now) )*the (?:one|batch\S*|time|note) before(?: (?:that|it|this|last|then))?(?:(?: ,)? .*)?$/;

/** "any problems with them?": what was noted, of the batches that are spoken of. */
export const asksTrouble =
  "^(?:(?:and|so|ok|were|was|are|there|did|i|have|any|anything|what|the) )*(?:problems?|troubles?|issues?|faults?) (?:with|about) (?:them|it|those|that|these)(?: one| batch| ones)?(?: [?])?$";
const troubles = new RegExp(asksTrouble);

export function readRecall(reading: Reading, memory: Memory): Draft {
  if (troubles.test(reading.mask))
    return memory.last?.tool === "recall" ? (memory.last.inputs as Draft) : { want: "last" };
  // "and what day was that": what was found, with its day
  if (isWhichDay(reading.mask) && memory.last?.tool === "note") return { want: "last" };
  if (oneBefore.test(reading.mask) && memory.last?.tool === "recall") {
    const before = memory.last.inputs as Draft;
    return { ...before, want: "last", back: (before.back ?? 0) + 1 };
  }
  const some = withBrownButter(pieces(reading));
  const { mask } = reading;
  const flavors = tastesIn(some);
  const symptoms = some.flatMap((each) => (each.thing?.symptom ? [each.thing.symptom] : []));
  const problems = [...new Set(symptoms.filter((id) => !praised.includes(id)))];
  const praise = [...new Set(symptoms.filter((id) => praised.includes(id)))];
  const period = periodIn(some);
  const rating = ratingAsked(some);
  const want = wantOf(mask, period !== undefined);
  const heat = want === "typical" || period?.days !== undefined ? {} : heatAsked(some);
  // "and the lemon ones?" goes on with what was asked before
  const goesOn =
    memory.last?.tool === "recall" &&
    /^(?:when did i (?:make|bake|\S*<step=bake>) (?:that|this|it)|and|or|what about|how about|but|only|just|also)(?: |$)/.test(
      mask,
    ) &&
    (want === "list" || /^when did i (?:make|bake|\S*<step=bake>) (?:that|this|it)/.test(mask));
  const words =
    Object.keys(heat).length ||
    period ||
    flavors.length ||
    problems.length ||
    praise.length ||
    rating.rating_from !== undefined ||
    rating.rating_to !== undefined ||
    want !== "list" ||
    // "play some music there": no question about notes
    !asksNotes.test(mask)
      ? []
      : leftOver(some).filter((word) => word !== "oven");
  const draft: Draft = {
    ...(want === "typical" || want === "total" ? measureOf(some, mask) : figureAsked(some, mask, want)),
    ...(flavors.length ? { flavors } : {}),
    ...(problems.length ? { problems } : {}),
    ...(praise.length ? { praise } : {}),
    ...(period ? { period } : {}),
    ...rating,
    ...heat,
    ...(words.length ? { words } : {}),
    ...(/fahrenheit|°f|<unit=°f/i.test(mask) ? { fahrenheit: true } : {}),
  };
  if (!goesOn) return { want, ...draft };
  const before = (memory.last?.inputs ?? {}) as Draft;
  if (!isAnother(before, draft) || narrows.test(mask)) return { ...without(before, draft), ...draft };
  // "and how was the blackcurrant", behind those that browned: a search of its own
  return asksHow.test(mask)
    ? { want: "list", ...draft }
    : { want: before.want ?? "list", ...only(before, ["measure", "period", "fahrenheit"]), ...draft };
}

/** Another flavor than was looked for: what else was looked for was said of the others. */
const isAnother = (before: Draft, now: Draft): boolean =>
  now.flavors?.some((each) => !before.flavors?.includes(each)) ?? false;

/** "only the lemon ones", "of those the lemon": among what was found. */
const narrows =
  /(?:^| )(?:only|just|among|of (?:those|them|these)|as well|too)(?: |$)|^(?:(?:and|but) )*(?:any|which) /;
const asksHow =
  /(?:^| )(?:how|hows|what (?:did|do|have|does) (?:i|we|it|they)|what happened|show|tell|read|find|see|the notes?)(?: |$)/;

const only = (before: Draft, keys: readonly (keyof Draft)[]): Draft =>
  Object.fromEntries(Object.entries(before).filter(([key]) => keys.includes(key as keyof Draft)));

/** What an earlier question still says beside the new one: of each group, either the old or the new. */
function without(before: Draft, now: Draft): Draft {
  const groups = [
    ["flavors", "words"],
    ["problems", "praise"],
    ["rating_from", "rating_to", "strictly"],
  ];
  const gone = groups.filter((group) => group.some((key) => key in now)).flat();
  return Object.fromEntries(Object.entries(before).filter(([key]) => !gone.includes(key)));
}

function wantOf(mask: string, hasPeriod: boolean): RecallInputs["want"] {
  if (compared.test(mask)) return "compare";
  if (learns.test(mask)) return "typical";
  if (usual.test(mask)) return "typical";
  if (totals.test(mask)) return "total";
  if (times.test(mask)) return "count";
  if (best.test(mask)) return "best";
  if (worst.test(mask)) return "worst";
  if (first.test(mask)) return "first";
  // "what did i note last", "what was my last note about"
  if (lastNoted.test(mask)) return "last";
  return last.test(mask) && !hasPeriod ? "last" : "list";
}

/** "how long did i bake them", "what temp did i use for the party": the one figure that is asked of a batch. */
function figureAsked(some: readonly Piece[], mask: string, want: RecallInputs["want"]): Draft {
  if (want !== "list" && want !== "last" && want !== "first" && want !== "best") return {};
  const { measure } = measureOf(some, mask);
  const isAsked =
    /^(?:(?:and|so|ok|then) )*(?:(?:how (?:long|hot|many|much|wide|big)|(?:what|which|whats)(?: (?:was|is|were|did i have as))? (?:the|my )?)(?: |$)|(?:what|which) (?:temp|oven|heat|bake|rest))/.test(
      mask,
    ) ||
    /^(?:(?:and|so|ok|then) )*(?:what|which|whats)(?: \S+){0,3} (?:temp|temps|temperature|heat|time|size|diameter)(?: |$)/.test(
      mask,
    );
  if (!measure && /how many did (?:i|we) (?:make|get|bake|\S*<step=bake)/.test(mask))
    return { measure: "macarons" };
  return measure && isAsked ? { measure } : {};
}

function measureOf(some: readonly Piece[], mask: string): Draft {
  const has = (pattern: RegExp) => pattern.test(mask);
  const step = some.find((each) => each.thing?.step)?.thing?.step;
  const count = some.find(
    (each) => ["macarons", "shells", "trays"].includes(each.thing?.count ?? "") && /how many/.test(mask),
  )?.thing?.count;
  if (
    has(/(?:^| )(?:temp|temps|temperature|tempeture|tempurature|tempreture|heat|hot|degrees)(?: |$)|<unit=°/)
  )
    return { measure: "oven" };
  if (step === "bake" || step === "rest" || step === "mature") return { measure: step };
  if (has(/(?:^| )oven(?: |$)/)) return { measure: "oven" };
  if (count) return { measure: count as "macarons" };
  if (has(/(?:^| )(?:size|diameter|wide|big|across)(?: |$)/)) return { measure: "diameter" };
  if (has(/<(?:[^> ]*,)?base=batter/) && has(/how much/)) return { measure: "batter" };
  if (
    has(/(?:how much|what) .*(?:<(?:[^> ]*,)?dose=|flavou?r|percent|<unit=%)/) ||
    has(/(?:^| )(?:dose|dosage|dosing|strength)(?: |$)/) ||
    has(/how much \S*<(?:[^> ]*,)?taste=/)
  )
    return { measure: "dose" };
  if (has(/<(?:[^> ]*,)?base=/) && has(/how much/)) return { measure: "filling" };
  if (has(/(?:^| )(?:rating|rate|score|marks)(?: |$)/)) return { measure: "rating" };
  return has(/how long/) ? { measure: "bake" } : {};
}

/** "baked at 320 f", "rested 40 min": what a note has to have. */
function heatAsked(some: readonly Piece[]): Pick<Draft, "oven_c" | "bake_min" | "rest_min"> {
  const { oven_c } = ovenIn(some).found;
  const { bake_min, rest_min } = timesIn(some).found;
  return {
    ...(oven_c === undefined ? {} : { oven_c }),
    ...(bake_min === undefined ? {} : { bake_min }),
    ...(rest_min === undefined ? {} : { rest_min }),
  };
}

const above = new Set(["over", "above", "than", "exceeding"]);
const below = new Set(["under", "below"]);

/** "over 8", "9 or more", "under 4 out of 5", "rated 5". */
function ratingAsked(some: readonly Piece[]): Pick<Draft, "rating_from" | "rating_to" | "strictly"> {
  const at = some.findIndex(
    (each, i) => each.amount?.dim === "number" && each.amount.unit === "" && isMark(some, i),
  );
  const amount = some[at]?.amount;
  if (!amount) return {};
  const behind = some.slice(at + 1, at + 4);
  const outOf = amount.fraction ?? ([amount.value, scaleOf(behind)] as const);
  const rating = (outOf[0] / outOf[1]) * 10;
  const before = some.slice(Math.max(0, at - 3), at).map((each) => each.text);
  const fewer = before.some((word) => ["less", "lower", "worse"].includes(word));
  const rest = some
    .slice(at + 1)
    .map((each) => each.text)
    .join(" ");
  if (before.some((word) => below.has(word)) || (fewer && before.includes("than")))
    return { rating_to: rating, strictly: true };
  if (before.some((word) => above.has(word))) return { rating_from: rating, strictly: true };
  if (before.includes("least") || /^(?:\S+ )*(?:or|and) (?:more|above|over|better|higher|up)/.test(rest))
    return { rating_from: rating };
  if (before.includes("most") || /(?:or|and) (?:less|below|under|worse|lower)/.test(rest))
    return { rating_to: rating };
  return { rating_from: rating, rating_to: rating };
}

function scaleOf(behind: readonly Piece[]): number {
  if (/^stars?$/.test(behind[0]?.text ?? "")) return 5;
  if (behind[0]?.text === "out" && behind[1]?.text === "of") return behind[2]?.amount?.value ?? 10;
  return behind[0]?.text === "/" ? (behind[1]?.amount?.value ?? 10) : 10;
}

/** A number is a rating where the words around it say so. */
function isMark(some: readonly Piece[], at: number): boolean {
  const text = some.map((each) => each.text).join(" ");
  const amount = some[at]?.amount;
  if (amount?.of && amount.of.count !== "batches") return false;
  // "how did it rate out of ten": the scale, and no mark
  if (some[at - 1]?.text === "of" && some[at - 2]?.text === "out") return false;
  const hasScale =
    scaleOf(some.slice(at + 1, at + 4)) !== 10 ||
    some[at + 1]?.text === "out" ||
    amount?.fraction !== undefined;
  return (
    hasScale ||
    /(?:^| )(?:rate|rated|rating|ratings|scored|score|marks|marked|got|gave)(?: |$)/.test(text) ||
    [...above, ...below].includes(some[at - 1]?.text ?? "")
  );
}

/** Words of a plain list question that nothing else explains: "the one for the wedding". */
function leftOver(some: readonly Piece[]): string[] {
  return some.flatMap((each) => {
    const isPlain = !each.amount && !each.when && !each.thing;
    return isPlain && /^[a-z]{4,}$/.test(each.text) && !recallTalk.has(each.text) ? [each.text] : [];
  });
}
