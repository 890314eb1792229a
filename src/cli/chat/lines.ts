/** An answer as lines: what is said, in which order, how loud. Pure; the view only colors it. */
import type { Answer, Item, Rule } from "../../tools/contract/index.ts";
import { answerInAscii, inAscii } from "../ascii.ts";
import { figureLines } from "./figures.ts";
import { listLines, saysRule } from "./item-kinds.ts";
import { plotLines } from "./plots/plots.ts";
import { ascii, drawn, type Signs } from "./signs.ts";
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
 * @param still for screen readers: no plots, and a day as a list; every number of them is in the words
 */
export function answerLines(answer: Answer, columns: number, signs: Signs = drawn, still = false): Line[] {
  if (signs !== ascii) return linesOf(answer, columns, signs, still);
  // Before the lines are laid out, since some signs take more room; after it for what the layout itself writes.
  return linesOf(answerInAscii(answer), columns, signs, still).map((line) => ({
    ...line,
    text: inAscii(line.text),
  }));
}

function linesOf(answer: Answer, columns: number, signs: Signs, still: boolean): Line[] {
  const { question, items = [] } = answer;
  const headline = headlineOf(answer);
  // the list of an order says every weight beside what it is of, a note's row all of its numbers, causes their own
  const inList =
    saysRule(items) ||
    (items.length > 0 && (answer.tool === "day" || (answer.tool === "recall" && items.length === 1)));
  // what a change does to the water activity stands in the list, change by change
  const figures = inList ? [] : (answer.figures ?? []).filter(({ name }) => !name.startsWith("aw, "));
  const said = (text: string, tone: Tone, margin: Margin = detail): Line[] =>
    wrapped(printable(text), columns, margin).map((line) => ({ text: line, tone }));
  const as = (tone: Tone) => (text: string) => ({ text, tone });
  return [
    ...said(headline, "headline", { first: "", rest: "" }),
    ...figureLines(figures, headline, columns).map(as("figure")),
    ...(still ? [] : plotLines(answer, columns, signs)).map(as("step")),
    ...listLines(items, columns),
    ...stepLines(answer.steps ?? [], columns, signs, still).map(as("step")),
    // The sum is long; it is there when she asks why.
    ...(answer.tool === "explain" ? (answer.working ?? []) : []).flatMap((line) => said(line, "plain", sum)),
    ...(answer.rule ? said(`Rule: ${ruleText(answer.rule, items)} (${basisOf(answer.rule)})`, "rule") : []),
    ...(answer.assumed?.length ? said(`Assumed: ${answer.assumed.join("; ")}`, "assumed") : []),
    ...(answer.cautions ?? []).flatMap((text) =>
      // what help adds is a tip, and nothing to beware of
      answer.tool === "help"
        ? said(text, "quiet")
        : said(`Caution: ${text}`, "caution", { first: "! ", rest: "    " }),
    ),
    ...(question && question !== headline ? said(question, "question") : []),
  ];
}

/** A list of notes has their words below the headline: those it repeats are left out of it. */
function headlineOf({ headline, items = [] }: Answer): string {
  const end = headline.indexOf(". ");
  const again = items.some(({ text }) => typeof text === "string" && text && headline.indexOf(text) > end);
  return end > 0 && items.length > 1 && again ? headline.slice(0, end + 1) : headline;
}

const ruleText = ({ text }: Rule, items: readonly Item[]) =>
  saysRule(items) ? "causes in the order in which they are worth trying" : text;

const basisOf = (rule: Rule) => (rule.source ? `${rule.basis}: ${rule.source}` : rule.basis);
