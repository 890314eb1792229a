/** What the limits come to for what was said. Every answer ends by deferring to the local food authority. */
import {
  activity,
  eggs,
  freshDairy,
  fridge,
  frozen,
  inFridge,
  keepingRules,
  outside,
  rawWhites,
  rawYolks,
} from "../../../data/rules/keeping.ts";
import type { Outcome, World } from "../contract/index.ts";
import { asking } from "../lib/asking.ts";
import { keepingCaution } from "../lib/care.ts";
import { awBand, compose, waterActivity } from "../lib/composition.ts";
import { daysBetween, localDay } from "../lib/days.ts";
import { counted, plain } from "../lib/show.ts";
import { fahrenheit } from "../lib/units.ts";
import { behind } from "../lib/when.ts";
import { answerDays, answerFreezer } from "./days.ts";
import { posted, serving } from "./handing.ts";
import type { KeepInputs } from "./keep.ts";
import { maturing } from "./maturing.ts";
import { isTooLong, outOfFridge } from "./outside.ts";

/** @throws never: days that can't be come back as `impossible`, a missing one as `asking`. */
export function answerKeep(inputs: KeepInputs, world: World): Outcome {
  const outcome = withFilling(answerFor(inputs, world), inputs.lines);
  if (outcome.status === "asking") return outcome;
  const fresh =
    inputs.dairy && ["fridge", undefined].includes(inputs.about)
      ? [
          `With fresh dairy or curd in it ${inFridge.days} days is the outer limit of anything kept cold; many keep such fillings ${freshDairy.low} to ${freshDairy.high} days (${freshDairy.basis}).`,
        ]
      : [];
  return { ...outcome, cautions: [...(outcome.cautions ?? []), ...fresh, keepingCaution] };
}

/**
 * What the filling is made of, beside the answer: its water activity by the book's formula, an estimate that errs
 * toward perishable and by itself never clears a filling.
 */
function withFilling(outcome: Outcome, lines: KeepInputs["lines"]): Outcome {
  const sum = lines && compose(lines);
  const aw = sum && sum.unknown.length === 0 ? waterActivity(sum) : undefined;
  if (outcome.status !== "answered" || aw === undefined) return outcome;
  const side =
    Math.abs(aw - activity.line) <= awBand
      ? "on the published line of 0.85, which an estimate alone doesn't clear"
      : aw > activity.pHLine
        ? "above both published lines, 0.85 and 0.88"
        : "between the published lines, 0.85 and 0.88";
  return {
    ...outcome,
    headline: `${outcome.headline}. Its water activity is about ${aw.toFixed(2)} (± ${awBand}, an estimate): ${side}, so keep it cold`,
    figures: [
      ...(outcome.figures ?? []),
      { name: "aw", value: aw, low: aw - awBand, high: aw + awBand, unit: "aw" },
    ],
    cautions: [
      ...(outcome.cautions ?? []),
      "A measurement, not an estimate, and your authority decide whether a filling may stand out.",
    ],
  };
}

function answerFor(inputs: KeepInputs, world: World): Outcome {
  const ofDays = ["fridge", undefined].includes(inputs.about);
  const ofThem =
    ofDays ||
    inputs.about === "post" ||
    inputs.about === "serve" ||
    (inputs.about === "freezer" && inputs.freezer_c === undefined);
  // neither a day nor the cold makes good what was out too long
  if (ofThem && !inputs.out_asked && isTooLong(inputs, world)) return outOfFridge(inputs, world);
  const isTimed = inputs.out_min !== undefined || inputs.out_since !== undefined;
  if (ofDays && inputs.hot && !isTimed && inputs.still)
    return asking("How long were they out of the fridge, all spells together?", "out_min");
  switch (inputs.about) {
    case "outside":
      return outOfFridge(inputs, world);
    case "freezer":
      return inputs.freezer_c === undefined ? answerFreezer(inputs, world) : freezerAt(inputs.freezer_c);
    case "thaw":
      return thawing;
    case "cold":
      return cold(inputs);
    case "eggs":
      if (inputs.degrees !== undefined)
        return asking(`Is that ${plain(inputs.degrees, 1)} °C or °F?`, "degrees");
      return inputs.air_c === undefined ? rawEgg : heated(inputs.air_c, inputs.fahrenheit);
    case "whites":
      return rawEggKept(inputs, world);
    case "shelf stable":
      return shelfStable;
    case "activity":
      return activityLines(inputs);
    case "spoiled":
      return spoiled;
    case "again":
      return {
        status: "declined",
        headline:
          "There is no rule here for freezing them twice, so I give none. Freeze only what you won't eat, and thaw it once.",
      };
    case "post":
      return posted();
    case "serve":
      return serving(world);
    case "matured":
      return maturing(inputs, world);
    case "shells":
      return {
        status: "declined",
        headline:
          "There is no rule here for shells without a filling, so I give no number of days. Filled ones keep 7 days in the fridge.",
      };
    default:
      return answerDays(inputs, world);
  }
}

