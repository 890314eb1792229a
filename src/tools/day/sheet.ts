/** A batch sheet for the wall: weights to tick off, the day's steps, timers, room for notes. */
import type { Outcome, Paper, PaperBlock, Rule, World } from "../contract/index.ts";
import type { DayOrder, DayPlan, DayStep } from "../day-plan/index.ts";
import { planDay, wallText } from "../day-plan/index.ts";
import { friendly, lengthText, localDay, shortDay } from "../lib/days.ts";
import { paperFor } from "../lib/paper-size.ts";
import { printablePaper } from "../lib/printable.ts";
import { capital, counted, weight } from "../lib/show.ts";
import { answerMethod } from "../method/answer.ts";
import type { DayInputs } from "./day.ts";
import { planRule } from "./making.ts";
import { type Sized, sizedOrder } from "./sizes.ts";

const msOf = (seconds: number) => new Date(wallText(seconds)).getTime();

/** Reads "almond flour 140 g" as its name and its weight. */
function lineOf(text: string): string[] {
  const parts = /^(.+?) (\d.*)$/.exec(text);
  return parts ? [parts[1] ?? text, parts[2] ?? "", ""] : [text, "", ""];
}

function weights({ items, figures }: Sized, world: World): PaperBlock[] {
  const eggs = figures.find((each) => each.name === "eggs")?.value;
  return items.flatMap((item): PaperBlock[] => {
    if (item.part === "to buy") return [];
    const crack = item.part === "batter" && eggs ? `, ${counted(eggs, "egg")} to crack in all` : "";
    const grams = typeof item.grams === "number" ? `${weight(item.grams, world.bench.scale_g)} g` : "";
    const rows = Array.isArray(item.of) ? item.of.map(lineOf) : [];
    const heading: PaperBlock = {
      is: "heading",
      text: `${capital(String(item.part))} ${grams}: ${item.what ?? ""}${crack}`,
    };
    const columns = [
      { title: "", share: 4 },
      { title: "", share: 2, right: true },
      { title: "", share: 4 },
    ];
    return rows.length ? [heading, { is: "table", ticked: true, columns, rows }] : [heading];
  });
}

const lengthOf = ({ start, end }: DayStep) => lengthText((end - start) / 60);

/** "26 h 53 min": hours alone, since nobody adds days to a clock. */
function afterText(seconds: number): string {
  const minutes = Math.round(seconds / 60);
  const [hours, rest] = [Math.floor(minutes / 60), minutes % 60];
  const parts = [...(hours ? [`${hours} h`] : []), ...(rest ? [`${rest} min`] : [])];
  return parts.join(" ") || "start";
}

/** The steps day by day, by the clock; without an hour by how long after the start, with room for the clock. */
function steps(plan: DayPlan, timed: boolean): PaperBlock[] {
  if (!timed)
    return [
      { is: "heading", text: "Steps, from the start" },
      {
        is: "table",
        ticked: true,
        columns: [
          { title: "After", share: 2 },
          { title: "At", share: 2 },
          { title: "Step", share: 5 },
          { title: "Takes", share: 2, right: true },
        ],
        rows: plan.steps.map((step) => [
          afterText(step.start - plan.start),
          "",
          nameOf(step),
          lengthOf(step),
        ]),
      },
    ];
  const days = [...new Set(plan.steps.map((step) => wallText(step.start).slice(0, 10)))];
  return days.flatMap((day): PaperBlock[] => [
    { is: "heading", text: shortDay(day) },
    {
      is: "table",
      ticked: true,
      columns: [
        { title: "From", share: 2 },
        { title: "To", share: 3 },
        { title: "Step", share: 6 },
        { title: "Takes", share: 2, right: true },
      ],
      rows: plan.steps
        .filter((step) => wallText(step.start).startsWith(day))
        .map((step) => [clockOf(step.start), endOf(step, day), nameOf(step), lengthOf(step)]),
    },
  ]);
}

const clockOf = (seconds: number) => wallText(seconds).slice(11, 16);

function endOf({ end }: DayStep, day: string): string {
  const other = wallText(end).slice(0, 10);
  return other === day ? clockOf(end) : `${shortDay(other)} ${clockOf(end)}`;
}

const nameOf = (step: DayStep) => (step.hands ? step.name : `${step.name} (by itself)`);

/** More trays than this share a line. */
const mostTrays = 4;

function timers({ settings, trays = 1, fillings }: DayOrder, world: World): PaperBlock[] {
  const each = (what: string, minutes: number): string[][] =>
    minutes <= 0
      ? []
      : trays > mostTrays
        ? [[`${what} each tray`, lengthText(minutes), ""]]
        : Array.from({ length: trays }, (_, n) => [`${what} tray ${n + 1}`, lengthText(minutes), ""]);
  return [
    { is: "heading", text: "Timers" },
    {
      is: "table",
      columns: [
        { title: "For", share: 4 },
        { title: "Set to", share: 2 },
        { title: "Rings at", share: 3 },
      ],
      rows: [
        ...each("Rest", settings.noRest ? 0 : settings.rest),
        ...each("Bake", settings.bake),
        ...(settings.cool > 0 ? [["Cool", lengthText(settings.cool), ""]] : []),
        ...fillings
          .filter(({ setMin }) => setMin > 0)
          .map(({ name, setMin }) => [`${name} sets`, lengthText(setMin), ""]),
        ...(settings.mature > 0 ? [["Mature", `${lengthText(settings.mature)} at least`, ""]] : []),
      ],
    },
    { is: "text", text: `Oven: ${answerMethod({ step: "bake" }, world).headline}` },
  ];
}

