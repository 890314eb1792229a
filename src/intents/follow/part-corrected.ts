/**
 * "only the chocolate was wrong, it's 400", "cream was 230 not 240, chocolate was right": of the two weights of a ganache
 * the one that is put right, the other one as it was.
 */
import type { Amount, Reading } from "../../tools/contract/index.ts";
import { gramsOf } from "../../tools/lib/units.ts";
import type { State } from "./state.ts";

type Part = "chocolate_g" | "cream_g";

const rights =
  /\b(?:wrong|right|correct|fine|ok|okay|stays?|stayed|as before|not|off|changed|different|misread|mistyped|leave|actually|should)\b/;
const asks =
  /\?|\b(?:back to|again|same (?!as before)[^,.]*\d|how|what|whats|which|have|left|add|added|more|less|another|extra|for)\b/;
const refused = /\b(?:not|instead of|rather than)(?: the)? $/;

/** The question said anew with the weight that is right. */
export function partCorrected({ text, amounts, things }: Reading, { last }: State): string | undefined {
  const { chocolate, chocolate_g, cream_g, want, fault, use, total_g, lines } = last?.inputs ?? {};
  if (last?.tool !== "ganache" || typeof chocolate_g !== "number" || typeof cream_g !== "number")
    return undefined;
  if (total_g !== undefined || lines !== undefined || !rights.test(text) || asks.test(text)) return undefined;
  const parts = things.flatMap((each): { part: Part; at: number }[] =>
    each.base || each.dose || each.taste
      ? []
      : each.ingredient === "cream"
        ? [{ part: "cream_g", at: each.at[0] }]
        : each.chocolate || each.ingredient === "chocolate"
          ? [{ part: "chocolate_g", at: each.at[0] }]
          : [],
  );
  if (parts.length === 0 || things.some((each) => each.base ?? each.taste ?? each.symptom)) return undefined;
  const had = { chocolate_g, cream_g };
  const now = { ...had };
  const said = amounts.filter((each) => isWeight(each) && !refused.test(text.slice(0, each.at[0])));
  if (said.length === 0 || said.length > 2) return undefined;
  for (const amount of said) {
    const before = parts.filter(({ at }) => at < amount.at[0]).at(-1);
    const { part } = before ?? (parts[0] as { part: Part });
    now[part] = gramsOf(amount);
  }
  // both other than they were: another ganache
  if ((now.chocolate_g === had.chocolate_g) === (now.cream_g === had.cream_g)) return undefined;
  const kind = typeof chocolate === "string" ? `${chocolate} ` : "";
  const parted = `${now.chocolate_g} g ${kind}chocolate and ${now.cream_g} g cream`;
  const aim = typeof use === "string" ? ` for ${use}` : "";
  return want === "mend"
    ? `${kind}ganache too ${fault === "stiff" ? "stiff" : "runny"}${aim}, ${parted}`
    : `${parted}, what is that good for`;
}

const isWeight = ({ dim, unit, fraction }: Amount): boolean =>
  dim === "weight" || (dim === "number" && unit === "" && !fraction);
