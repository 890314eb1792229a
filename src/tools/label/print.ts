/** A label on paper: the same lines, blanks to write on where something isn't known, type no smaller than the law's. */
import { euNetType, leastType, type Market, usNetType } from "../../../data/rules/labels.ts";
import type { Outcome, Paper, PaperBlock, World } from "../contract/index.ts";
import { monthName, partsOf } from "../lib/days.ts";
import { paperFor } from "../lib/paper-size.ts";
import { printablePaper } from "../lib/printable.ts";
import { listed } from "../lib/show.ts";
import type { LabelInputs } from "./label.ts";
import { type Ingredient, ingredientLine, type Net } from "./lines.ts";
import type { Dates } from "./whole.ts";

/** What a label says, worked out. */
interface Said {
  ingredients: readonly Ingredient[];
  contains: readonly string[];
  /** Something in it may bring more allergens. */
  isOpen: boolean;
  net: Net | undefined;
  dates: Dates | undefined;
  market: Market;
  by: string | undefined;
  title: string | undefined;
  /** What is left blank, by name. */
  blanks: readonly string[];
  /** What has to be checked before it goes on a box. */
  checks: readonly string[];
}

const gap = "______";

/** "18 Mar 2026": no country reads it as another day. */
function onPaper(day: string): string {
  const [year, month, date] = partsOf(day);
  return `${date} ${monthName(month).slice(0, 3)} ${year}`;
}

function dated({ dates, market }: Said): PaperBlock[] {
  const best = market === "us" ? "Best by" : "Best before";
  if (dates)
    return [{ is: "text", text: `${best} ${onPaper(dates.bestBy)}. Use by ${onPaper(dates.useBy)}.` }];
  return [
    { is: "blank", caption: best, lines: 1 },
    { is: "blank", caption: "Use by", lines: 1 },
  ];
}

function contained({ contains, isOpen, market }: Said): PaperBlock[] {
  if (market === "eu" || (contains.length === 0 && !isOpen)) return [];
  return [{ is: "strong", text: `Contains: ${[...contains, ...(isOpen ? [gap] : [])].join(", ")}` }];
}

function netBlock({ net, market }: Said): PaperBlock {
  if (!net) return { is: "blank", caption: market === "us" ? "Net Wt" : "Net weight", lines: 1 };
  if (market === "us") return { is: "tall", text: net.text, least_mm: usNetType.mm, of: "letters" };
  const row = euNetType.rows.find(({ upTo_g }) => net.grams <= upTo_g);
  return { is: "tall", text: net.text, least_mm: row?.mm ?? 6, of: "digits" };
}

const blocksOf = (said: Said): PaperBlock[] => [
  { is: "title", text: said.title ?? "Macarons" },
  { is: "text", text: ingredientLine(said.ingredients, said.market, gap.repeat(3)) },
  ...contained(said),
  {
    is: "text",
    text: said.market === "us" ? "Keep refrigerated at or below 41 °F (5 °C)" : "Keep at or below 5 °C",
  },
  ...dated(said),
  said.by ? { is: "text", text: `Made by ${said.by}` } : { is: "blank", caption: "Made by", lines: 2 },
  netBlock(said),
];

/** The label's answer with a PDF to it. What doesn't fit is found out when it is set. */
export function printed(outcome: Outcome, said: Said, inputs: LabelInputs, world: World): Outcome {
  const { market, checks, blanks, net } = said;
  const copies = inputs.full_page ? undefined : Math.round(inputs.copies ?? 1);
  const many = copies === 1 ? "The label" : copies === undefined ? "A sheet of labels" : `${copies} labels`;
  const { size, assumed } = paperFor(inputs.paper, world.bench, market);
  const least = leastType[market];
  const whole: Paper = {
    title: copies === 1 ? "Label: macarons" : "Labels: macarons",
    size,
    made_ms: world.now_ms,
    blocks: blocksOf(said),
    labels: {
      ...(copies === undefined ? {} : { copies }),
      ...(inputs.label_width_mm ? { width_mm: inputs.label_width_mm } : {}),
      ...(inputs.label_height_mm ? { height_mm: inputs.label_height_mm } : {}),
      least_x_mm: least.x_mm,
      law: least.source,
      margin: [
        "Print at 100 % (actual size): smaller, the type may be under what the law asks for. Cut along the lines.",
        ...(market === "us"
          ? ["Write in the statement for home kitchens where your local law asks for one."]
          : []),
        ...(checks.length ? [`Not complete. Check before it goes on a box: ${checks.join("; ")}.`] : []),
      ],
    },
  };
  const { paper, cautions } = printablePaper(whole);
  const open = [...new Set(checks.map((text) => text.split(":")[0] ?? text))];
  const netType =
    net && market === "us"
      ? `net weight in letters of 1/8 inch, for a front of up to ${usNetType.front_sqin} square inches`
      : "";
  return {
    ...outcome,
    headline: `${many} as a PDF${blanks.length ? `; to be written in by hand: ${listed(blanks)}` : ""}${open.length ? `; not complete, check ${listed(open)}` : ""}`,
    ...(outcome.rule
      ? {
          rule: {
            ...outcome.rule,
            text: `${outcome.rule.text}; type with a lower-case x of at least ${market === "us" ? "1/16 inch" : "1.2 mm"}${netType ? `; ${netType}` : ""}`,
            source: [
              outcome.rule.source,
              least.source,
              ...(net ? [market === "us" ? usNetType.source : euNetType.source] : []),
            ].join("; "),
          },
        }
      : {}),
    assumed: [...(outcome.assumed ?? []), ...assumed],
    cautions: [
      ...cautions,
      'Print it at 100 % ("actual size"): fitted to the page, the type gets smaller than the law allows.',
      ...(outcome.cautions ?? []),
    ],
    effects: [{ do: "write file", name: copies === 1 ? "label.pdf" : "labels.pdf", paper }],
  };
}
