/**
 * Allergens by law. The ingredient table says what is in a thing; here stands what each law calls it. Nothing is
 * taken from how a word looks: coconut is no tree nut, almond is one.
 */
export interface AllergenRow {
  /** As data/words/ingredients.ts and flavors.ts write it. */
  id: string;
  /** The United States' name for it on a label; none where it is none of the nine. */
  us?: string;
  /** The class of the nine that it belongs to. */
  usClass?: string;
  /** The European Union's name for it; none where Annex II hasn't got it. */
  eu?: string;
  euClass?: string;
  /** Other words for it on a bottle. */
  words?: readonly string[];
}

export const usSource = "FALCPA 2004; FASTER Act 2021; FDA allergen guidance, edition 5, 2025";
export const euSource = "Regulation (EU) 1169/2011, Articles 18, 21, 22 and Annex II";

/** The nine. FALCPA 2004 and, for sesame, the FASTER Act 2021. */
export const usClasses = [
  "milk",
  "eggs",
  "fish",
  "crustacean shellfish",
  "tree nuts",
  "peanuts",
  "wheat",
  "soybeans",
  "sesame",
] as const;

/** The fourteen of Annex II. */
export const euClasses = [
  "cereals containing gluten",
  "crustaceans",
  "eggs",
  "fish",
  "peanuts",
  "soybeans",
  "milk",
  "nuts",
  "celery",
  "mustard",
  "sesame",
  "sulphites",
  "lupin",
  "molluscs",
] as const;

/** The twelve tree nuts of FDA's allergen guidance, edition 5, 2025. Coconut is no longer one of them. */
export const usTreeNuts = [
  "almond",
  "black walnut",
  "Brazil nut",
  "California walnut",
  "cashew",
  "hazelnut",
  "heartnut",
  "macadamia",
  "pecan",
  "pine nut",
  "pistachio",
  "English walnut",
] as const;

/** The eight nuts of Annex II. */
export const euNuts = [
  "almond",
  "hazelnut",
  "walnut",
  "cashew",
  "pecan",
  "Brazil nut",
  "pistachio",
  "macadamia",
] as const;

const nut = (id: string, eu = true): AllergenRow => ({
  id,
  us: id,
  usClass: "tree nuts",
  ...(eu ? { eu: id, euClass: "nuts" } : {}),
});

export const allergens: readonly AllergenRow[] = [
  { id: "milk", us: "milk", usClass: "milk", eu: "milk", euClass: "milk" },
  { id: "egg", us: "egg", usClass: "eggs", eu: "egg", euClass: "eggs" },
  { id: "wheat", us: "wheat", usClass: "wheat", eu: "wheat", euClass: "cereals containing gluten" },
  { id: "barley", eu: "barley", euClass: "cereals containing gluten" },
  {
    id: "soy",
    us: "soy",
    usClass: "soybeans",
    eu: "soya",
    euClass: "soybeans",
    words: ["soya", "soja", "soybean", "soyabean", "edamame"],
  },
  { id: "peanut", us: "peanut", usClass: "peanuts", eu: "peanut", euClass: "peanuts" },
  { id: "sesame", us: "sesame", usClass: "sesame", eu: "sesame", euClass: "sesame", words: ["sesame seed"] },
  { id: "fish", us: "fish", usClass: "fish", eu: "fish", euClass: "fish" },
  nut("almond"),
  nut("hazelnut"),
  nut("pistachio"),
  { ...nut("walnut"), words: ["english walnut", "california walnut"] },
  // Annex II names Juglans regia alone; another walnut is declared as one to be on the safe side, from memory
  { ...nut("black walnut"), eu: "walnut", euClass: "nuts" },
  { ...nut("heartnut"), eu: "walnut", euClass: "nuts", words: ["heart nut"] },
  nut("pecan"),
  // Annex II: "macadamia or Queensland nuts"
  { ...nut("macadamia"), words: ["macadamia nut", "queensland nut"] },
  nut("cashew"),
  nut("Brazil nut"),
  { ...nut("pine nut", false), words: ["pine kernel", "pinenut", "pignoli", "pignolia"] },
  {
    id: "crustaceans",
    us: "crustacean shellfish",
    usClass: "crustacean shellfish",
    eu: "crustaceans",
    euClass: "crustaceans",
    words: ["shellfish", "shrimp", "prawn", "crab", "lobster", "crayfish", "langoustine", "krill"],
  },
  { id: "rye", eu: "rye", euClass: "cereals containing gluten" },
  { id: "oats", eu: "oats", euClass: "cereals containing gluten", words: ["oat"] },
  { id: "celery", eu: "celery", euClass: "celery", words: ["celeriac"] },
  { id: "mustard", eu: "mustard", euClass: "mustard" },
  {
    id: "sulphites",
    eu: "sulphites",
    euClass: "sulphites",
    words: ["sulfites", "sulphite", "sulfite", "sulphur dioxide", "sulfur dioxide"],
  },
  { id: "lupin", eu: "lupin", euClass: "lupin", words: ["lupine"] },
  {
    id: "molluscs",
    eu: "molluscs",
    euClass: "molluscs",
    words: [
      "mollusc",
      "mollusks",
      "mollusk",
      "squid",
      "oyster",
      "mussel",
      "clam",
      "scallop",
      "octopus",
      "cuttlefish",
    ],
  },
];

