/** How strong a flavor is said to be, beside the usual one. */
import type { Memory, Reading } from "../contract/index.ts";
import type { Draft } from "./draft.ts";
import { ofTurn } from "./of-turn.ts";

const strengths = [
  { factor: 0.5, said: "half(?: the)? strength|half as strong" },
  { factor: 2, said: "(?:double|twice the) strength|(?:twice|double|two times|2x) as strong" },
  { factor: 3, said: "(?:triple|three times the) strength|(?:three times|3x|triple) as strong" },
].map((each) => ({ ...each, pattern: new RegExp(`\\b(?:${each.said})\\b`) }));

const strengthIn = ofTurn((text) => strengths.find(({ pattern }) => pattern.test(text)));

/**
 * "my extract is twice as strong", "double strength lemon oil": a strong flavor is dosed lower. "flavor for 200 g, twice
 * as strong" may also ask for more of it, the very opposite: that is not guessed.
 */
export function readStrength({ text, things }: Reading, memory: Memory): Draft {
  const found = strengthIn(text);
  if (!found) return {};
  const { factor, said } = found;
  const wish = /\b(?:make|want|wants|like|taste|tastes|should|need|needs)\b/.test(text);
  const is = new RegExp(`\\b(?:is|its|it's|that's|thats|are|says|comes|being) (?:\\w+ )?(?:${said})\\b`).test(
    text,
  );
  const lead = new RegExp(`^.*?\\b(?:${said}) `).exec(text)?.[0];
  const named = things.some(
    (each) => each.at[0] === lead?.length && (each.dose ?? each.taste) && each.text !== "flavor",
  );
  return (is || named || memory.slot === "strength") && !wish
    ? { strength: factor }
    : { strength_unclear: factor };
}
