/**
 * Foods that are no row of the ingredient table, and which allergens they bring. `brings` is what makes a thing what it
 * is, or what a recipe of it usually holds; a kitchen may put in more, so a thing of several parts is always named as to
 * be checked. Whoever adds a word here adds it to what a label can hear: nothing else has to know it.
 */
export interface PreparedRow {
  words: readonly string[];
  brings: readonly string[];
  /** What only the wrapper or the recipe can tell. */
  unsure?: string;
  basis: "published" | "common practice" | "from memory";
  source?: string;
}

/** What a kitchen usually makes it of. */
const usual = (words: string, brings: readonly string[], unsure?: string): PreparedRow => ({
  words: words.split(", "),
  brings,
  ...(unsure ? { unsure } : {}),
  basis: "common practice",
});

const recalled = (words: string, brings: readonly string[], unsure?: string): PreparedRow => ({
  ...usual(words, brings, unsure),
  basis: "from memory",
});

/** What the law itself names as one of its allergens. */
const byLaw = (words: string, brings: readonly string[], source: string): PreparedRow => ({
  ...usual(words, brings),
  basis: "published",
  source,
});

const annex = "Regulation (EU) No 1169/2011, Annex II";
const fda = "FDA, Questions and Answers Regarding Food Allergens, edition 5, 2025";

const eggAndMilk: readonly PreparedRow[] = [
  usual("curd, lemon curd, fruit curd", ["egg", "milk"]),
  usual(
    "custard, pastry cream, creme patissiere, crème pâtissière, creme anglaise",
    ["egg", "milk"],
    "wheat, where it is thickened with flour",
  ),
  usual("diplomat cream, mousseline, mousse, ice cream, gelato, semifreddo, flan", ["egg", "milk"]),
  usual("eggnog, egg nog, advocaat, zabaglione, zabaione, sabayon", ["egg", "milk"]),
  usual("mayonnaise, aioli, royal icing", ["egg"]),
  usual("egg wash, eggwash, albumin, ovalbumin", ["egg"]),
  usual("frangipane", ["almond", "egg", "milk"]),
  usual(
    "cheese, whey, ghee, lactose, quark, crème fraîche, creme fraiche, casein, caseinate, sodium caseinate, kefir, skyr, labneh, paneer, milk protein, milk solids, clotted cream, panna cotta, milk jam, cajeta",
    ["milk"],
  ),
  recalled(
    "margarine, vegan butter, plant butter, baking spread",
    [],
    "milk, and soy of its oil or lecithin",
  ),
];

const sweets: readonly PreparedRow[] = [
  usual(
    "gianduja, gianduia, gianduja paste, gianduia paste",
    ["hazelnut"],
    "milk, soy lecithin and other nuts",
  ),
  usual("halva, halwa, halvah", ["sesame"], "which nuts, and egg"),
  usual("nougat, croquant", [], "which nuts, and egg"),
  usual("turron, torrone", ["almond", "egg"], "which other nuts"),
  usual("brittle", [], "which nuts, peanut or sesame"),
  usual("praline, praliné, nut, nuts, mixed nut, mixed nuts, tree nut", [], "which nuts it is made of"),
  usual("fudge, caramel, toffee, butterscotch", [], "milk"),
  usual("peanut butter cup", ["peanut", "milk"], "soy lecithin and traces of nuts"),
  usual("amaretti, amaretti biscuit, amaretti cookie", ["almond", "egg"], "apricot stones, wheat and milk"),
  usual("baklava", ["wheat"], "which nuts, and milk of its butter"),
];

const baked: readonly PreparedRow[] = [
  usual(
    "cookie, biscuit, wafer, feuilletine, shortbread, brownie, sponge, cake, muffin, doughnut, donut, scone, crumble, streusel",
    ["wheat"],
    "milk, egg and soy",
  ),
  usual("cookie butter, biscuit butter, biscuit spread, cookie spread", ["wheat"], "milk, egg and soy"),
  usual(
    "ladyfinger, lady finger, savoiardi, waffle, stroopwafel, pancake, crepe, crêpe, brioche, genoise, génoise, choux",
    ["wheat", "egg"],
    "milk and soy",
  ),
  usual(
    "ginger nut, rusk, matzo, crouton, pretzel, cracker, breadcrumb, bread crumb, bread, panko, pastry, filo, phyllo, fillo, kataifi, kadaif, kadayif, croissant, pasta, noodle, seitan, graham cracker, graham flour",
    ["wheat"],
    "milk, egg and soy",
  ),
  usual("couscous, semolina, bulgur, freekeh", ["wheat"]),
  byLaw("spelt, khorasan, kamut", ["wheat"], `${annex}: "wheat (such as spelt and khorasan wheat)"`),
  byLaw(
    "durum, emmer, einkorn, farro, triticale",
    ["wheat"],
    `${fda}: wheat is any species of the genus Triticum`,
  ),
];

const soyAndGrain: readonly PreparedRow[] = [
  usual("tofu, tempeh, natto, soya bean, soy bean", ["soy"]),
  usual("miso", ["soy"], "barley and wheat"),
  usual("soy sauce, soya sauce, shoyu, teriyaki", ["soy", "wheat"]),
  usual("soy milk, soya milk, soy cream, soya cream, soy yogurt", ["soy"]),
  usual("soy lecithin, soya lecithin", ["soy"]),
  usual("egg lecithin", ["egg"]),
  usual("lecithin", [], "soy or egg"),
  usual("oat milk, oat cream, oatmeal, granola, muesli, porridge", ["oats"], "wheat, from the mill"),
  usual("malted milk, malted milk powder", ["barley", "wheat", "milk"]),
  usual("malted, malt extract, malt syrup, barley malt", ["barley"], "wheat"),
  usual("beer, stout, ale, lager", ["barley"], "wheat"),
];

const others: readonly PreparedRow[] = [
  usual("hazel nut, filbert, cobnut, cob nut", ["hazelnut"]),
  usual("groundnut, monkey nut", ["peanut"]),
  usual("tahin, tahina", ["sesame"]),
  usual("almond milk, almond cream", ["almond"]),
  usual("anchovy, salmon, tuna, cod, trout, sardine, mackerel, herring, caviar, fish sauce, isinglass", [
    "fish",
  ]),
  usual("crawfish, scampi", ["crustaceans"]),
  recalled("wine, white wine, red wine, mulled wine, port wine, marsala", ["sulphites"]),
  recalled("prosecco, cava, sherry, vermouth, cider, sparkling wine, dessert wine", ["sulphites"]),
  recalled("dried fruit, dried apricot, candied peel, glace cherry, maraschino cherry", [], "sulphites"),
];

/** What sounds like an allergen and is none. */
const soundAlike: readonly PreparedRow[] = [
  usual("coconut cream, coconut milk, rice milk, cocoa butter, cacao butter, shea butter", []),
  usual("apple butter, pumpkin butter, butter bean, butternut squash, cream soda", []),
  usual("ginger beer, root beer, ginger ale, crab apple, oyster mushroom", []),
];

export const preparedAllergens: readonly PreparedRow[] = [
  ...eggAndMilk,
  ...sweets,
  ...baked,
  ...soyAndGrain,
  ...others,
  ...soundAlike,
];
