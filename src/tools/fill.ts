/** Filling for a number of macarons, ring and center, and macarons that a bowl of filling fills. */
import * as z from "zod/mini";
import { fillingLoss, macaronFilling, ringShare } from "../../data/rules/shells.ts";
import { bases } from "../../data/words/things.ts";
import type { Figure, Memory, Outcome, Reading, World } from "./contract/index.ts";
import { later, tool } from "./contract/index.ts";
import { cues } from "./lib/cue.ts";
import { bareNumbers, diameter, pointsBack, says, weighed } from "./lib/find.ts";
import { count, diameter_mm, weight_g } from "./lib/inputs.ts";
import { learned, lessonText, oddLines, ownFigures } from "./lib/learned.ts";
import { counted, plain, weight } from "./lib/show.ts";
import { fillingFor, fillingWeight, macaronsFrom, sizing } from "./lib/sizing.ts";

const inputs = later(() =>
  z.strictObject({
    macarons: z.optional(count("macarons")),
    /** Shells that are there to be filled, two to a macaron. */
    shells: z.optional(count("shells")),
    diameter_mm: z.optional(diameter_mm),
    /** Filling at hand, for the way back. */
    filling_g: z.optional(weight_g),
    filling: z.optional(z.string()),
    /** Two fillings: a ring and a center. */
    two: z.optional(z.boolean()),
    ring: z.optional(z.string()),
    center: z.optional(z.string()),
    /** Nobody said which of two is the ring. */
    placed: z.optional(z.boolean()),
  }),
);

type Inputs = z.infer<ReturnType<typeof inputs>>;

export const fill = tool<Inputs>({
  name: "fill",
  purpose: "Filling to make for a number of macarons, ring and center, or macarons from a bowl of filling",
  inputs,
  cues: cues(
    [
      5,
      "{weight} .. {base=(filling|buttercream|ganache)} .. (?:fill|enough) .. how many",
      "{weight} .. {base=(filling|buttercream|ganache)} .. enough to fill",
      "how many .. {weight} .. {base=(filling|buttercream|ganache)} .. fill",
      "how many {count=macarons} (?:will|does|can|would|could) (?:that|it|this) fill",
    ],
    [8, "(?:center|centre|middle) .. {base} (?:around|round|outside)"],
    [
      8,
      "(?:ring|border|rim|dam|wall|outer|outside) .. (?:center|centre|middle|core|inside|inner)",
      "(?:center|centre|middle|core|inside|inner) .. (?:ring|border|rim|dam|wall|outer|outside)",
    ],
    [
      4,
      "(?:how|hw) much (?:more )?{base=(filling|buttercream|ganache)} .. {number} .. {count=(macarons|shells)}",
      "{number} .. {count=macarons} .. (?:how|hw) much (?:more )?{base=(filling|buttercream|ganache)}",
      "(?:how|hw) many .. {count=macarons} .. {weight} .. {base=(filling|buttercream|ganache)}",
      "{weight} .. {base=(filling|buttercream|ganache)} .. (?:how|hw) many .. {count=macarons}",
      "how much .. {number} .. {count=macarons} as (?:the |a )?(?:center|centre|ring)",
      "{base=filling} for {number}",
      "{base=(buttercream|ganache|filling)} for .. {number} of (?:them|those|these)",
      "to_fill\\S* {number} .. {count=macarons} .. (?:how|hw) much (?:do|should|shall|must) i",
      "(?:how|hw) much (?:do|should|shall|must) i .. to_fill\\S* {number} .. {count=macarons}",
      "^(?:and )*(?:the )?fill for {number}",
      "{count=macarons} .. (?:waiting|ready|there|baked|need|want|paired|matched) (?:for|to|a|some|their)? ?\\S*(?:filling|fill|filled)",
      "{count=macarons} .. {weight} .. {base=(filling|buttercream|ganache)} .. fill",
      "(?:how|hw) many .. (?:fill|filled) .. {weight}",
      "{weight} .. fill .. (?:how|hw) many",
    ],
    [
      3.5,
      "{base=filling} for (?:them|those|it|these|all|the (?:whole )?lot)",
      "(?:how|hw) much (?:more )?{base=filling}",
      "{base=filling} .. {number} .. {count=macarons}",
      "{base=filling} per {count=macarons}",
      "{base=filling} .. (?:one|each|a|every) {count=macarons}",
      "{count=macarons} .. {base=filling} (?:do|should|to)",
      "fill {number} .. {count=macarons}",
      "{weight} .. {base} .. enough .. {number} .. {count=macarons}",
      "enough {base=(filling|buttercream|ganache)} .. {number} .. {count=macarons}",
      "what .. {base=filling} .. {count=macarons}",
      "{number} .. {count=macarons} .. {base=filling}",
      "{weight} .. {base=filling} .. (?:how|hw) many",
      "{count=macarons} .. (?:how|hw) much .. (?:each|of each)",
    ],
    [2, "{base=filling}", "(?:ring|center|centre)(?: |$)", "fill"],
    [1, "{count=macarons}", "each"],
    [
      -4,
      "{dose}",
      "{base=batter}",
      "flavou?r",
      "(?:note|log) ",
      "timer",
      "(?:ready|due|by|for|until) {when}",
      "(?:how long|keep|counter|freeze|fridge)",
      "label",
      "split {weight}",
      "{percent}",
      "{symptom}",
      "buy",
      "(?:cost|margin|charge)",
      "(?:filled|made) .. {when}",
      "when (?:do|should)",
    ],
    [
      -3,
      "{base=(filling|buttercream|ganache)} .. {weight} .. (?:of )?{taste}",
      "save",
      "{ingredient=(chocolate|cream|whites|butter)} .. {base}",
      "{chocolate} .. {ingredient=cream}",
      "recipe",
    ],
    [-8, "(?:how|hw) much {dose} .. (?:for|in|into) (?:the |my )?(?:ring|center|centre)"],
    [-1.5, "{taste} .. {weight}"],
  ),
  examples: [
    { say: "how much filling do I make for 24 macarons", inputs: { macarons: 24 } },
    {
      say: "48 macarons with a caramel center and a buttercream ring, how much of each",
      inputs: { macarons: 48, two: true },
    },
    {
      say: "how many macarons can I fill with 300 g ganache",
      inputs: { filling_g: 300, filling: "ganache" },
    },
    { say: "how much filling goes in one 4.5 cm macaron", inputs: { macarons: 1, diameter_mm: 45 } },
    { say: "enough buttercream for 36 macarons", inputs: { macarons: 36, filling: "buttercream" } },
  ],
  elsewhere: [
    { say: "how much flavor for 300 g filling", tool: "dose" },
    { say: "batter for 24 macarons", tool: "shells" },
    { say: "filled them this morning, how long in the fridge", tool: "keep" },
  ],
  rivals: [
    ["macarons", "shells", "filling_g"],
    ["two", "ring", "center", "placed"],
  ],
  read,
  compute,
});

