/** The blocks of a batch sheet: weights to tick off, the day's steps, the timers to set. */
import type { PaperBlock, World } from "../contract/index.ts";
import { type DayOrder, type DayPlan, type DayStep, wallText } from "../day-plan/index.ts";
import { lengthText, shortDay } from "../lib/days.ts";
import { capital, counted, weight } from "../lib/show.ts";
import { answerMethod } from "../method/answer.ts";
import type { Sized } from "./sizes.ts";

/** Reads "almond flour 140 g" as its name and its weight. */
function lineOf(text: string): string[] {
  const parts = /^(.+?) (\d.*)$/.exec(text);
  return parts ? [parts[1] ?? text, parts[2] ?? "", ""] : [text, "", ""];
}

export function weights({ items, figures }: Sized, world: World): PaperBlock[] {
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
export function steps(plan: DayPlan, timed: boolean): PaperBlock[] {
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

/** More trays than this share a line, so that the timers stay a short list. */
const mostTrays = 4;

export function timers({ settings, trays = 1, fillings }: DayOrder, world: World): PaperBlock[] {
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
