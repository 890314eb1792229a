/** "actually halves", behind the color for one of three parts: the bowl shared out anew, and no half of that part. */
import { opening } from "../../../data/words/openers.ts";
import type { Reading } from "../../tools/contract/index.ts";
import { spaced } from "./spaced.ts";
import type { State, Topic } from "./state.ts";

const plural = new RegExp(
  `^${opening}(?:(?:make|do|split|cut|divide|lets|just|rather|go|for|with|it|them|that|in|into|id|i|want|changed my mind|back|to|use|have|equal|even) )*(?:in |into )?(halves|thirds|quarters|fourths|fifths|sixths|eighths)(?: (?:instead|then|after all|please|pls|now|rather|will do|it is))*[ .?!]*$`,
);

/** Undefined where no bowl was shared out, or the last question was about that itself. Pure. */
export function splitAnew(
  { text, things }: Reading,
  { last, past = [] }: State,
): { text: string; topic: Topic } | undefined {
  const parts = plural.exec(spaced(text))?.[1];
  if (!parts || !last || last.tool === "split" || things.length > 0) return undefined;
  const topic = past.findLast(({ tool }) => tool === "split");
  const { total_g, thing } = topic?.inputs ?? {};
  if (!topic || typeof total_g !== "number") return undefined;
  return { text: `split ${total_g} g ${typeof thing === "string" ? thing : ""} in ${parts}`, topic };
}
