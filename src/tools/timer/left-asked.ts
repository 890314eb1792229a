/** "ganache timer?", "and the tray one timer": how long one that runs has left. */
import type { Memory } from "../contract/index.ts";
import { type Piece, textOf } from "../lib/pieces.ts";
import type { Draft } from "./draft.ts";
import { matching } from "./find.ts";
import { asLabel } from "./stop-said.ts";

const asked =
  /^(?:(?:and|so|ok|hm|now|what about|how about|the|my|that) )*(?!(?:set|start|new|another|add|stop|cancel|a|an) )(.+?) timers? ?\?$/;

/** "and tray 5", "and the oven one?", behind how long another one has left. */
const another =
  /^(?:(?:and|so|ok|hm|now|then|but|also|or|,) )*(?:(?:what about|how about|for|on|whats|hows) )?(?:(?:the|my|that) )*(?!(?:set|start|new|another|add|stop|cancel|a|an|rest of|all|both|each) )(.+?)(?: (?:one|timer|then|now|please|pls))*(?: \?)?$/;

/** Only where one of that very name runs: any other is asked for its length. */
export function leftAsked(some: readonly Piece[], { names, last, slot }: Memory): Draft | undefined {
  if (some.some((each) => each.amount?.dim === "time" || each.when)) return undefined;
  const isBehind = last?.tool === "timer" && last.inputs.do === "left" && slot === undefined;
  const said = (asked.exec(textOf(some)) ?? (isBehind ? another.exec(textOf(some)) : undefined))?.[1];
  const name = said && asLabel(said);
  if (!name) return undefined;
  const [hit, ...others] = matching(
    name,
    names.timers.map((label) => ({ label })),
  );
  return hit && others.length === 0 ? { do: "left", name: hit.label } : undefined;
}
