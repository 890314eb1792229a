/**
 * What goes wrong, in the words that bakers use. The ids are the rule book's own, and notes keep them.
 * One word can mean several ("split" is a ganache's, a buttercream's or a shell's): `of` says what has to be named
 * beside it, and the sentence decides.
 */
export interface SymptomRow {
  id: string;
  words: readonly string[];
  /** The mix it is a fault of. */
  of?: "ganache" | "buttercream" | "batter" | "meringue";
}

const ganache = "ganache";
const buttercream = "buttercream";

export const symptoms: readonly SymptomRow[] = [
  { id: "no feet", words: ["no feet", "no foot", "without feet", "missing feet", "didnt get feet", "did not get feet", "no frills", "havent got feet", "havent got any feet", "no skirt", "didnt grow feet", "never got feet", "footless", "didnt develop feet", "no ruffles", "not getting feet", "hardly any feet", "have no feet", "feet never", "no proper feet", "dont have feet", "didnt have feet", "didnt get any feet", "feet didnt form", "feet never formed", "feet didnt appear", "didnt form feet", "no feet at all", "zero feet"] },
  { id: "cracked tops", words: ["cracked tops", "tops cracked", "cracked", "cracks", "cracking", "craked", "split tops", "tops split", "cracked shells", "burst", "volcano", "volcanoes", "cracky", "fissures", "tops burst", "erupted", "split on top"] },
  { id: "hollow", words: ["hollow", "hollows", "hollowed", "empty inside", "air gap", "air pocket", "air pockets", "gap under", "holow", "hollw", "hollowness", "hollow shells", "cavity", "empty shells", "gap inside", "gaps inside", "big gap", "hollow inside", "cave inside", "caves", "big gaps"] },
  { id: "lopsided feet", words: ["lopsided feet", "lopsided", "lop sided", "uneven feet", "feet on one side", "slanted", "tilted", "leaning", "crooked", "crooked feet", "feet only on one side", "one sided feet", "wonky", "wonky feet", "slant", "leaning feet", "feet on only one side", "lean to one side", "uneven"] },
  { id: "spread flat", words: ["spread flat", "spread", "spreading", "flat", "spread out", "too flat", "pancakes", "spread too much", "ran into each other", "ran together", "flattened", "merged together", "flat as pancakes"] },
  { id: "peaks that stay", words: ["peaks that stay", "peaks stay", "nipples", "pointy tops", "tips stay", "points that stay", "peak on top", "pointed tops", "peaks on top", "peaks dont settle", "nubs", "pointy", "peaks wont go", "little tails", "tails on top", "peaks dont melt", "points on top", "little points", "peaks wont go down", "peaks wont settle", "peaks wont flatten", "peaks", "pointy tips", "little peaks", "tips dont settle", "tails", "peaks remain"] },
  { id: "lumpy tops", words: ["lumpy tops", "lumpy", "grainy tops", "bumpy tops", "bumpy", "rough tops", "lumpy or grainy tops", "not smooth", "tops grainy", "lumps", "grainy shells", "gritty tops", "rough surface", "tops rough", "rough", "pimples", "sandpaper", "grainy", "gritty"] },
  { id: "wrinkled tops", words: ["wrinkled tops", "wrinkled", "wrinkly", "wrinkles", "oily tops", "tops oily", "oily shells", "wrinkled or oily tops", "blotchy", "translucent spots", "oil spots", "greasy tops", "tops greasy", "blotches", "wrinkle", "oily patches", "greasy spots", "oily spots", "oily", "greasy", "wrinkling", "crinkled", "crinkly"] },
  { id: "browned", words: ["browned", "brown tops", "browning", "turned brown", "going brown", "too brown", "brown edges", "burnt", "burned", "scorched", "brown spots", "tops brown", "gone brown", "brown shells", "go brown", "went brown", "goes brown"] },
  { id: "sticky bottoms", words: ["sticky bottoms", "stick to the mat", "sticking", "stuck to the mat", "stuck to the paper", "stuck", "stick to the paper", "stick to the parchment", "bottoms stick", "wont come off", "leave their bottoms", "wet bottoms", "underbaked", "under baked", "sticky underneath", "sticky bottom", "bottoms stay behind", "dont come off", "bottoms left", "bottoms sticky", "tear off", "bottoms stuck", "sticky", "wont lift off", "wont peel off", "wont release"] },
  { id: "soft after maturing", words: ["soft after maturing", "too soft after", "soggy", "mushy", "gone soft", "went soft", "soggy shells", "soft and wet", "mushy shells", "soft shells", "sogy", "turned to mush", "too soft", "soft after", "gone mushy"] },
  { id: "dry after maturing", words: ["dry after maturing", "too dry", "hard after maturing", "still hard", "crunchy", "hard shells", "dry shells", "too hard", "too chewy", "crisp", "still crunchy", "dry and hard", "still dry", "dry after"] },
  { id: "split ganache", of: ganache, words: ["split ganache", "split", "broken ganache", "broke", "broken", "seized", "seperated", "separated", "oil separated", "oily", "greasy", "curdled", "splitting", "seperating", "oily ganache"] },
  { id: "loose ganache", of: ganache, words: ["runny", "too loose", "bit loose", "came out loose", "turned out loose", "is loose", "too runny", "too soft", "wont set", "didnt set", "not setting", "liquid", "soupy", "too thin", "thin", "still liquid", "wont firm up", "never set", "too wet", "soup", "like soup", "sloppy", "to runny", "to loose", "to soft"] },
  { id: "stiff ganache", of: ganache, words: ["too stiff", "too hard", "too firm", "too thick", "stiff", "hard as a rock", "rock hard", "set hard", "to stiff", "to hard", "to firm", "to thick"] },
  { id: "grainy ganache", of: ganache, words: ["grainy ganache", "grainy", "sandy", "gritty", "lumpy", "grains"] },
  { id: "curdled buttercream", of: buttercream, words: ["curdled buttercream", "curdled", "curdling", "curdle", "split", "cottage cheese", "scrambled eggs", "curdly", "separated", "broke", "broken", "curdeled", "curds", "splitting", "seperated", "lumpy"] },
  { id: "soupy buttercream", of: buttercream, words: ["soupy buttercream", "soupy", "runny", "too soft", "melted", "liquid", "too runny", "too loose", "soup", "thin", "too thin", "sloppy", "wont thicken", "wont come together", "loose", "to runny"] },
  { id: "grainy buttercream", of: buttercream, words: ["grainy buttercream", "grainy", "gritty", "sandy", "sugar grains", "crunchy", "grains"] },
  { id: "faded color", words: ["faded color", "faded colour", "color faded", "colour faded", "faded", "fading", "colour fades", "color fades", "lost colour", "lost color", "lost their color", "lost their colour", "colour went", "color washed out", "colour washed out", "pale after baking", "washed out", "colour disappeared", "color disappeared", "dull colour", "dull color", "fade", "fades", "lost its color", "lost its colour"] },
  { id: "bleeding color", words: ["bleeding color", "bleeding colour", "color bleeding", "colour bleeding", "colour bleeds", "color bleeds", "bleeds", "bleeding", "colour runs", "color runs", "colour bled", "color bled", "bled", "colours run", "bleed"] },
  { id: "runny batter", of: "batter", words: ["runny batter", "runny", "too runny", "too thin", "too loose", "overmixed", "over mixed", "like water", "watery", "loose", "liquid", "thin", "soupy", "overfolded", "over folded", "to runny"] },
  { id: "stiff batter", of: "batter", words: ["stiff batter", "stiff", "too stiff", "too thick", "thick", "undermixed", "under mixed", "wont flow", "wont ribbon", "too dry", "doesnt flow", "lumpy", "underfolded", "to stiff", "to thick"] },
  { id: "meringue that will not peak", of: "meringue", words: ["meringue that will not peak", "wont peak", "wont whip", "wont stiffen", "no stiff peaks", "wont form peaks", "not stiff", "wont whip up", "not whipping", "stays runny", "runny", "wont get stiff", "doesnt get stiff", "wont go stiff", "stays soft", "wont hold peaks", "not peaking", "collapsed", "flat", "refuses to peak", "never peaks", "not getting stiff", "soft", "wont get to stiff peaks", "wont come to peaks", "doesnt peak", "liquid", "soupy", "will not peak", "wont make peaks"] },
  { id: "good feet", words: ["lovely feet", "nice feet", "good feet", "great feet", "perfect feet", "beautiful feet", "proper feet", "tall feet"] },
  { id: "full", words: ["full", "full shells", "no hollows", "not hollow", "no hollow", "nice and full", "not one hollow", "none hollow", "no cracks"] },
];

/** Ids that praise; they are kept with a note and never count as a problem. */
export const praise: readonly string[] = ["good feet", "full"];
