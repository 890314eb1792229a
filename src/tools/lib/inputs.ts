/** The kinds of input that calculators declare, each with its limits and the sentence for breaking them. */
import * as z from "zod/mini";
import { plain } from "./show.ts";

const said = (issue: { input?: unknown }) =>
  typeof issue.input === "number" ? plain(issue.input) : String(issue.input);

/** A weight in g, above zero and at most a tonne. */
export const weight_g = z
  .number()
  .check(
    z.gt(0, { error: (issue) => `A weight has to be above zero; this says ${said(issue)} g.` }),
    z.lte(1_000_000, { error: (issue) => `${said(issue)} g is more than a tonne; check the number.` }),
  );

/** What is already in the bowl, in g: zero is a fact, below zero isn't. */
export const inBowl_g = z
  .number()
  .check(
    z.gte(0, { error: (issue) => `There can't be ${said(issue)} g in the bowl.` }),
    z.lte(1_000_000, { error: (issue) => `${said(issue)} g is more than a tonne; check the number.` }),
  );

/** A share in %, above 0 and below 100. */
export const share_percent = z
  .number()
  .check(
    z.gt(0, { error: (issue) => `A share has to be above 0 %; this says ${said(issue)} %.` }),
    z.lt(100, { error: (issue) => `${said(issue)} % can't be: a share has to stay below 100 %.` }),
  );

/** A count of whole things, at least 1. `what` names them in the sentence. */
export const count = (what: string) =>
  z.number().check(
    z.gte(1, { error: (issue) => `That has to be at least one of the ${what}; this says ${said(issue)}.` }),
    z.lte(100_000, {
      error: (issue) => `${said(issue)} ${what} is beyond a home kitchen; check the number.`,
    }),
  );

/** A diameter in mm: a shell is piped between 10 and 150 mm. */
export const diameter_mm = z
  .number()
  .check(
    z.gte(10, { error: (issue) => `${said(issue)} mm is too small for a shell; 10 mm is the least.` }),
    z.lte(150, { error: (issue) => `${said(issue)} mm is too wide for a shell; 150 mm is the most.` }),
  );

/** A length of time in min, above zero and at most a year. */
export const time_min = z
  .number()
  .check(
    z.gt(0, { error: (issue) => `A time has to be above zero; this says ${said(issue)} min.` }),
    z.lte(525_600, { error: (issue) => `${said(issue)} min is over a year; check the number.` }),
  );

/** A temperature in °C that an oven, a bowl or a freezer can have. */
export const temperature_c = z
  .number()
  .check(
    z.gte(-273.15, { error: "Nothing is colder than −273.15 °C." }),
    z.lte(1000, { error: (issue) => `${said(issue)} °C is hotter than any oven; check the number.` }),
  );

/** Money, zero or more. */
export const money = z
  .number()
  .check(z.gte(0, { error: (issue) => `Money can't be below zero; this says ${said(issue)}.` }));

export const text = z.string().check(z.minLength(1), z.maxLength(10_000));
