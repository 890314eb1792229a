/** One filling of an order, as inputs hold it. */
import * as z from "zod/mini";
import { count } from "../lib/inputs.ts";

/** A flavor as the dose calculator takes it. */
export const flavor = z.object({
  dose: z.optional(z.string()),
  taste: z.optional(z.string()),
  name: z.optional(z.string()),
  bare: z.optional(z.boolean()),
});

export const filling = z.object({
  base: z.string(),
  /** A jam's fruit. */
  of: z.optional(z.string()),
  /** A saved recipe that makes it, by its name. */
  formula: z.optional(z.string()),
  flavor: z.optional(flavor),
  chocolate: z.optional(z.enum(["dark", "milk", "white"])),
  part: z.optional(z.enum(["ring", "center"])),
  /** It fills so many of them, and nothing else does. */
  macarons: z.optional(count("macarons")),
});
