/** Reads a question about keeping: what it is about, the days and times in it, how warm it was. */
import { outside } from "../../../data/rules/keeping.ts";
import type { Memory, Reading } from "../contract/index.ts";
import { readLines } from "../lib/lines.ts";
import { wordsOf } from "../lib/pieces.ts";
import { celsius, inBase } from "../lib/units.ts";
import { coldOf, heatedTo } from "./cold-said.ts";
import { iceWords, outWords, readDays } from "./days-said.ts";
import type { KeepInputs } from "./keep.ts";
import { otherOnes, withSpells } from "./spells.ts";

type Draft = Partial<KeepInputs>;
type About = NonNullable<KeepInputs["about"]>;

const stillWords =
  /\b(?:still|good|ok|okay|fine|safe|edible|alright|eat|serve|sell|toss|bin|chuck|throw|off)\b/;
const needsCold =
  /\b(?:need|have|has|needs|must|should|do|does)\b.*\b(?:be refrigerated|refrigerate|be kept cold|be in the fridge|go in(?:to)? the fridge|be chilled|chill)\b/;

/** How long whites keep, not what is made with them. */
const ofWhites = /\b(?:keep|last|store|stay|go off|age|aged|aging|ageing|old|freez\w*|frozen|fridge)\b/;
/** "and 60", of whites whose heat was spoken of. */
const bareHeat =
  /^(?:(?:and|so|or|if|what if|what about|is|ok|only|just|then|at|to|its|say|no) )*\S*<number>(?: (?:ok|okay|enough|then|instead|too))*(?: \?)?$/;
const bareHowLong =
  /^(?:(?:and|so|ok|yes|for) )*(?:how (?:long|many (?:days|weeks|months))|(?:until|till) when)(?: (?:do|they|then|for|is that|can they|do they|will they|keep|stay|last|be|there|in there|like that))*(?: \?)?$/;
const warmest_fridge_c = 20;
/** "made on monday, kept on the counter": out for as long as they exist. */
const outSinceMade =
  /\b(?:kept|been|stood|standing|sat|sitting|left|stored|staying)\b(?!.*\b(?:fridge|refrigerator|refrigerated|freezer)\b).*\b(?:counter|table|out|outside|room temp\w*|worktop|unrefrigerated|cupboard|pantry|shelf)\b/;
/** What no date can clear. */
const spoiledWords =
  /\b(?:mou?ldy?|slimy|fuzzy|rancid)\b|\b(?:smell\w*|tastes?|tasting)\b(?: \w+){0,3} (?:sour|off|funny|bad|rancid|weird|like (?:alcohol|yeast))\b/;
/** A fridge that wasn't one: its time counts as out of the fridge. */
const powerWords =
  /\b(?:power|electricity)\b(?: \w+){0,3} (?:cut|outage|out|off|failed|failure|went)\b|\b(?:fridge|refrigerator)\b(?: \w+){0,3} (?:broke\w*|off|died|failed|open|warm)\b|\b(?:outage|blackout)\b/;

/** @param memory a slot that was asked for takes the day that was said, whatever stands around it */
export const readKeep = (reading: Reading, memory: Memory): Draft =>
  withSpells(readAlone(reading, memory), reading, memory);