const spoiled: Outcome = {
  status: "answered",
  headline:
    "No: throw them out, whatever the date says. Mould, slime, a sour or strange smell mean that the filling has gone off; don't taste it to find out",
  rule: keepingRules.inFridge,
  cautions: ["What spoils doesn't always show: no smell is no proof that they are good."],
};

const thawing: Outcome = {
  status: "answered",
  headline:
    "In the closed box in the fridge; open it only when they are no longer colder than the room, so that no water settles on them",
  rule: keepingRules.frozen,
  cautions: ["Thawing starts the 7 days again where freezing stopped them."],
};

function cold(inputs: KeepInputs): Outcome {
  const limit = [
    { name: "fridge", value: fridge.limit_c, unit: "°C" },
    { name: "fridge", value: fridge.limit_f, unit: "°F" },
  ];
  const base = { status: "answered" as const, figures: limit, rule: keepingRules.fridge };
  if (inputs.air_c === undefined)
    return { ...base, headline: `${fridge.limit_c} °C (${fridge.limit_f} °F) or below` };
  const shown = `${plain(inputs.air_c, 1)} °C (${plain(fahrenheit(inputs.air_c), 0)} °F)`;
  const warm = inputs.fahrenheit
    ? fahrenheit(inputs.air_c) > fridge.limit_f + 1e-9
    : inputs.air_c > fridge.limit_c;
  return {
    ...base,
    headline: warm
      ? `Not cold enough: ${shown} is above ${fridge.limit_c} °C (${fridge.limit_f} °F). Time spent there counts as out of the fridge: ${outside.limit_h} h in all, a night is too long`
      : `Cold enough: ${shown} is at or below ${fridge.limit_c} °C (${fridge.limit_f} °F)`,
  };
}

/** A freezer's own cold against the rule's. */
function freezerAt(told_c: number): Outcome {
  const shown = `${plain(told_c, 1)} °C (${plain(fahrenheit(told_c), 0)} °F)`.replaceAll("-", "−");
  const line = `${plain(frozen.at_c).replace("-", "−")} °C (${frozen.at_f} °F)`;
  return {
    status: "answered",
    headline:
      told_c > frozen.at_c + 0.25
        ? `Not cold enough: ${shown} is warmer than ${line}; the ${frozen.months} months hold only at ${line} or below`
        : `Cold enough: ${shown} is ${line} or below; airtight, best within ${frozen.months} months`,
    figures: [
      { name: "freezer", value: frozen.at_c, unit: "°C" },
      { name: "freezer", value: frozen.at_f, unit: "°F" },
      { name: "frozen", value: frozen.months, unit: "months" },
    ],
    rule: keepingRules.frozen,
  };
}

const rawEgg: Outcome = {
  status: "answered",
  headline: `Not as they are: use pasteurised whites, or heat whites and sugar to ${eggs.safe_c} °C (${eggs.safe_f} °F) while stirring`,
  figures: [
    { name: "whites", value: eggs.safe_c, unit: "°C" },
    { name: "whites", value: eggs.safe_f, unit: "°F" },
  ],
  rule: keepingRules.eggs,
  cautions: ["Raw egg is a risk above all to children, the old, the pregnant and the sick."],
};

