/** A turn as one line of JSON. Numbers are unrounded but for the dust of binary arithmetic. */
import { tidy } from "../tools/lib/show.ts";
import type { Turn } from "./session.ts";

// JSON leaves these as they are, and a terminal that the line is printed to would obey them.
const obeyed = /[\u007f-\u009f\u200e\u200f\u2028-\u202e\u2066-\u2069]/g;
const escaped = (sign: string) => `\\u${sign.charCodeAt(0).toString(16).padStart(4, "0")}`;

export function turnJson(turn: Turn): string {
  const text = JSON.stringify(turn, (_, value: unknown) => (typeof value === "number" ? tidy(value) : value));
  return text.replace(obeyed, escaped);
}