function readAlone(reading: Reading, memory: Memory): Draft {
  const before = memory.last?.tool === "keep" ? memory.last.inputs.about : undefined;
  // "can i freeze them", of those that were out too long: what was said of them stands
  if (stillSpoiled(reading, memory)) return { about: "outside" };
  // "can i freeze them?" "how long?": there, and not in the fridge
  const about =
    before === "whites" &&
    /^(?:(?:and|what about|or|so) )*\S*<(?:time|when)>(?: old)?(?: (?:ones|whites|\S*<ingredient=whites>))?(?: \?)?$|^(?:and |or )?\S*_old\S*(?: \?)?$/.test(
      reading.mask,
    )
      ? "whites"
      : before !== undefined && bareHowLong.test(reading.mask)
        ? // "and how long in there", behind how cold the fridge has to be
          before === "cold"
          ? "fridge"
          : (before as About)
        : // "to 55 c", of whites that are heated
          before === "eggs" &&
            (reading.amounts.some((each) => each.dim === "temperature") || bareHeat.test(reading.mask)) &&
            !outWords.test(wordsOf(reading))
          ? "eggs"
          : aboutWhat(reading);
  const mix = reading.things.find(
    (each) => each.base && each.base !== "filling" && each.base !== "batter",
  )?.base;
  const filled =
    reading.things.some((each) => each.count === "macarons") || /\bfill?ed\b/.test(wordsOf(reading));
  // "and the use by?", behind a label's dates: of the same day
  const labelled =
    memory.last?.tool === "label" ? (memory.last.inputs.made as KeepInputs["made"]) : undefined;
  const said = readDays(reading, memory);
  const days = labelled && Object.keys(said).length === 0 ? { made: labelled } : said;
  return {
    ...(about ? { about } : {}),
    ...(mix && about !== "eggs" && !filled ? { what: mix } : {}),
    ...(about === "outside" && !mix && !filled && rawEggs(reading) ? { what: "raw whites" } : {}),
    ...(reading.things.some((each) => each.ingredient === "egg yolk") ? { yolks: true } : {}),
    ...(dairy.test(wordsOf(reading)) ? { dairy: true } : {}),
    ...days,
    ...(about === "outside" && days.made && !days.on && outSinceMade.test(wordsOf(reading))
      ? { out_since_made: true }
      : {}),
    ...readTimes(reading, about ?? (before as About | undefined)),
    ...onTop(reading, memory),
    ...readWarmth(reading),
    ...(about === "eggs" || memory.slot === "degrees" ? heatedTo(reading, memory) : {}),
    ...coldOf(reading, memory),
    ...readActivity(reading),
    ...readFilling(reading),
    ...(about === "freezer" && /\bstill\b/.test(wordsOf(reading)) ? { still: true } : {}),
    ...(about === "fridge" &&
    stillWords.test(wordsOf(reading)) &&
    !/\b(?:how (?:long|many days)|until|till|last day|use by|when)\b/.test(wordsOf(reading))
      ? { still: true }
      : {}),
  };
}

/** A yes or no asked of what was left out too long: neither fridge nor freezer makes it good again. */
function stillSpoiled(reading: Reading, { follows, last }: Memory): boolean {
  const before = follows && last?.tool === "keep" ? (last.inputs as Draft) : undefined;
  const limit_h = before?.hot || (before?.air_c ?? 0) > outside.hot_c ? outside.hot_h : outside.limit_h;
  const isOver = before?.overnight || (before?.out_min ?? 0) > limit_h * 60;
  const isNew = reading.amounts.some((each) => each.dim === "time" || each.dim === "temperature");
  return (
    isOver === true &&
    before?.about === "outside" &&
    !isNew &&
    !before.out_asked &&
    !otherOnes.test(reading.text) &&
    /^(?:(?:and|so|but|ok|then|even) )*(?:(?:if|what if) )?(?:can|could|may|should|shall|is|are|would|will|do|i (?:put|freeze|sell|eat)) .*\b(?:them|they|it|these|those|he|she|still|freeze|sell|eat)\b/.test(
      wordsOf(reading),
    ) &&
    !/\b(?:how long|how many|new|next)\b|\bunfilled|\bnot filled/.test(wordsOf(reading))
  );
}

/** "how long before serving do they come out": a step of the day, and no question of safety. */
const serveWords =
  /\b(?:when|how long before|how soon|how far ahead)\b.*\b(?:take|get|bring|come)\b.*\bout\b(?!.*\b(?:oven|mat|freezer|paper)\b)|\bbefore (?:eating|serving|we eat|i serve|they eat|they are eaten)\b|\btemp\w* .*\b(?:serve|served|eaten|eat)\b/;

