/** Typos: which are mended and toward what, and the words that must come through as they were typed. */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { shortSlips } from "../../data/words/everyday.ts";
import { ingredients } from "../../data/words/ingredients.ts";
import { lookAlikes } from "../../data/words/look-alikes.ts";
import { magnitudes, partWords, smallNumbers, tens } from "../../data/words/numbers.ts";
import { plainEnglish } from "../../data/words/plain-english.ts";
import { units } from "../../data/words/units.ts";
import { read, understood } from "./reading.ts";

const { mend, knows } = understood.reader.mender;

describe("mended", () => {
  it.each([
    ["buttercreem", "buttercream"],
    ["butterceam", "buttercream"],
    ["buttecrream", "buttercream"],
    ["choclate", "chocolate"],
    ["chocolte", "chocolate"],
    ["ganahce", "ganache"],
    ["gananche", "ganache"],
    ["flavvoring", "flavoring"],
    ["rasbperry", "raspberry"],
    ["strawbrery", "strawberry"],
    ["pistachoi", "pistachio"],
    ["pistahcio", "pistachio"],
    ["hazelnutt", "hazelnut"],
    ["lavander", "lavender"],
    ["vanilia", "vanilla"],
    ["caramle", "caramel"],
    ["almnod", "almond"],
    ["powdred", "powdered"],
    ["granluated", "granulated"],
    ["macarosn", "macarons"],
    ["maracons", "macarons"],
    ["shlels", "shells"],
    ["bater", "batter"],
    ["merigue", "meringue"],
    ["timmer", "timer"],
    ["grannulated", "granulated"],
    ["recpie", "recipe"],
    ["allegrens", "allergens"],
    ["fileld", "filled"],
    ["filllings", "fillings"],
    ["wieghs", "weighs"],
    ["shuold", "should"],
    ["mcuh", "much"],
    ["teh", "the"],
    ["hwo", "how"],
  ])("%s means %s", (typed, right) => {
    // the tables hold misspellings too, so what it becomes may be another spelling of the same thing
    expect(meaning(typed)).toBe(meaning(right));
    if (meaning(right) === nothing) expect(mend(typed)).toEqual([right]);
  });

  it.each([
    ["almondflour", "almond flour"],
    ["chocolateganache", "chocolate ganache"],
    ["vanillaextract", "vanilla extract"],
    ["macaronshells", "macaron shells"],
  ])("a forgotten space: %s is read as %s", (typed, right) => {
    expect(mend(typed)?.join(" ")).toBe(right);
  });

  it("says what it changed, and only that", () => {
    const { mended } = read("230 g buterceram, how mcuh flavvoring");
    expect(mended.map(({ said }) => said)).toEqual(["buterceram", "mcuh", "flavvoring"]);
    for (const { read: right } of mended) expect(knows(right)).toBe(true);
    expect(read("I have 230 g buttercream, how much flavor?").mended).toEqual([]);
  });

  it("mends only toward words that it knows, so that a second time changes nothing", () => {
    fc.assert(
      fc.property(fc.stringMatching(/^[a-z]{3,14}$/), (word) => {
        for (const right of mend(word) ?? []) {
          expect(knows(right)).toBe(true);
          expect(mend(right)).toBeUndefined();
        }
      }),
      { numRuns: 500 },
    );
  });

  it("puts two swapped letters inside an ingredient's name right", () => {
    const names = ingredients.map(({ name }) => name).filter((name) => /[a-z]{7,}/.test(name));
    fc.assert(
      fc.property(fc.constantFrom(...names), fc.nat(), (name, n) => {
        const slipped = name.replace(/[a-z]{7,}/, (word) => {
          const at = 1 + (n % (word.length - 3));
          return `${word.slice(0, at)}${word[at + 1]}${word[at]}${word.slice(at + 2)}`;
        });
        expect(meaning(`100 g ${slipped}`), slipped).toBe(meaning(`100 g ${name}`));
      }),
      { numRuns: 300 },
    );
  });
});

/** What a word means by the tables, for comparing two spellings of it. */
const meaning = (word: string) =>
  read(word)
    .things.map((thing) => thing.id)
    .join(", ");
const nothing = "";

