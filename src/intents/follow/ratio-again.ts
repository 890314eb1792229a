/** "ganache at 3:1 instead", with its timer between: the ganache in another ratio, and no other time. */
import type { Reading } from "../../tools/contract/index.ts";
import type { State, Topic } from "./state.ts";

const ratio = /\b(\d(?:\.\d+)?) ?(?::|to) ?1\b(?! ?(?:min|h\b|hour|pm|am|o))/;
const ofTimer = /\b(?:timer|alarm|min|mins|minutes?|ring|remind|longer|left)\b/;

/** Undefined where no ratio is said of a ganache that was asked for. Pure. */
export function ratioAgain(
  { text, things, amounts }: Reading,
  { last, past = [] }: State,
): { text: string; topic: Topic } | undefined {
  const said = ratio.exec(text)?.[1];
  const isOf = things.some(({ base, chocolate }) => base === "ganache" || chocolate);
  if (said === undefined || !isOf || last?.tool === "ganache" || ofTimer.test(text)) return undefined;
  if (amounts.some(({ dim }) => dim === "weight" || dim === "percent")) return undefined;
  const topic = past.findLast(({ tool }) => tool === "ganache");
  return topic && { text: `make it ${said} : 1`, topic };
}