/** "i heated the whites only to 60": under the line or over it. */
function heated(told_c: number, said_f: boolean | undefined): Outcome {
  const told = said_f
    ? `${plain(fahrenheit(told_c), 0)} °F (${plain(told_c, 1)} °C)`
    : `${plain(told_c, 1)} °C`;
  const isSafe = told_c >= eggs.safe_c - 1e-9;
  return {
    ...rawEgg,
    headline: isSafe
      ? `Yes: ${told} is the ${eggs.safe_c} °C (${eggs.safe_f} °F) that whites need, or over it`
      : `No: ${told} is under the ${eggs.safe_c} °C (${eggs.safe_f} °F) that whites need. Heat them on while stirring, or use pasteurised whites`,
  };
}

/** Raw whites or yolks in the fridge: the published days, and where the ones asked about stand in them. */
function rawEggKept({ old_days, made, yolks }: KeepInputs, world: World): Outcome {
  const since = made && behind(made, world.now_ms);
  if (since && !since.ok) return { status: "impossible", headline: since.why };
  const days = old_days ?? (since ? daysBetween(since.day, localDay(world.now_ms)) : undefined);
  const row = yolks ? rawYolks : rawWhites;
  const span = `${row.low} to ${row.high} days in the fridge, covered, at ${fridge.limit_c} °C (${fridge.limit_f} °F) or below`;
  const age = days === undefined ? "" : days < 1 ? "today's" : counted(days, "day");
  return {
    status: "answered",
    headline:
      days === undefined
        ? yolks
          ? `Raw yolks: ${span}; they don't freeze well`
          : `Raw whites: ${span}; ${rawWhites.months} months in the freezer`
        : days <= row.high
          ? `Yes: ${age} is inside the ${span}`
          : `No: ${age} is past the ${span}. Throw them out`,
    figures: [
      { name: yolks ? "raw yolks" : "raw whites", low: row.low, high: row.high, unit: "d" },
      ...(yolks ? [] : [{ name: "raw whites frozen", value: rawWhites.months, unit: "months" }]),
    ],
    rule: yolks ? keepingRules.yolks : keepingRules.whites,
    cautions: [
      `Kept ${yolks ? "yolks are still raw: use them in what is cooked, heated to" : "whites are still raw: heat whites and sugar to"} ${eggs.safe_c} °C (${eggs.safe_f} °F) while stirring${yolks ? "" : " for a buttercream"}, or use pasteurised ones.`,
    ],
  };
}

const shelfStable: Outcome = {
  status: "answered",
  headline:
    "No: a shelf-stable flavor doesn't make a filling shelf-stable. Keep filled macarons at 5 °C (41 °F) or below, out for 2 h at most",
  figures: [
    { name: "fridge", value: fridge.limit_c, unit: "°C" },
    { name: "out of the fridge", value: outside.limit_h, unit: "h" },
  ],
  rule: {
    ...keepingRules.fridge,
    text: `${keepingRules.fridge.text}; ${keepingRules.outside.text}`,
    source: `${fridge.source}; ${outside.source}`,
  },
};

/** A measured value against the two published lines. Below them it is still no licence. */
function activityLines({ aw }: KeepInputs): Outcome {
  if (aw === undefined)
    return {
      status: "asking",
      headline: "What is its water activity, between 0 and 1?",
      question: "What is its water activity, between 0 and 1?",
      slot: "aw",
    };
  const side =
    aw > activity.pHLine
      ? "above both lines, 0.85 and 0.88"
      : aw > activity.line
        ? "above 0.85, not above 0.88 (the line at a pH above 5)"
        : "not above either line, 0.85 and 0.88";
  return {
    status: "answered",
    headline:
      aw > activity.line
        ? `Perishable: ${plain(aw)} is ${side}. Keep it cold`
        : `${plain(aw)} is ${side}; that alone doesn't clear it to stand out: a laboratory's measurement and your authority decide`,
    figures: [{ name: "aw", value: aw, unit: "aw" }],
    rule: keepingRules.activity,
  };
}