function read(reading: Reading, memory: Memory): Partial<Inputs> {
  const numberOf = (what: string) =>
    reading.amounts.find((each) => each.dim === "number" && each.of?.count === what && !each.fraction)?.value;
  const mix = reading.things.find(
    (each) => each.base && each.base !== "filling" && each.base !== "batter",
  )?.base;
  const size = diameter(reading);
  const weights = weighed(reading).filter((each) => !each.thing || each.thing.base);
  const one =
    says(reading, /(?:one|each|per|every|a)(?:<number>)?(?: single)? \S*<count=macarons/) ||
    (says(reading, /in (?:one|each)(?: |$)/) && numberOf("macarons") === undefined);
  const two =
    !says(reading, onlyOne) &&
    says(
      reading,
      /(?:^| )(?:ring|border|rim|dam)(?: |$)|two fillings|both fillings|as (?:the |a )?(?:center|centre)(?: |$)|<base=\S+ (?:a?round|outside)(?: it| that)?(?: |$)/,
    ) &&
    says(reading, /(?:^| )(?:center|centre|middle|core|inside|each|ring|fillings)(?: |$)/);
  const mixes = two ? [] : twoMixes(reading);
  const macarons = numberOf("macarons") ?? (one ? 1 : undefined);
  const shells = numberOf("shells");
  const bare =
    macarons === undefined &&
    shells === undefined &&
    weights.length === 0 &&
    (memory.follows ||
      memory.slot ||
      /for \S*<number|<number> of (?:them|those|these)|<number> (?:\S+ )?ones/.test(reading.mask))
      ? bareNumbers(reading)[0]?.value
      : undefined;
  const before =
    memory.follows && memory.last?.tool === "fill" ? (memory.last.inputs as Partial<Inputs>) : undefined;
  // "and for 36 with a jam center": no bowl's weight behind one of 320 g, and a ring is sized by the macarons
  const isCount = two && says(reading, /(?:^| )for \S*<number>/);
  const backward = before?.filling_g !== undefined && before.macarons === undefined && !isCount;
  const enough = says(reading, /enough/) && weights.length > 0;
  const counted = macarons ?? bare;
  const fromTable =
    counted === undefined &&
    shells === undefined &&
    weights.length === 0 &&
    !(memory.follows && memory.last?.tool === "fill")
      ? memory.table
      : {};
  return {
    ...(backward && bare !== undefined
      ? {}
      : counted !== undefined && !enough
        ? { macarons: counted }
        : shells !== undefined
          ? { shells }
          : {}),
    ...(backward && bare !== undefined ? { filling_g: bare } : {}),
    ...(weights[0] && (counted === undefined || enough) ? { filling_g: weights[0].grams } : {}),
    ...(mix && !two && mixes.length < 2 ? { filling: mix } : {}),
    ...(mixes.length === 2 ? { two: true, ring: mixes[0], center: mixes[1], placed: true } : {}),
    ...(two ? { two, ...twoNames(reading) } : {}),
    ...(before?.two && says(reading, onlyOne) ? { two: false } : {}),
    ...(size !== undefined
      ? { diameter_mm: size }
      : fromTable.diameter_mm !== undefined && fromTable.macarons !== undefined
        ? { diameter_mm: fromTable.diameter_mm }
        : {}),
    ...(fromTable.macarons !== undefined
      ? { macarons: fromTable.macarons }
      : pointsBack(reading) &&
          fromTable.mass &&
          (!mix || (fromTable.mass.thing === mix && says(reading, /how many/)))
        ? { filling_g: fromTable.mass.grams }
        : {}),
  };
}

