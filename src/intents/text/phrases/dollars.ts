/** Which country's dollar a sign says: "NZ$11", "A$ 4.50", "US$20". */
import type { Phrase } from "./phrase.ts";

/** ISO 4217, by what stands before the sign. */
const codes: Readonly<Record<string, string>> = {
  nz: "nzd",
  a: "aud",
  au: "aud",
  c: "cad",
  ca: "cad",
  can: "cad",
  cdn: "cad",
  us: "usd",
  hk: "hkd",
  s: "sgd",
  sg: "sgd",
};

export const dollars = (): readonly Phrase[] => [
  {
    marks: ["z$", "a$", "u$", "c$", "n$", "s$", "k$", "g$"],
    from: new RegExp(`(?<![a-z\\d'])(${Object.keys(codes).join("|")})\\$ ?(?=\\d|[.]\\d)`, "g"),
    to: (_whole, country = "") => `${codes[country]} `,
  },
];
