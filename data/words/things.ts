/** The rest of the trade's words: what is mixed and piped, what is counted, what is done, how it is measured. */
export interface WordRow {
  id: string;
  words: readonly string[];
}

/** What a flavor or color goes into. `column` is the column of the dose table. */
export const bases: readonly (WordRow & { column: "buttercream" | "ganache" | "batter" | "any" })[] = [
  {
    id: "buttercream",
    column: "buttercream",
    words: ["buttercream", "butter cream", "bc", "b c", "smbc", "imbc", "swiss meringue buttercream", "italian meringue buttercream", "french buttercream", "german buttercream", "american buttercream", "meringue buttercream", "swiss buttercream", "italian buttercream", "buttercreme", "butter creme", "buttercrem", "buttecream", "butercream", "swiss meringue butter cream", "frosting", "crème au beurre", "creme au beurre", "vanilla buttercream", "buttercreams", "butter frosting", "plain buttercream", "smb"],
  },
  { id: "cream cheese filling", column: "buttercream", words: ["cream cheese filling", "cream cheese frosting", "cream cheese buttercream", "cream cheese icing", "cheesecake filling", "creamcheese filling", "creamcheese frosting"] },
  { id: "mascarpone filling", column: "buttercream", words: ["mascarpone filling", "mascarpone cream", "mascarpone frosting"] },
  { id: "butter filling", column: "buttercream", words: ["butter filling", "butter based filling"] },
  {
    id: "ganache",
    column: "ganache",
    words: ["ganache", "ganaches", "ganach", "ganche", "ganash", "granache", "gnache", "ganacche", "chocolate ganache", "choc ganache", "ganashe"],
  },
  { id: "filling", column: "any", words: ["filling", "fillings", "filing", "filings", "fillin", "the filled", "filler", "fillng"] },
  {
    id: "batter",
    column: "batter",
    words: ["batter", "shell batter", "macaron batter", "batter for the shells", "battter", "macaronage batter", "shell mix", "shell mixture", "macaron mix", "macaron mixture", "batters", "macaroon batter", "shells batter"],
  },
  { id: "meringue", column: "any", words: ["meringue", "merengue", "meringe"] },
];

export const chocolates: readonly (WordRow & { id: "dark" | "milk" | "white" })[] = [
  {
    id: "dark",
    words: ["dark chocolate", "dark choc", "dark", "dark couverture", "plain chocolate", "bittersweet", "bittersweet chocolate", "bitter chocolate", "semisweet", "semi sweet", "semisweet chocolate", "semi sweet chocolate", "dk chocolate", "dk choc", "drk chocolate", "drk choc", "zartbitter", "chocolat noir", "dark chcolate", "dark choclate", "black chocolate", "70 percent chocolate"],
  },
  { id: "milk", words: ["milk chocolate", "milk choc", "milk couverture", "milk chcolate", "milk choclate", "mlk choc", "mlk chocolate", "vollmilch", "chocolat au lait", "milky chocolate"] },
  {
    id: "white",
    words: ["white chocolate", "white choc", "white couverture", "wht choc", "wht chocolate", "whit choc", "white chcolate", "white choclate", "chocolat blanc", "wite chocolate", "wite choc", "white chocs"],
  },
];

export const uses: readonly (WordRow & { id: "loose" | "piping" | "firm" })[] = [
  { id: "loose", words: ["loose", "pour", "pouring", "pourable", "drip", "drips", "dripping", "glaze", "glazing", "drizzle", "pour over", "soft set", "loose set", "runny set"] },
  { id: "piping", words: ["pipe", "piping", "pipeable", "pipable", "piped", "pipping", "pipeing", "fill macarons", "for filling", "to fill", "sandwich"] },
  { id: "firm", words: ["firm", "roll", "rolling", "rolled", "truffles", "truffle", "cut", "cutting", "sliceable", "cuttable", "firm enough", "slab", "slice"] },
];