/** "without the ring, just the one filling". */
const onlyOne =
  /(?:without|no|skip|drop|leave out) (?:the |a )?(?:ring|border|rim|dam|center|centre|middle)|(?:just|only) (?:the )?(?:one|a single|\S*<number>) \S*<base=filling/;

/** "buttercream and ganache": two that share the filling, the firmer one the ring; its name stands first. */
function twoMixes(reading: Reading): string[] {
  const named = reading.things.filter(
    (each) => each.base && !["filling", "batter", "meringue"].includes(each.base),
  );
  const [first, second] = [...new Set(named.map((each) => each.base ?? ""))];
  if (!first || !second) return [];
  const between = reading.text.slice(named[0]?.at[1], named.at(-1)?.at[0]);
  if (!/(?:^| )(?:and|&|,|plus|with)(?: |$)/.test(between) || /(?:^| )or(?: |$)/.test(between)) return [];
  const isButter = (base: string) => bases.find((each) => each.id === base)?.column === "buttercream";
  return !isButter(first) && isButter(second) ? [second, first] : [first, second];
}

/** "caramel center with a buttercream ring": what stands before each word. */
function twoNames(reading: Reading): Partial<Inputs> {
  const before = (word: RegExp) => {
    const match = word.exec(reading.mask);
    return match?.[1]?.replaceAll("_", " ").trim();
  };
  const ring = before(/(\S+)<\S+ (?:ring|border|rim|dam)/);
  const center = before(/(\S+)<\S+ (?:center|centre|middle|core)/);
  return { ...(ring ? { ring } : {}), ...(center ? { center } : {}) };
}

