/** "How did you read that?": each piece of a sentence in its order, what it was taken for, and the inputs it made. */
import { inputMarks, inputNames } from "../../data/words/inputs-told.ts";
import type { Amount, Reading, Thing, When } from "../tools/contract/index.ts";
import type { Step } from "./follow/step.ts";

const facets = [
  ["base", ""],
  ["ingredient", "the ingredient "],
  ["dose", "dosed as "],
  ["taste", "the taste "],
  ["chocolate", "chocolate: "],
  ["use", "to be "],
  ["count", "counted in "],
  ["step", "the step "],
  ["symptom", "the fault "],
  ["color", "the color "],
  ["unit", "the unit "],
  ["manner", "measured "],
  ["formula", "your recipe "],
] as const;

/** Six digits: what binary arithmetic leaves behind is nobody's business. */
const short = (value: number) => String(Number(value.toPrecision(6)));

function amount({ dim, value, high, unit, of, per }: Amount): string {
  const number = high === undefined ? short(value) : `${short(value)} to ${short(high)}`;
  const each = per ? ` for ${short(per.value)} ${per.unit}` : "";
  const kind = unit === "times" ? "factor" : dim;
  return (
    `${kind}, ${number} ${unit}`.trim() + each + (of ? ` of ${of.base ?? of.ingredient ?? of.text}` : "")
  );
}

function thing(found: Thing): string {
  const said = facets.flatMap(([name, before]) => (found[name] ? [`${before}${found[name]}`] : []));
  return said.join(", ") || found.id;
}

const two = (value: number) => String(value).padStart(2, "0");
const weekdays = ["Sunday", "Monday", "Tuesday", "Wednesday", "Thursday", "Friday", "Saturday"];

function moment({ days, weekday, which, day, month, year, minute, part }: When): string {
  const pieces = [
    days === undefined ? "" : days === 0 ? "today" : `${Math.abs(days)} d ${days < 0 ? "back" : "ahead"}`,
    weekday === undefined ? "" : `${which ? `${which} ` : ""}${weekdays[weekday] ?? ""}`,
    [year, month === undefined ? undefined : two(month), day === undefined ? undefined : two(day)]
      .filter((each) => each !== undefined)
      .join("-"),
    minute === undefined ? "" : `${two(Math.floor(minute / 60) % 24)}:${two(Math.round(minute % 60))}`,
    part ?? "",
  ].filter(Boolean);
  return `a moment, ${pieces.join(" ") || "as said"}`;
}

const units: Readonly<Record<string, string>> = { g: "g", mm: "mm", min: "min", h: "h", c: "°C", pct: "%" };

/** "base_g" and 230 as "base: 230 g"; lists by their length; a mark by its words, or not at all. */
function input(name: string, value: unknown): string | undefined {
  if (typeof value === "boolean") return value ? inputMarks.get(name) : undefined;
  const mark = inputMarks.get(name);
  // which plan or note it is, by the record's own number: only that one is meant is worth a word
  if (typeof value === "number" && (mark !== undefined || value >= firstMoment)) return mark;
  const [, plain = name, unit = ""] = /^(.*?)(?:_(g|mm|min|h|c|pct))?$/.exec(name) ?? [];
  const said =
    typeof value === "number"
      ? `${short(value)} ${units[unit] ?? ""}`.trim()
      : Array.isArray(value)
        ? `${value.length} of them`
        : typeof value === "object"
          ? inside(value)
          : String(value);
  if (said === undefined) return undefined;
  return `${inputNames.get(name) ?? inputNames.get(plain) ?? plain.replaceAll("_", " ")}: ${said}`;
}

/** A moment in ms, and no amount: nothing on a bench comes to so much. */
const firstMoment = 1e11;

/** When it is; what else is put together has its pieces in the sentence above. */
const inside = (value: object | null): string | undefined =>
  isWhen(value) ? moment(value).replace(/^a moment, /, "") : undefined;

const isWhen = (value: unknown): value is When =>
  typeof value === "object" &&
  value !== null &&
  ["days", "weekday", "day", "minute", "part"].some((key) => key in value);

/** Where an input came from: no moment and no plan was said where the sentence has none. */
function sourceOf(from: string, value: unknown, { whens, amounts }: Reading, ofPlan: boolean): string {
  const isUnsaid = isWhen(value)
    ? whens.length === 0
    : typeof value === "number" && (value >= firstMoment || (ofPlan && amounts.length === 0));
  return from === "said" && isUnsaid ? "from your record" : from;
}

/** One line a piece, in the order of the sentence; then, where a calculator took it, whose it is and a line an input. Pure. */
export function told(reading: Reading, step?: Pick<Step, "tool" | "inputs" | "known">): string[] {
  const pieces = [
    ...reading.amounts.map((each) => ({ text: each.text, at: each.at[0], as: amount(each) })),
    ...reading.things.map((each) => ({ text: each.text, at: each.at[0], as: thing(each) })),
    ...reading.whens.map((each) => ({ text: each.text, at: each.at[0], as: moment(each) })),
  ].sort((a, b) => a.at - b.at);
  return [
    ...reading.mended.map(({ said, read, either }) =>
      either ? `"${said}": ${either.join(" or ")}, I can't tell` : `"${said}": a slip for "${read}"`,
    ),
    ...(reading.beside ?? []).map(({ said, is }) => `"${said}": ${is}, told beside the question`),
    ...pieces.map(({ text, as }) => `"${text}": ${as}`),
    ...reading.unknown.map((word) => `"${word}": not known`),
    ...(step ? [`a question for ${step.tool.name}`] : []),
    ...Object.entries(step?.known ?? {})
      .filter(([name]) => step?.inputs[name] !== undefined)
      .flatMap(([name, from]) => {
        const said = input(name, step?.inputs[name]);
        return said === undefined
          ? []
          : [
              `for ${step?.tool.name}, ${said} (${sourceOf(from, step?.inputs[name], reading, step?.inputs.plan !== undefined)})`,
            ];
      }),
  ];
}