/** "filled at noon, when is maturing done", "is 28 h enough maturing", "filled at 6 pm, when can i eat them". */
const maturedWords =
  /\b(?:enough|long enough|done|over|ready|finished)\b.*\bmatur\w*|\bmatur\w*\b.*\b(?:enough|done|over|ready|finished)\b|\bfilled\b.*\b(?<!until |till |up to )when (?:can|could|may|should) (?:i|we|they) (?:eat|serve|try|have|sell)\b/;

const postWords =
  /\b(?:ship|shipping|shipped|mail|mailing|courier|parcel)\b|\b(?:can|could|to|i|we|them|by|in the|through the) (?:post|posting|posted)\b/;

const rawEggs = (reading: Reading): boolean =>
  reading.things.some((each) => ["whites", "egg", "egg yolk"].includes(each.ingredient ?? ""));

/** Fillings that spoil sooner than a ganache. */
const dairy =
  /\b(?:mascarpone|curd|cream cheese|fresh cream|whipped cream|pastry cream|custard|creme patissiere|ricotta|quark)\b/;

const coldWords = /fridge|refrigerat|freez|chill|cool|cold|ice/;

function aboutWhat(reading: Reading): About | undefined {
  const said = wordsOf(reading);
  const whites = reading.things.some((each) =>
    ["whites", "egg", "egg yolk", "pasteurised whites"].includes(each.ingredient ?? ""),
  );
  const warm = readWarmth(reading).air_c;
  if (maturedWords.test(said)) return "matured";
  if (serveWords.test(said)) return "serve";
  if (postWords.test(said)) return "post";
  if (readActivity(reading).aw !== undefined) return "activity";
  if (spoiledWords.test(said)) return "spoiled";
  // "do i need to refrigerate the ganache overnight": whether it has to be cold, not whether it was left out
  if (needsCold.test(said) && !/\b(?:left|forgot|sat|stood|was|were|been)\b/.test(said)) return "cold";
  if (powerWords.test(said)) return "outside";
  if (/shelf[ -]?stable|water activity\b.* (?:under|below|safe|line|limit)/.test(said)) return "shelf stable";
  // "my whites sat out overnight": no heat makes good what stood warm too long
  if (
    whites &&
    outWords.test(said) &&
    !/\b(?:filled|macarons?|macs|buttercream|meringue)\b/.test(said) &&
    (dayLong.test(said) || reading.amounts.some((each) => each.dim === "time"))
  )
    return "outside";
  if (
    whites &&
    !/\b(?:filled|macarons?|macs|buttercream|meringue|heat\w*|sell)\b/.test(said) &&
    (!/\braw\b/.test(said) || /\bhow (?:long|many days)\b|\bfridge\b|\bfreez/.test(said)) &&
    ofWhites.test(said)
  )
    return "whites";
  if (whites && !/fridge|freez|out of the fridge|counter/.test(said)) return "eggs";
  if (
    whites &&
    /\b(?:never|not|arent|dont|doesnt|isnt|without) (?:get |got |been |being |be )?(?:heat|cook)/.test(said)
  )
    return "eggs";
  if (/\b(?:raw|uncooked|unheated) (?:egg )?(?:white|egg|batter|meringue|shell|mix)|pasteuri[sz]/.test(said))
    return "eggs";
  if (/freezer/.test(said) && /how cold|what (?:temp|degree)|which temp|cold enough/.test(said))
    return "freezer";
  if (/\b(?:refr[eo]+z\w*|freeze (?:\w+ )?(?:again|twice)|froze\w* again)/.test(said)) return "again";
  if (/(?:fridge|refrigerator) temp|temp\w* (?:of|for|in) (?:the |my |a )?(?:fridge|refrigerator)/.test(said))
    return "cold";
  if (
    /\bheat (?:it|them|those|the)\b|\bto heat\b/.test(said) &&
    /what (?:temp|heat|degree)|which temp|how (?:hot|warm)/.test(said)
  )
    return "eggs";
  // "how many days in the fridge and at what temperature": the days, which say the cold too
  const asksDays = /\bhow (?:long|many days)\b/.test(said);
  if (
    (/how (?:cold|warm)|what (?:temp|heat|degree)|which temp|cold enough/.test(said) && !asksDays) ||
    (/fridge|refrigerator/.test(said) && warm !== undefined && warm < warmest_fridge_c)
  )
    return "cold";
  const dated =
    reading.whens.length > 0 &&
    /\b(?:made|(?<!\b(?:of|the|my|some|those|these|with) )filled|baked)\b/.test(said);
  if (/\b(?:thaw|defrost)\w*/.test(said) && !/\b(?:thawed|defrosted)\b/.test(said) && !dated) return "thaw";
  const bareShells =
    /\b(?:not|werent|wasnt|arent|isnt|never|havent) (?:been |yet )?filled\b|\b(?:unfilled|empty|bare|naked|plain|without filling|just the) ?(?:macaron )?(?:shells?|halves)?\b/.test(
      said,
    ) && /shell|unfilled|halves|filled/.test(said);
  if (
    bareShells ||
    (reading.things.some((each) => each.count === "shells") &&
      !/fill/.test(said) &&
      !reading.things.some((each) => each.count === "macarons"))
  )
    return "shells";
  if (
    /\b(?:out of|outside|without) (?:the |a |my )?(?:fridge|refrigerator|refrigeration)\b|unrefrigerated|not refrigerated/.test(
      said,
    )
  )
    return "outside";
  const out = outWords.test(
    said.replace(
      /(?:took|taken|take|got) (?:(?:them|it|some|these) )?out (?:on|again|yesterday|today|this)\b|out of the (?:freezer|oven|box)|find out|(?:hand|give|dish|sell)(?:ing|ed)? (?:\w+ )?out|work(?:ed)? out|turn(?:ed)? out|came out/g,
      "",
    ),
  );
  // "1 hour out, 1 hour in the fridge, 30 min out again"
  const isSpell = /\b(?:hours?|hrs?|h|min\w*) out\b/.test(said);
  if (out && (isSpell || !/how long .*fridge|in the fridge/.test(said))) return "outside";
  if (iceWords.test(said) && !dated && !/\bthaw|defrost|took .*out of the freezer/.test(said))
    return "freezer";
  if (warm !== undefined && warm >= warmest_fridge_c) return "outside";
  // "they have sat for 90 minutes": nowhere cold, as nobody says where
  const short = reading.amounts.some(
    (each) => each.dim === "time" && inBase(each.value, each.unit) < 24 * 60,
  );
  if (
    short &&
    /\b(?:sat|sitting|stood|standing|been left|left|forgot\w*|lying)\b/.test(said) &&
    !coldWords.test(said)
  )
    return "outside";
  if (
    /fridge|refrigerat|keep|last|good|ok|okay|eat|safe|days?|use by|best|sell|off|store|storage|how long|thaw|defrost|when/.test(
      said,
    )
  )
    return "fridge";
  return undefined;
}