function compute(said: Inputs, world: World): Outcome {
  const size = sizing(said.diameter_mm, world.bench);
  const lessons = learned(world, size.diameter_mm);
  const figures = ownFigures(lessons);
  const { filling: each, "filling loss": loss } = lessons;
  const taught = [...(each ? [each] : []), ...(loss ? [loss] : [])];
  const own = size.diameterFrom === "bench" || taught.length > 0;
  const odd = oddLines(taught, world.now_ms);
  const cautions = odd.length ? { cautions: odd } : {};
  const lost = figures.fillingLoss_percent ?? fillingLoss.value;
  const kept = plain(1 - lost / 100, 4);
  const made = figures.filling_g;
  const one = fillingWeight(size.diameter_mm, figures);
  const d = plain(size.diameter_mm);
  const assumed = [
    ...(size.diameterFrom === "book" ? [`${d} mm shells`] : []),
    ...(said.placed ? [`${said.ring} as the ring, ${said.center} as the center`] : []),
  ];
  const rule = {
    text: each
      ? `${taught.map(lessonText).join("; ")}, at ${d} mm`
      : `0.42 × d² g in one macaron, d in cm: ${plain(one)} g at ${d} mm; ${loss ? lessonText(loss) : `${plain(lost)} % stays in bowl and bag`}, so to make = needed / ${kept}`,
    basis: own ? ("your bench" as const) : macaronFilling.basis,
  };
  const scale = world.bench.scale_g;
  if (said.filling_g !== undefined && said.macarons === undefined && said.shells === undefined) {
    const macarons = macaronsFrom(said.filling_g, size.diameter_mm, figures);
    return {
      status: "answered",
      headline: `${counted(macarons, "macaron")} from ${weight(said.filling_g, scale)} g ${said.filling ?? "filling"}`,
      figures: [{ name: "macarons", value: macarons, unit: "macarons" }],
      rule: {
        ...rule,
        text: each
          ? `${rule.text}; macarons = floor(G / filling a macaron)`
          : `macarons = floor(G × ${kept} / (0.42 d²)), d ${d} mm${loss ? `; ${lessonText(loss)}` : ""}`,
      },
      assumed,
      ...cautions,
      working: [
        made === undefined
          ? `${plain(said.filling_g)} × ${kept} / ${plain(one, 4)} = ${plain((said.filling_g * (1 - lost / 100)) / one)}, cut off to ${macarons}`
          : `${plain(said.filling_g)} / ${plain(made, 4)} = ${plain(said.filling_g / made)}, cut off to ${macarons}`,
      ],
      leaves: { macarons, diameter_mm: size.diameter_mm },
    };
  }
  const macarons = said.macarons ?? (said.shells !== undefined ? Math.floor(said.shells / 2) : undefined);
  if (macarons === undefined)
    return {
      status: "asking",
      headline: "For how many macarons?",
      question: "For how many macarons?",
      slot: "macarons",
    };
  const total = fillingFor(macarons, size.diameter_mm, figures);
  const shares = said.two
    ? { ring: (total * ringShare.value) / 100, center: (total * (100 - ringShare.value)) / 100 }
    : undefined;
  const total_: Figure = { name: shares ? "total" : "filling", value: total, unit: "g" };
  return {
    status: "answered",
    headline: shares
      ? `${weight(shares.ring, scale)} g ${said.ring ?? ""} ring, ${weight(shares.center, scale)} g ${said.center ?? ""} center`.replace(
          / {2,}/g,
          " ",
        )
      : macarons === 1
        ? `${plain(one)} g ${said.filling ?? "filling"} in one macaron`
        : `${weight(total, scale)} g ${said.filling ?? "filling"} for ${counted(macarons, "macaron")}`,
    figures:
      macarons === 1 && !shares
        ? [
            { name: "filling", value: one, unit: "g" },
            { ...total_, name: "total" },
          ]
        : shares
          ? [
              { name: "ring", value: shares.ring, unit: "g" },
              { name: "center", value: shares.center, unit: "g" },
              total_,
            ]
          : [total_],
    rule: shares
      ? { ...rule, text: `${rule.text}; ${ringShare.value} % ring, ${100 - ringShare.value} % center` }
      : rule,
    assumed,
    ...cautions,
    working: [
      ...(made === undefined
        ? [
            `needed: ${plain(macarons)} × ${plain(one, 4)} = ${plain(macarons * one)} g`,
            `to make: ${plain(macarons * one)} / ${kept} = ${plain(total)} g`,
          ]
        : [`to make: ${plain(macarons)} × ${plain(made, 4)} = ${plain(total)} g`]),
      ...(shares
        ? [
            `ring ${ringShare.value} % = ${plain(shares.ring)} g, center ${100 - ringShare.value} % = ${plain(shares.center)} g`,
          ]
        : []),
    ],
    leaves: {
      mass: { grams: total, thing: said.filling ?? "filling" },
      macarons,
      diameter_mm: size.diameter_mm,
      ...(shares
        ? {
            parts: [
              { name: "ring", grams: shares.ring },
              { name: "center", grams: shares.center },
            ],
          }
        : {}),
    },
  };
}
