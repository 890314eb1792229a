/** A moment as said, as an input of a calculator: kept as it is until lib/when.ts holds it against the clock. */
import * as z from "zod/mini";
import type { When } from "../contract/index.ts";
import type { Said } from "./when.ts";

const number = z.optional(z.number());

/** contract/reading.ts When without its place in the sentence. */
export const whenSaid = z.object({
  text: z.optional(z.string()),
  days: number,
  weekday: number,
  which: z.optional(z.enum(["last", "next", "this", "week"])),
  day: number,
  month: number,
  year: number,
  minute: number,
  half: z.optional(z.enum(["am", "pm", "24"])),
  part: z.optional(z.enum(["morning", "afternoon", "evening", "night"])),
});

/** A moment without its place in the sentence. */
export function placeless({ text: _text, at: _at, ...said }: When): Said {
  return said;
}