const basisOf = ({ text, basis }: Rule) => `${text} (${basis})`;

interface Whole {
  inputs: DayInputs;
  order: DayOrder;
  plan: DayPlan;
  sized: Sized;
  /** "for Sun 15 Mar 15:00", or nothing where no hour was said. */
  due?: string;
  assumed: readonly string[];
  cautions: readonly string[];
}

function sheetOf({ inputs, order, plan, sized, due, assumed, cautions }: Whole, world: World): Outcome {
  const { size, assumed: onPaper } = paperFor(inputs.paper, world.bench);
  const what = `${counted(order.macarons, "macaron")}${due ? `, ready ${due}` : ""}`;
  const lengths = planRule(order, world);
  // begun at any hour, it knows of no night
  const rule = due ? lengths : { ...lengths, text: lengths.text.replace(/, none between .*$/, "") };
  const all = [
    ...assumed,
    ...sized.assumed.filter((each) => each !== "flavor and color not on the list to buy"),
  ];
  const whole: Paper = {
    title: `Batch sheet: ${what}`,
    size,
    made_ms: world.now_ms,
    blocks: [
      { is: "title", text: capital(what) },
      ...weights(sized, world),
      ...steps(plan, due !== undefined),
      ...timers(order, world),
      { is: "blank", caption: "Notes", lines: 3 },
      { is: "small", text: `Weights: ${sized.rule}. Lengths: ${basisOf(rule)}.` },
      ...(all.length ? [{ is: "small" as const, text: `Assumed: ${all.join("; ")}.` }] : []),
      { is: "small", text: cautions.join(" ") },
    ],
  };
  const { paper, cautions: missing } = printablePaper(whole);
  return {
    status: "answered",
    headline: `A batch sheet for ${what}, as a PDF`,
    figures: sized.figures,
    items: sized.items,
    rule: { text: `${rule.text}; ${sized.rule}`, basis: sized.own ? "your bench" : rule.basis },
    assumed: [...all, ...onPaper],
    cautions: [...missing, ...cautions],
    effects: [
      { do: "write file", name: `batch-${localDay(due ? msOf(plan.start) : world.now_ms)}.pdf`, paper },
    ],
  };
}

/** A plan's answer as a sheet; what the plan keeps in the record stays with it. */
export function onSheet(
  base: Outcome,
  inputs: DayInputs,
  order: DayOrder,
  plan: DayPlan,
  world: World,
): Outcome {
  const sized = sizedOrder(inputs, order.macarons, order.trays ?? 1, world);
  if ("status" in sized) return sized;
  const { effects = [], change, leaves } = base;
  const cautions = [...new Set([...(base.cautions ?? []), ...sized.cautions])];
  const due = friendly(msOf(plan.ready), Number.NEGATIVE_INFINITY);
  // whose plan it is, where the sentence names none
  const assumed = [
    ...(inputs.as_kept ? [`your kept plan for ${due}; say a number for another order`] : []),
    ...(base.assumed ?? []),
  ];
  const sheet = sheetOf({ inputs, order, plan, sized, due, assumed, cautions }, world);
  return {
    ...sheet,
    effects: [...effects, ...(sheet.effects ?? [])],
    ...(change ? { change } : {}),
    ...(leaves ? { leaves } : {}),
  };
}

/** No hour was said: the steps count from whenever it is begun, at any hour of the day. */
export function undatedSheet(inputs: DayInputs, order: DayOrder, world: World): Outcome {
  const sized = sizedOrder(inputs, order.macarons, order.trays ?? 1, world);
  if ("status" in sized) return sized;
  const settings = { ...order.settings, awake: { from: 0, to: 1440 } };
  const plan = planDay({ ...order, settings });
  if (!plan.fits)
    return {
      status: "impossible",
      headline: "That many can't be planned without an hour; say when they are due.",
    };
  const assumed = [
    ...(inputs.fillings ? [] : ["one ganache and one buttercream"]),
    ...(inputs.diameter_mm === undefined && world.bench.diameter_mm === undefined ? ["38 mm shells"] : []),
    ...(world.bench.spare_percent === undefined ? ["10 % spare shells"] : []),
    "no hour was said, so the steps count from the start",
  ];
  const cautions = [
    ...sized.cautions,
    "Keep them at 5 °C (41 °F) or below until they are boxed; your local food authority has the last word.",
  ];
  const outcome = sheetOf({ inputs, order, plan, sized, assumed, cautions }, world);
  return { ...outcome, leaves: { macarons: order.macarons } };
}
