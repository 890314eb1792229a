/** A time that was told beside the one its step takes: too long, too short, or right. */
import { methodRows } from "../../../data/rules/methods.ts";
import { longestStand_min } from "../../../data/rules/step-times.ts";
import type { Bench, Outcome } from "../contract/index.ts";
import { asking } from "../lib/asking.ts";
import { lengthText } from "../lib/days.ts";
import { plain } from "../lib/show.ts";

const own = { bake: "bake_min", rest: "rest_min" } as const;
/** What it does to shells; from memory. */
const effects = {
  bake: {
    over: "Baked too long they brown and dry out.",
    under: "Baked too short they stay soft and stick to the mat.",
  },
  rest: {
    over: "A finger that comes away clean is the sign, whatever the clock says.",
    under: "Shells that still stick to a finger crack in the oven; the no-rest method needs none.",
  },
} as const;

/** @throws never: without a step it asks which one */
export function judgeTime(judge_min: number, step: "bake" | "rest" | undefined, bench: Bench): Outcome {
  if (step === undefined) return asking("Which step is that: resting or baking?", "step");
  const row = methodRows.find(({ id }) => id === step);
  const time = row?.figures?.find(({ unit }) => unit === "min");
  const { value = 0, low = value, high = value } = time ?? {};
  const hers = bench[own[step]];
  const said = lengthText(judge_min);
  const range = `the ${plain(low)}-${plain(high)} min that ${step === "bake" ? "shells bake" : "shells rest"}`;
  const side = judge_min > high ? "over" : judge_min < low ? "under" : undefined;
  const verdict =
    side === "over"
      ? `${said} is ${lengthText(judge_min - high)} past ${range}`
      : side === "under"
        ? `${said} is ${lengthText(low - judge_min)} short of ${range}`
        : `${said} is within ${range}`;
  const dried =
    step === "rest" && judge_min > longestStand_min.value
      ? [`After ${plain(longestStand_min.value / 60)} h in the open they have dried through (from memory).`]
      : [];
  return {
    status: "answered",
    headline: `${verdict}${hers === undefined ? "" : `; yours is ${plain(hers)} min`}`,
    figures: time ? [{ ...time }] : [],
    rule: { text: row?.headline ?? "", basis: row?.basis ?? "common practice" },
    ...(step === "bake" ? { assumed: ["shells of 38 mm"] } : {}),
    cautions: [...(side ? [effects[step][side]] : []), ...dried],
  };
}
