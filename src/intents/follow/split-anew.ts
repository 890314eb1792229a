/** "actually halves", behind the color for one of three parts: the bowl shared out anew, and no half of that part. */
import { opening } from "../../../data/words/openers.ts";
import type { Reading } from "../../tools/contract/index.ts";
import { spaced } from "./spaced.ts";
import type { State, Topic } from "./state.ts";

const plural = new RegExp(
  `^${opening}(?:(?:make|do|split|cut|divide|lets|just|rather|go|for|with|it|them|that|in|into|id|i|want|changed my mind|back|to|use|have|equal|even) )*(?:in |into )?(halves|thirds|quarters|fourths|fifths|sixths|eighths)(?: (?:instead|then|after all|please|pls|now|rather|will do|it is))*[ .?!]*$`,
);

const many = "two|three|four|five|six|seven|eight|nine|ten|[2-9]|1[0-2]";
const shares = "(?:bowls|parts|portions|lots|shares|ways|piles|tubs)";
const alike = "(?:equal|even|same size|equally big|identical|equal sized|evenly sized)";
/** "four equal bowls", "into 4 bowls, all the same". */
const bowls = new RegExp(
  `^${opening}(?:(?:make|do|split|cut|divide|share|lets|just|rather|go|for|with|it|them|that|all|the|lot|batter|out|i|want|need|changed my mind|back|to|use|have|said) )*(?:(?:in |into )?(${many}) ${alike} ${shares}|(?:in |into )(${many}) ${shares}(?:(?: ,)? (?:all )?(?:equal|equally|even|evenly|the same|alike))?)(?: (?:instead|then|after all|please|pls|now|rather|will do|it is|each the same))*[ .?!]*$`,
);

/** Undefined where no bowl was shared out, or the last question was about that itself. Pure. */
export function splitAnew(
  { text, things }: Reading,
  { last, past = [] }: State,
): { text: string; topic: Topic } | undefined {
  if (!last || last.tool === "split") return undefined;
  const said = spaced(text);
  const [, equal, into] = bowls.exec(said) ?? [];
  const parts = things.length === 0 ? plural.exec(said)?.[1] : undefined;
  const shared = parts ?? ((equal ?? into) ? `${equal ?? into} equal bowls` : undefined);
  if (!shared) return undefined;
  const topic = past.findLast(({ tool }) => tool === "split");
  const { total_g, thing } = topic?.inputs ?? {};
  if (!topic || typeof total_g !== "number") return undefined;
  return { text: `split ${total_g} g ${typeof thing === "string" ? thing : ""} in ${shared}`, topic };
}