/** What is counted, and the unit that figures give it in. */
export const counts: readonly WordRow[] = [
  {
    id: "macarons",
    words: ["macaron", "macarons", "mac", "macs", "maccies", "macaroon", "macaroons", "macron", "macrons", "macarrons", "macarron", "marcarons", "marcaron", "mcarons", "maracons", "maracon", "macarns", "maccaron", "maccarons", "maccaroons", "macaons", "macaroni cookies", "sandwiches", "finished macarons", "filled macarons", "filled macaron", "filled ones", "filled macs", "complete macarons", "whole macarons", "cookies", "cookie sandwiches", "mcrons", "pieces"],
  },
  { id: "shells", words: ["shell", "shells", "macaron shells", "macaron shell", "halves", "half shells", "macaroon shells", "single shells", "discs", "disks", "shels", "circles", "rounds"] },
  { id: "trays", words: ["tray", "trays", "sheet", "sheets", "baking sheet", "baking sheets", "baking tray", "baking trays", "mat", "mats", "silicone mat", "sheet pan", "sheet pans", "template", "trayful", "trayfuls", "baking mat"] },
  { id: "bowls", words: ["bowl", "bowls", "equal bowls", "ways", "parts", "part", "portions", "portion", "batches equal", "equal parts", "colors equal", "lots", "shares", "equal portions"] },
  { id: "batches", words: ["batch", "batches"] },
  { id: "boxes", words: ["box", "boxes", "boxs", "packs", "bags", "gift box", "gift boxes"] },
  { id: "drops", words: ["drop", "drops"] },
];

/** Steps of the bake that a timer or a question can be about. */
export const steps: readonly WordRow[] = [
  { id: "rest", words: ["rest", "resting", "rested", "rest time", "skin", "drying", "dry out", "form a skin"] },
  { id: "bake", words: ["bake", "baking", "baked", "oven time", "in the oven", "baking time"] },
  { id: "cool", words: ["cool", "cooling", "cooled", "cool down", "cooldown"] },
  { id: "ganache sets", words: ["ganache set", "ganache sets", "ganache setting", "setting", "ganache to set", "set the ganache"] },
  { id: "mature", words: ["mature", "maturing", "matured", "maturation", "mellow"] },
  { id: "preheat", words: ["preheat", "preheating", "oven to heat", "heat the oven", "oven heating", "oven preheat", "pre heat", "warm up the oven"] },
  { id: "macaronage", words: ["macaronage", "macronage", "folding", "fold"] },
  { id: "chill", words: ["chill", "chilling", "chilled"] },
  { id: "thaw", words: ["thaw", "thawing", "defrost", "defrosting"] },
];

export const colors: readonly string[] = [
  "pink", "blue", "white", "plain", "red", "green", "yellow", "purple", "lilac", "lavender blue", "teal", "turquoise", "black", "brown", "gold", "grey", "gray", "ivory", "peachy", "violet blue", "mint green", "uncolored", "uncoloured", "natural", "navy", "coral", "beige", "pale pink", "dark pink", "light blue", "dark blue", "pale blue", "pale green", "orange color", "burgundy", "magenta", "aqua", "sage",
];

/** How an ingredient was measured; the words of the USDA portion rows. */
export const manners: readonly WordRow[] = [
  { id: "unsifted", words: ["unsifted", "not sifted", "unsieved", "un sifted"] },
  { id: "sifted", words: ["sifted", "sieved"] },
  { id: "packed", words: ["packed", "firmly packed", "packd"] },
  { id: "unpacked", words: ["unpacked", "loosely packed", "not packed"] },
  { id: "whole", words: ["whole kernels"] },
  { id: "sliced", words: ["sliced", "flaked"] },
  { id: "chopped", words: ["chopped"] },
  { id: "whipped", words: ["whipped"] },
];

/** "the rest" as what is left of a recipe or a bowl, not the rest before the oven. */
export const remainders: readonly string[] = [
  ...["is", "be", "as", "in", "for", "to", "can", "gets", "goes", "left", "plain", "stay", "stays", "should", "white"].flatMap((word) => [`rest ${word}`, `the rest ${word}`]),
  ...["of the rest", "rest of the", "and the rest", "all the rest", "the rest of the", "rest of it", "rest of the recipe", "everything else", "the others"],
];
