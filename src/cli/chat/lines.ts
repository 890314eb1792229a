/** An answer as lines: what is said, in which order, how loud. Pure; the view only colors it. */
import type { Answer, DayStep, Rule } from "../../tools/contract/index.ts";
import { figureLines } from "./figures.ts";
import { itemLines } from "./items.ts";
import { dayOf, timeOf } from "./moments.ts";
import { printable, width } from "./text.ts";
import type { Line, Tone } from "./tones.ts";
import { type Margin, wrapped } from "./wrap.ts";

const detail: Margin = { first: "  ", rest: "    " };
const sum: Margin = { first: "    ", rest: "      " };

/**
 * The lines of one answer at a terminal's width, the headline first, each part quieter than the one before.
 * @param columns cells in a line; from about 20 on it reads well
 */
export function answerLines(answer: Answer, columns: number): Line[] {
  const { headline, question } = answer;
  const said = (text: string, tone: Tone, margin: Margin = detail): Line[] =>
    wrapped(printable(text), columns, margin).map((line) => ({ text: line, tone }));
  const as = (tone: Tone) => (text: string) => ({ text, tone });
  return [
    ...said(headline, "headline", { first: "", rest: "" }),
    ...figureLines(answer.figures ?? [], headline, columns).map(as("figure")),
    ...itemLines(answer.items ?? [], columns).map(as("item")),
    ...stepLines(answer.steps ?? [], columns).map(as("step")),
    // The sum is long; it is there when she asks why.
    ...(answer.tool === "explain" ? (answer.working ?? []) : []).flatMap((line) => said(line, "plain", sum)),
    ...(answer.rule ? said(`Rule: ${answer.rule.text} (${basisOf(answer.rule)})`, "rule") : []),
    ...(answer.assumed?.length ? said(`Assumed: ${answer.assumed.join("; ")}`, "assumed") : []),
    ...(answer.cautions ?? []).flatMap((text) =>
      said(`Caution: ${text}`, "caution", { first: "! ", rest: "    " }),
    ),
    ...(question && question !== headline ? said(question, "question") : []),
  ];
}

const basisOf = (rule: Rule) => (rule.source ? `${rule.basis}: ${rule.source}` : rule.basis);

/** A day worked back: the day named where it changes, then time, whose hands, what. */
function stepLines(steps: readonly DayStep[], columns: number): string[] {
  let day = "";
  return steps.flatMap((step) => {
    const lines = dayOf(step.start) === day ? [] : [`  ${dayOf(step.start)}`];
    day = dayOf(step.start);
    const first = `  ${timeOf(step.start)} to ${timeOf(step.end)}  ${step.hands ? "hands" : "waits"}  `;
    return [...lines, ...wrapped(printable(step.name), columns, { first, rest: " ".repeat(width(first)) })];
  });
}