function readTimes(reading: Reading, about: About | undefined): Draft {
  const times = reading.amounts.filter((each) => each.dim === "time");
  const lasted = (some: typeof times) => some.reduce((sum, each) => sum + inBase(each.value, each.unit), 0);
  const total = lasted(times);
  if (about === "matured") return times.length > 0 ? { matured_min: total } : {};
  if (about === "whites") return times.length > 0 ? { old_days: total / 1440 } : {};
  if (about === "freezer") return times.length > 0 ? { frozen_days: Math.round(total / 1440) } : {};
  if (about !== "outside") return {};
  // "1 hour out, 1 hour in the fridge, 30 min out again": the cold ones don't count, and take nothing back
  const warm = times.filter(({ at }) => !inTheCold.test(reading.text.slice(at[1])));
  if (times.length > 0) return { out_min: lasted(warm.length > 0 ? warm : times) };
  return dayLong.test(reading.text) ? { overnight: true } : {};
}

/** Longer than any limit, whatever the hours. */
const dayLong =
  /\b(?:overnight|all (?:night|day|weekend)|last night|(?:since|from) (?:yesterday|the day before|last \w+|monday|tuesday|wednesday|thursday|friday|saturday|sunday))\b/;

const inTheCold =
  /^ ?(?:back |again )?(?:in|inside) (?:the |my )?(?:fridge|freezer|refrigerator|cold|cooler)\b/;

