/** A moment as said, as an input: kept as it is until a calculator holds it against the clock. */
import * as z from "zod/mini";

const number = z.optional(z.number());

/** contract/reading.ts When without its place in the sentence. */
export const whenSaid = z.object({
  text: z.string(),
  days: number,
  weekday: number,
  which: z.optional(z.enum(["last", "next", "this"])),
  day: number,
  month: number,
  year: number,
  minute: number,
  half: z.optional(z.enum(["am", "pm", "24"])),
  part: z.optional(z.enum(["morning", "afternoon", "evening", "night"])),
});

export type WhenSaid = z.infer<typeof whenSaid>;
