/** A turn that wasn't understood whole, said shorter. */
import { withoutTalk } from "../intents/turn/without-talk.ts";
import type { Answer } from "../tools/contract/index.ts";

type Told = Pick<Answer, "status">;
const isAnswer = ({ status }: Told): boolean => status === "answered";

/** It was understood; what can't be is another matter. */
export const isSound = ({ status }: Told): boolean => status === "answered" || status === "impossible";

/**
 * A shorter way to say what wasn't understood whole, of which every question is answered. Pure, as far as `dry` is.
 * @param whole what the questions of all of it came to
 * @param dry what a line would come to
 */
export const understood = (
  text: string,
  whole: readonly Told[],
  dry: (line: string) => readonly Told[],
): string | undefined =>
  withoutTalk(text, whole.some(isSound)).find((shorter) => {
    const all = dry(shorter);
    return all.length > 0 && all.length >= whole.filter(isSound).length && all.every(isAnswer);
  });