describe("never touched", () => {
  it("units, in every spelling that the table has", () => {
    for (const row of units)
      for (const word of [...row.words, ...(row.risky ?? [])].flatMap((each) => each.split(" ")))
        expect(mend(word.replace(/[^a-z]/g, "")), word).toBeUndefined();
  });

  it("number words", () => {
    for (const table of [smallNumbers, tens, magnitudes, partWords])
      for (const word of Object.keys(table)) expect(mend(word), word).toBeUndefined();
  });

  it("words of everyday English", () => {
    const slips = new Set(Object.keys(shortSlips));
    const words = `${plainEnglish()} ${lookAlikes()}`
      .split(/\s+/)
      .filter((word) => word.length > 3 && !slips.has(word));
    expect(words.length).toBeGreaterThan(5000);
    expect(words.filter((word) => mend(word) !== undefined)).toEqual([]);
  });

  it.each([
    "better",
    "bitter",
    "matter",
    "butter",
    "batter",
    "latter",
    "shell",
    "shall",
    "shelf",
    "small",
    "smell",
    "spell",
    "dream",
    "cream",
    "cramp",
    "layer",
    "later",
    "floor",
    "flour",
    "flower",
    "flavor",
    "favor",
    "filling",
    "feeling",
    "falling",
    "telling",
    "fitting",
    "testing",
    "tasting",
    "resting",
    "roasting",
    "toasting",
    "toast",
    "taste",
    "waste",
    "paste",
    "past",
    "fast",
    "last",
    "rose",
    "rise",
    "rice",
    "mint",
    "mind",
    "mine",
    "mins",
    "minute",
    "minutes",
    "mixing",
    "piping",
    "pipping",
    "wiping",
    "baking",
    "making",
    "taking",
    "cracks",
    "tracks",
    "split",
    "spilt",
    "grams",
    "gains",
    "glass",
    "glaze",
    "grain",
    "drain",
    "brain",
    "train",
    "house",
    "horse",
    "mouse",
    "whites",
    "writes",
    "white",
    "while",
    "whisk",
    "whisky",
    "honey",
    "money",
    "fridge",
    "bridge",
    "bottle",
    "battle",
    "kettle",
    "settle",
    "sweet",
    "sheet",
    "sheets",
    "timer",
    "time",
    "tired",
    "plain",
    "plan",
    "plate",
    "place",
    "peace",
    "peach",
    "pear",
    "year",
    "near",
    "bean",
    "been",
    "beat",
    "heat",
    "meat",
    "neat",
    "seat",
    "dose",
    "does",
    "done",
    "rest",
    "test",
    "best",
    "nest",
    "west",
    "zest",
    "oven",
    "open",
    "over",
    "even",
    "every",
    "very",
    "berry",
    "cherry",
    "sorry",
    "story",
    "store",
    "stove",
    "stone",
    "score",
    "scale",
    "stale",
    "sale",
    "salt",
    "half",
    "halve",
    "have",
    "salad",
    "cook",
    "cookie",
    "thirteen",
    "thirty",
    "fifteen",
    "fifty",
    "sixteen",
    "sixty",
    "kilo",
    "mile",
    "milk",
    "mild",
    "wild",
    "child",
    "chill",
    "still",
    "steel",
    "boxes",
    "trays",
    "stays",
    "days",
    "price",
    "prize",
    "prices",
    "slice",
    "spice",
    "space",
    "bowls",
    "bowl",
    "towel",
    "topping",
    "shopping",
    "torch",
    "porch",
    "colander",
    "calendar",
    "grater",
    "steep",
    "step",
    "moist",
    "most",
    "roasted",
    "rested",
    "sherry",
    "mulberry",
    "sweating",
    "thirsty",
    "sturdy",
    "scrape",
    "scrap",
    "froth",
    "grinding",
    "ringing",
    "softening",
    "soaking",
    "wafer",
  ])("%s", (word) => {
    expect(mend(word)).toBeUndefined();
  });

  it("toward a unit of one or two letters", () => {
    for (const word of ["bq", "xg", "kgg", "mlx", "ozz", "gm"]) expect(mend(word), word).toBeUndefined();
  });

  it("digits: no number is ever read as another", () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 10 ** 9 }), (value) => {
        expect(read(`${value} g of sugar`).amounts[0]?.value).toBe(value);
      }),
    );
  });

  it("words that are nothing like any other", () => {
    for (const word of ["xyzzyq", "qwrtpsdf", "zzzzzz"]) expect(mend(word), word).toBeUndefined();
  });
});

describe("a slip in a number word", () => {
  it.each([
    ["thirten macarons", 13],
    ["twelv macarons", 12],
    ["fifteeen macarons", 15],
    ["sevnteen macarons", 17],
  ])("%s", (said, value) => {
    const [amount] = read(said).amounts;
    // read as meant, shown as mended; or not read at all, but never as another number
    if (amount) {
      expect(amount.value).toBe(value);
      expect(read(said).mended).toHaveLength(1);
    }
  });
});
