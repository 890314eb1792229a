/** An answer as lines: what is said, in which order, how loud. Pure; the view only colors it. */
import type { Answer, Rule } from "../../tools/contract/index.ts";
import { figureLines } from "./figures.ts";
import { itemLines } from "./items.ts";
import { drawn, type Signs } from "./signs.ts";
import { stepLines } from "./steps.ts";
import { printable } from "./text.ts";
import type { Line, Tone } from "./tones.ts";
import { type Margin, wrapped } from "./wrap.ts";

const detail: Margin = { first: "  ", rest: "    " };
const sum: Margin = { first: "    ", rest: "      " };

/**
 * The lines of one answer at a terminal's width, the headline first, each part quieter than the one before.
 * @param columns cells in a line; from about 20 on it reads well
 * @param signs what charts are drawn with
 */
export function answerLines(answer: Answer, columns: number, signs: Signs = drawn): Line[] {
  const { headline, question } = answer;
  // the list of an order says every weight beside what it is of
  const figures = answer.tool === "day" && answer.items?.length ? [] : (answer.figures ?? []);
  const said = (text: string, tone: Tone, margin: Margin = detail): Line[] =>
    wrapped(printable(text), columns, margin).map((line) => ({ text: line, tone }));
  const as = (tone: Tone) => (text: string) => ({ text, tone });
  return [
    ...said(headline, "headline", { first: "", rest: "" }),
    ...figureLines(figures, headline, columns).map(as("figure")),
    ...itemLines(answer.items ?? [], columns).map(as("item")),
    ...stepLines(answer.steps ?? [], columns, signs).map(as("step")),
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
