/** What stands on a label, in the United States and in the European Union. */

export type Market = "us" | "eu";

export const orderSource = { us: "21 CFR 101.4(a)", eu: "Regulation (EU) 1169/2011, Article 18" } as const;
export const netSource = {
  us: "21 CFR 101.7; 15 U.S.C. 1453; 16 CFR 500.19",
  eu: "Regulation (EU) 1169/2011, Article 23",
} as const;

/** Avoirdupois ounce and pound, exact. Source: NIST SP 811, B.8. */
export const ounce_g = 28.349523125;

/**
 * The smallest type that a label may be set in, by the height of its lower-case x or o. 21 CFR 101.2(c): 1/16 inch,
 * which of lower-case letters the "o" has to have (101.7(h)(2)). Regulation (EU) 1169/2011, Article 13(2) and annex IV:
 * an x-height of 1.2 mm. Smaller packages have exemptions, which nothing here makes use of.
 */
export const leastType = {
  us: { x_mm: 25.4 / 16, source: "21 CFR 101.2(c)" },
  eu: { x_mm: 1.2, source: "Regulation (EU) 1169/2011, Article 13(2)" },
} as const;

/** Net weight on a front of over 5 and up to 25 square inches: 1/8 inch, of the "o" in mixed letters. 21 CFR 101.7(i). */
export const usNetType = { mm: 25.4 / 8, front_sqin: 25, source: "21 CFR 101.7(i)" } as const;

/** Digits of the net weight by how much is in it, in g. Directive 76/211/EEC, annex I, 3.1. */
export const euNetType = {
  rows: [
    { upTo_g: 50, mm: 2 },
    { upTo_g: 200, mm: 3 },
    { upTo_g: 1000, mm: 4 },
    { upTo_g: Number.POSITIVE_INFINITY, mm: 6 },
  ],
  source: "Directive 76/211/EEC, annex I, 3.1",
} as const;

/** An ingredient's common name on a label, with what it is made of in brackets where that is known for certain. */
export interface LabelName {
  name: string;
  us: string;
  eu: string;
  /** Made of others that only its wrapper lists: the label has to carry that list. */
  compound?: boolean;
}

const same = (name: string, us: string, eu = us, compound?: boolean): LabelName => ({
  name,
  us,
  eu,
  ...(compound ? { compound } : {}),
});

export const labelNames: readonly LabelName[] = [
  same("almond flour", "almond flour (almonds)", "ground almonds"),
  same("whites", "egg whites", "egg whites"),
  same("pasteurised whites", "pasteurized egg whites", "pasteurised egg whites"),
  same("egg white powder", "egg white powder", "dried egg white"),
  same("powdered sugar", "powdered sugar", "icing sugar", true),
  same("granulated sugar", "sugar"),
  same("sugar", "sugar"),
  same("butter", "unsalted butter (cream)", "butter (milk)"),
  same("salted butter", "butter (cream, salt)", "salted butter (milk, salt)"),
  same("cream", "heavy cream", "cream (milk)", true),
  same("light cream", "light cream", "single cream (milk)", true),
  same("cream cheese", "cream cheese", "cream cheese (milk)", true),
  same("mascarpone", "mascarpone", "mascarpone (milk)", true),
  same("milk", "milk"),
  same("dark chocolate", "dark chocolate", "dark chocolate", true),
  same("milk chocolate", "milk chocolate", "milk chocolate", true),
  same("white chocolate", "white chocolate", "white chocolate", true),
  same("chocolate", "chocolate", "chocolate", true),
  same("semisweet chocolate", "semisweet chocolate", "dark chocolate", true),
  same("caramelised white chocolate", "caramelized white chocolate", "caramelised white chocolate", true),
  same("egg yolk", "egg yolks", "egg yolks"),
  same("egg", "eggs", "eggs"),
  same("jam", "jam", "jam", true),
  same("marmalade", "marmalade", "marmalade", true),
  same("caramel sauce", "caramel sauce", "caramel sauce", true),
  same("praline paste", "praline paste", "praline paste", true),
  same("baking powder", "baking powder", "baking powder", true),
  same("marshmallow cream", "marshmallow cream", "marshmallow cream", true),
];
