/** Keeps count for what was said. Every answer ends by deferring to the local food authority. */
import { freshDairy, fridge, inFridge, keepingRules, outside } from "../../../data/rules/keeping.ts";
import type { Outcome, World } from "../contract/index.ts";
import { asking } from "../lib/asking.ts";
import { keepingCaution, maturedCaution } from "../lib/care.ts";
import { activityLines, withFilling } from "./activity.ts";
import { cold, freezerAt, thawing } from "./cold.ts";
import { answerDays } from "./days.ts";
import { forTheFrail, rawEgg, rawEggKept } from "./eggs.ts";
import { answerFreezer } from "./freezer.ts";
import { posted, serving } from "./handing.ts";
import { heatUndoesNothing } from "./heating-said.ts";
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
  const heated = inputs.reheat && inputs.about === "outside" ? [heatUndoesNothing] : [];
  const last = inputs.about === "matured" ? maturedCaution : keepingCaution;
  return { ...outcome, cautions: [...(outcome.cautions ?? []), ...heated, ...fresh, last] };
}

type Answer = (inputs: KeepInputs, world: World) => Outcome;

const answers: Readonly<Record<NonNullable<KeepInputs["about"]>, Answer>> = {
  fridge: answerDays,
  outside: outOfFridge,
  freezer: (inputs, world) =>
    inputs.freezer_c === undefined ? answerFreezer(inputs, world) : freezerAt(inputs.freezer_c),
  thaw: () => thawing,
  cold,
  eggs: rawEgg,
  frail: () => forTheFrail,
  whites: rawEggKept,
  "shelf stable": () => shelfStable,
  activity: activityLines,
  shells: () => ({
    status: "declined",
    headline:
      "There is no rule here for shells without a filling, so I give no number of days. Filled ones keep 7 days in the fridge.",
  }),
  again: () => ({
    status: "declined",
    headline:
      "There is no rule here for freezing them twice, so I give none. Freeze only what you won't eat, and thaw it once.",
  }),
  spoiled: () => spoiled,
  serve: (_, world) => serving(world),
  matured: maturing,
  post: posted,
};

/** What is in question is them as they are, whatever else is asked of it. */
const ofThem: readonly KeepInputs["about"][] = ["fridge", "post", "serve", "freezer"];

function answerFor(inputs: KeepInputs, world: World): Outcome {
  const { about = "fridge", freezer_c, out_asked } = inputs;
  // neither a day nor the cold makes good what was out too long
  const isThem = ofThem.includes(about) && (about !== "freezer" || freezer_c === undefined);
  if (isThem && !out_asked && isTooLong(inputs, world)) return outOfFridge(inputs, world);
  const isTimed = inputs.out_min !== undefined || inputs.out_since !== undefined;
  if (about === "fridge" && inputs.hot && !isTimed && inputs.still)
    return asking("How long were they out of the fridge, all spells together?", "out_min");
  return answers[about](inputs, world);
}

const spoiled: Outcome = {
  status: "answered",
  headline:
    "No: throw them out, whatever the date says. Mould, slime, a sour or strange smell mean that the filling has gone off; don't taste it to find out",
  rule: keepingRules.inFridge,
  cautions: ["What spoils doesn't always show: no smell is no proof that they are good."],
};

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