/** "and another 30 min this morning": all spells out of the fridge count together. */
function onTop(reading: Reading, memory: Memory): Draft {
  const before = memory.last?.tool === "keep" ? (memory.last.inputs as Draft) : undefined;
  if (!memory.follows || before?.about !== "outside" || before.out_min === undefined) return {};
  const times = reading.amounts.filter((each) => each.dim === "time");
  if (times.length !== 1 || !times[0] || !moreWords.test(reading.text)) return {};
  return { about: "outside", out_min: before.out_min + inBase(times[0].value, times[0].unit) };
}

const moreWords = /\b(?:another|more|again|on top|as well|too|plus|extra|before that|after that)\b/;

function readWarmth(reading: Reading): Draft {
  // "8 c" beside a fridge is no cups
  const cups = /fridge|refrigerator/.test(reading.text)
    ? reading.amounts.find((each) => each.unit === "cup" && !each.of && /\d ?c$/.test(each.text))
    : undefined;
  // "suppose the room was 27 only"
  const ofRoom = reading.amounts.find(
    (each) =>
      each.dim === "number" &&
      each.unit === "" &&
      each.value >= 10 &&
      each.value <= 120 &&
      /\b(?:room|kitchen|air|weather|outside|flat|tent|hall) (?:was|is|were|at|gets?|of) (?:about |around |only )?$/.test(
        reading.text.slice(0, each.at[0]),
      ),
  );
  // "its 96 out today"
  const ofDay = reading.amounts.find(
    (each) =>
      each.dim === "number" &&
      each.unit === "" &&
      each.value >= 25 &&
      each.value <= 120 &&
      /\b(?:its|it is|it was|hits?|hitting|around|about)(?: (?:about|around|like|over))? $/.test(
        reading.text.slice(0, each.at[0]),
      ) &&
      /^ (?:degrees )?(?:out|outside|here|in here|in the (?:shade|sun|kitchen|tent)|today)\b/.test(
        reading.text.slice(each.at[1]),
      ),
  );
  const said = ofRoom ?? ofDay;
  const heat =
    reading.amounts.find((each) => each.dim === "temperature") ?? cups ?? (said && { ...said, unit: "°" });
  const words =
    /\b(?:heat ?wave|boiling|scorching|baking hot|hot (?:day|car|van|sun|outside|out|afternoon|kitchen)|really hot|so hot|in the sun)\b/.test(
      reading.text,
    );
  if (
    !heat &&
    /\b(?:normal|usual|ordinary|cooler|mild) (?:day|weather|room|temperature)\b/.test(reading.text)
  )
    return { hot: false, about: "outside" };
  if (!heat) return words ? { hot: true } : {};
  const fahrenheit = heat.unit === "°F" || (heat.unit === "°" && heat.value >= 60);
  return { air_c: celsius(heat.value, fahrenheit ? "°F" : "°C"), ...(fahrenheit ? { fahrenheit } : {}) };
}

/** Chocolate with cream or butter, weighed: a filling whose water activity can be estimated. */
function readFilling(reading: Reading): Draft {
  const { lines } = readLines(reading);
  const named = lines.filter((each) => each.thing?.ingredient || each.thing?.chocolate);
  if (named.length < 2 || !named.some((each) => /chocolate|butter|cream/.test(each.name))) return {};
  return { lines: named.map(({ name, grams }) => ({ name, grams })) };
}

function readActivity(reading: Reading): Draft {
  if (!/water activity|(?:^| )a ?w(?: |$)/.test(wordsOf(reading))) return {};
  const number = reading.amounts.find((each) => each.dim === "number" && each.value > 0 && each.value <= 1);
  return number ? { aw: number.value } : {};
}
