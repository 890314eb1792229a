/**
 * "for 400 g what cream and chocolate", behind the rum for a ganache: what so much of the filling itself is made of, and
 * no dose. Asked plainly, with the kind of chocolate that was spoken of.
 */
import { opening } from "../../../data/words/openers.ts";
import type { Reading } from "../../tools/contract/index.ts";
import { spaced } from "./spaced.ts";
import type { State } from "./state.ts";

const makings: Readonly<Record<string, { needed: RegExp; named: string }>> = {
  ganache: {
    needed: /\b(?:cream|chocolate|choc)\b/,
    named:
      "(?:(?:dark|milk|white) (?:chocolate|choc)|chocolate|choc|(?:heavy |whipping |double )?cream|dark|butter)",
  },
  buttercream: {
    needed: /\bbutter\b/,
    named: "(?:butter|(?:granulated |caster )?sugar|(?:egg )?whites|eggs)",
  },
};

const asking =
  "(?:what|whats|how much|how many|the|and|,|of|weights? of|grams of|amounts? of|do i (?:need|want|use)|is (?:that|it)|goes in|needed|i need|would (?:that|it) be|please|pls|then|need)";
const size =
  "(?:(?:for|from|of|in|to make|with)(?: a| the)? (?:bowl of )?(\\d+(?:\\.\\d+)? ?(?:g|grams|kg|oz)|it|that|this|all of it|the (?:whole )?(?:bowl|lot|ganache|buttercream))(?: of)?(?: (?:it|ganache|buttercream))?)";

const patterns = new Map<string, RegExp>();
/** Names, a size and words that ask, and nothing else. */
function patternOf(base: string, named: string): RegExp {
  const known =
    patterns.get(base) ??
    new RegExp(`^${opening}(?:(?:so|and|now|then) )*(?:${asking} ?|${named} ?|${size} ?)+[?. ]*$`);
  patterns.set(base, known);
  return known;
}
const sizeOf = new RegExp(size);
/** "cream for 400 g dark": the weight is the chocolate's. */
const ofOne =
  /\d ?(?:g|grams|kg|oz) (?:of )?(?:the )?(?:dark|milk|white|choc|chocolate|cream|butter|sugar|egg|eggs|whites)\b/;
/** "for 400 g chocolate what cream". */
const creamFor =
  /^(?:(?:and|so|now|then|ok) )*(?:for|with) (\d+(?:\.\d+)? ?(?:g|grams|kg|oz)) (?:of )?((?:dark |milk |white )?)(?:chocolate|choc) (?:what|how much)(?: of the| is the|'?s the)? cream(?: (?:do|would|should) i need)?[ ?]*$/;
const kindOf = /\b(dark|milk|white)(?: (?:chocolate|choc))?\b/;

/** Undefined where it isn't asked so. Pure. */
export function makingsAsked({ text, things }: Reading, { last, past = [] }: State): string | undefined {
  const base = last?.tool === "dose" ? last.inputs.base : undefined;
  const filling = typeof base === "string" ? makings[base] : undefined;
  if (!last || !filling || things.some((each) => each.taste)) return undefined;
  const said = spaced(text);
  // longer than this it is told with much else
  const [, weighed, which = ""] = creamFor.exec(said) ?? [];
  if (weighed) return `how much cream for ${weighed} ${which}chocolate`;
  if (said.length > 120 || ofOne.test(said) || !filling.needed.test(said)) return undefined;
  const [, much] = sizeOf.exec(said) ?? [];
  if (much === undefined || !patternOf(String(base), filling.named).test(said)) return undefined;
  const grams = last.inputs.base_g;
  const weight = /^\d/.test(much) ? much : typeof grams === "number" ? `${grams} g` : undefined;
  if (weight === undefined) return undefined;
  if (base === "buttercream") return `buttercream of ${weight}, what whites, sugar and butter`;
  const before = past.findLast(({ tool }) => tool === "dose" || tool === "ganache")?.text ?? "";
  const kind = kindOf.exec(said)?.[1] ?? kindOf.exec(last.text ?? before)?.[1];
  return `${kind ? `${kind} ` : ""}ganache of ${weight}, how much chocolate and cream`;
}
