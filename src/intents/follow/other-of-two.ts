/**
 * "pistachio paste in the other one", "matcha in the second", "and the other?", behind two bowls that were flavored: the
 * bowl by its place, whatever was asked of either since.
 */
import type { Reading } from "../../tools/contract/index.ts";
import type { Earlier } from "./earlier-one.ts";
import { isFlavor } from "./into-part.ts";
import { spaced } from "./spaced.ts";
import type { Inputs, State } from "./state.ts";

const which =
  "(?:the |my |that )?(first|second|other)(?: (?:one|bowl|bowlful|batch|lot|mix|weight|of (?:them|those|the two)))?(?: (?:then|please|pls|instead|now|too))*[ ?.!]*$";
const inWhich = new RegExp(`^(.{2,60}) (?:in|into|for|to|with) ${which}`);
const alone = new RegExp(
  `^(?:(?:and|so|ok|now|then|what about|how about|same for|for|in|the same for),? )*${which}`,
);
/** Looked for before any pattern: hardly a turn names one. */
const named = /\b(?:first|second|other)\b/;

/** What says which bowl, and nothing of what goes in. */
const ofBowl = ["base_g", "base", "base_unit", "parts"];
const bowlOf = (inputs: Inputs): Inputs =>
  Object.fromEntries(ofBowl.flatMap((key) => (inputs[key] === undefined ? [] : [[key, inputs[key]]])));
const flavorOf = (inputs: Inputs): Inputs =>
  Object.fromEntries(
    ["dose", "taste", "name", "bare"].flatMap((key) =>
      inputs[key] === undefined ? [] : [[key, inputs[key]]],
    ),
  );

/** Undefined where there aren't two bowls, or none of them is named by its place. Pure. */
export function otherOfTwo(reading: Reading, { last, past = [], table, turn }: State): Earlier | undefined {
  const { text, things, amounts } = reading;
  if (last?.tool !== "dose" || !named.test(text) || table.parts?.length) return undefined;
  if (things.some(({ base }) => base) || amounts.length > 0) return undefined;
  const key = ({ base_g, base }: Inputs) => `${base_g} ${base}`;
  const doses = past.filter(({ tool, inputs }) => tool === "dose" && inputs.base_g !== undefined);
  const bowls = [...new Set(doses.map(({ inputs }) => key(inputs)))];
  if (bowls.length !== 2) return undefined;
  const said = spaced(text);
  const lone = alone.exec(said)?.[1];
  const [, lead = "", placed] = lone ? [] : (inWhich.exec(said) ?? []);
  const place = lone ?? placed;
  if (!place || (lead !== "" && !things.some(isFlavor))) return undefined;
  // right behind both there is no other one
  if (place === "other" && (turn?.times ?? 1) > 1) return undefined;
  const bowl =
    place === "other" ? bowls.find((each) => each !== key(last.inputs)) : bowls[place === "first" ? 0 : 1];
  const topic = doses.findLast(({ inputs }) => key(inputs) === bowl);
  if (!topic) return undefined;
  const inputs = { ...flavorOf(last.inputs), ...bowlOf(topic.inputs) };
  return { topic: { ...topic, inputs }, rest: lead };
}
