/** "how long till theyre done maturing", behind a timer: how long the one of that step has left. */
import type { Memory } from "../contract/index.ts";
import { asksUntilDone } from "../lib/asked-again.ts";
import type { Piece } from "../lib/pieces.ts";
import type { Draft } from "./draft.ts";
import { matching } from "./find.ts";

/** The timer of that step; where none of those that run is of it, another calculator knows how long it takes. */
export function leftUntilDone(some: readonly Piece[], mask: string, memory: Memory): Draft | undefined {
  if (memory.last?.tool !== "timer" || !asksUntilDone(mask)) return undefined;
  const step = some.find((each) => each.thing?.step)?.thing?.step;
  const word = /(matur|chill|rest|bak|cool)\w*/.exec(mask)?.[1];
  const name = step ?? (word === "matur" ? "mature" : word === "bak" ? "bake" : word);
  const live = memory.names.timers.map((label) => ({ label }));
  if (name && matching(name, live).length > 0) return { do: "left", name };
  return {};
}