/**
 * Tastes and what brings them. `brings` is what the thing itself is made of; a bottle of flavor may hold less or
 * more, so every bottle whose own list isn't saved is named as to be checked.
 */
export interface TasteAllergens {
  taste: string;
  brings?: readonly string[];
  /** What only the wrapper can tell. */
  unsure?: string;
}

export const tasteAllergens: readonly TasteAllergens[] = [
  { taste: "almond", brings: ["almond"] },
  { taste: "marzipan", brings: ["almond"] },
  { taste: "bitter almond", brings: ["almond"], unsure: "it may be made from apricot stones" },
  { taste: "amaretto", unsure: "almond or apricot stones" },
  { taste: "praline", unsure: "which nuts it is made of" },
  { taste: "cheesecake", brings: ["milk"] },
  { taste: "irish cream liqueur", brings: ["milk"] },
  // what the biscuit or the cake usually holds is declared, as prepared-allergens.ts does; common practice
  { taste: "cookies and cream", brings: ["wheat", "milk"], unsure: "egg and soy of the cookies" },
  { taste: "speculoos", brings: ["wheat"], unsure: "milk, egg and soy of the biscuits" },
  { taste: "gingerbread", brings: ["wheat"], unsure: "milk, egg and soy of the gingerbread" },
  { taste: "tiramisu", brings: ["wheat", "egg", "milk"], unsure: "soy of the biscuits" },
  { taste: "butter pecan", brings: ["pecan"], unsure: "milk of the butter" },
  { taste: "dulce de leche", brings: ["milk"] },
  { taste: "birthday cake", brings: ["wheat", "egg", "milk"], unsure: "soy of the cake" },
  { taste: "red velvet", brings: ["wheat", "egg", "milk"], unsure: "soy of the cake" },
  { taste: "malt", brings: ["barley"] },
  { taste: "whisky", unsure: "barley, unless it is distilled" },
  { taste: "champagne", unsure: "sulphites" },
  { taste: "caramel", unsure: "milk of the caramel" },
  { taste: "salted caramel", unsure: "milk of the caramel" },
  { taste: "burnt caramel", unsure: "milk of the caramel" },
  { taste: "toffee", unsure: "milk of the toffee" },
  { taste: "butterscotch", unsure: "milk of the butterscotch" },
  { taste: "marshmallow", unsure: "egg or gelatin of the marshmallow" },
];

/** What a mix brings when no more is said of it than its name. */
export const mixAllergens: readonly {
  base: string;
  brings: readonly { allergen: string; from: string }[];
  unsure?: string;
}[] = [
  {
    base: "shells",
    brings: [
      { allergen: "almond", from: "almond flour" },
      { allergen: "egg", from: "egg whites" },
    ],
  },
  {
    base: "ganache",
    brings: [{ allergen: "milk", from: "cream" }],
    unsure: "the chocolate's own list: milk, soy lecithin and traces of nuts",
  },
  {
    base: "buttercream",
    brings: [
      { allergen: "milk", from: "butter" },
      { allergen: "egg", from: "egg whites" },
    ],
  },
  { base: "meringue", brings: [{ allergen: "egg", from: "egg whites" }] },
  { base: "cream cheese filling", brings: [{ allergen: "milk", from: "cream cheese" }] },
  { base: "mascarpone filling", brings: [{ allergen: "milk", from: "mascarpone" }] },
  { base: "butter filling", brings: [{ allergen: "milk", from: "butter" }] },
];
