/** A turn as one line of JSON. Numbers are unrounded but for the dust of binary arithmetic. */
import { tidy } from "../tools/lib/show.ts";
import type { Turn } from "./session.ts";

export function turnJson(turn: Turn): string {
  return JSON.stringify(turn, (_, value: unknown) => (typeof value === "number" ? tidy(value) : value));
}
