/** "and another one the same, for the syrup", behind a timer: one more, as long as that is now. */
import { opening } from "../../../data/words/openers.ts";
import type { Amount, Reading } from "../../tools/contract/index.ts";
import { spaced } from "./spaced.ts";
import type { State, Topic } from "./state.ts";

const name =
  "(?:(?: ,)? (?:for|on|called|named|call it|name it|its for|this time for) ([a-z0-9]+(?: [a-z0-9]+){0,3}?))?";
const one =
  "(?:(?:(?:set|start|run|make|do|add|give me|i need|need) )?(?:me )?(?:another|a second|a third|one more|an extra|one)(?: one| timer| alarm)?|(?:set|start|give me|i need) a timer)";
const likeIt =
  "(?:,? ?(?:exactly |just |of |for )*(?:the )?same(?: again| length| time| amount| thing| long)?|(?:exactly |just |much )?like (?:it|that|that one|the (?:first|last)(?: one)?)|(?:for )?(?:just |exactly )?as long(?: as (?:that|it|the (?:first|last)(?: one)?))?|of (?:those|these|them)|identical)";
const tail = "(?: (?:please|pls|too|then|now|as well))*[ .!?]*$";
const alike = new RegExp(`^${opening}${one}(?: ,)? ${likeIt}${name}${tail}`);
/** Behind a timer that was changed since: one that was just set lends its time by itself. */
const sameFor = new RegExp(`^${opening}(?:the )?same(?: again| length| time| thing)?${name}${tail}`);

/** How long the last of them runs, with what was changed since it was set; undefined where that was another one. */
function lengthNow(timers: readonly Topic[]): number | undefined {
  const set = timers.findLastIndex(({ inputs }) => inputs.do === "set");
  const { name: own, for_min } = timers[set]?.inputs ?? {};
  if (typeof for_min !== "number") return undefined;
  let minutes = for_min;
  for (const { inputs } of timers.slice(set + 1)) {
    const isOther = inputs.name !== undefined && inputs.name !== own;
    if (inputs.do === "left" || inputs.do === "list") continue;
    if (inputs.do === "add" && typeof inputs.more_min === "number" && !isOther) minutes += inputs.more_min;
    else if (inputs.do === "move" && typeof inputs.for_min === "number" && !isOther) minutes = inputs.for_min;
    else return undefined;
  }
  return minutes > 0 ? minutes : undefined;
}

/** Undefined where no other timer is asked for, or how long the last one runs isn't known. Pure. */
export function timerAlike(
  { text, amounts, whens }: Reading,
  { last, past = [] }: State,
): string | undefined {
  // "for tray 2" is a name
  const isName = ({ at }: Amount) => /\b(?:tray|sheet|batch|bowl) $/.test(text.slice(0, at[0]));
  if (last?.tool !== "timer" || whens.length > 0 || !amounts.every(isName)) return undefined;
  const said = spaced(text);
  const found = alike.exec(said) ?? (last.inputs.do === "set" ? null : sameFor.exec(said));
  const minutes = found ? lengthNow(past.filter(({ tool }) => tool === "timer")) : undefined;
  if (!found || minutes === undefined) return undefined;
  return `set a timer of ${minutes} min${found[1] === undefined ? "" : ` for ${found[1]}`}`;
}
