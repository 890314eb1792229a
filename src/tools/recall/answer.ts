/** Looks the notes through. What is found comes newest first; a number over several notes is their median. */
import type { Figure, Note, Outcome, World } from "../contract/index.ts";
import { friendlyDay } from "../lib/days.ts";
import { perList } from "../lib/memo.ts";
import { newestFirst, noteFigures, noteItem, noteLine } from "../lib/notes.ts";
import { capital, counted, listed, plain } from "../lib/show.ts";
import { isTaste } from "../lib/tastes.ts";
import { type Span, spanOf } from "./period.ts";
import type { RecallInputs } from "./recall.ts";
import { rows, typical } from "./typical.ts";

/** As many notes as an answer shows; the line above them counts all. */
const most = 20;

/** @throws never: nothing found is an answer with empty `items` */
export function answerRecall(inputs: RecallInputs, world: World): Outcome {
  const span = inputs.period ? spanOf(inputs.period, world.now_ms) : undefined;
  if (span && "why" in span) return { status: "impossible", headline: span.why };
  const found = matching(world.notes, { inputs, span });
  const about = describe(inputs, span);
  if (found.length === 0)
    return {
      status: "answered",
      headline: world.notes.length ? `No note${about}.` : "There are no notes yet.",
      items: [],
    };
  if (inputs.want === "typical") return typical(inputs, found, about.replace(/^ of /, " for "));
  if (inputs.want === "count") return count(found, about, world);
  if (inputs.want === "total") return total(inputs, found, about);
  if (inputs.want === "best" || inputs.want === "worst") return ranked(inputs.want, found, about, world);
  if (inputs.want === "compare") return versus(found, about, world);
  const figure = inputs.measure && oneFigure(inputs, found, about, world);
  if (figure) return figure;
  if (inputs.want === "last") {
    const { back = 0 } = inputs;
    if (found.length > 0 && back >= found.length)
      return {
        status: "answered",
        headline: `None before that: ${counted(found.length, "note")} in all.`,
        items: [],
      };
    return shown(found.slice(back, back + 1), world, "");
  }
  if (inputs.want === "first") return shown(found.slice(-1), world, "");
  return shown(found, world, about);
}

/** "how long did i bake them": the figure itself first, of the newest note that has it. */
function oneFigure(
  inputs: RecallInputs,
  notes: readonly Note[],
  about: string,
  world: World,
): Outcome | undefined {
  const { measure } = inputs;
  if (!measure) return undefined;
  const row = rows[measure];
  const ordered = inputs.want === "first" ? [...notes].reverse() : notes;
  const note = ordered.find((each) => row.value(each, inputs) !== undefined);
  if (!note) {
    const outcome = shown(ordered.slice(0, 1), world, about);
    return { ...outcome, headline: `No note${about} says that. ${outcome.headline}` };
  }
  const value = row.value(note, inputs) ?? 0;
  const others = notes.filter((each) => each !== note && row.value(each, inputs) !== undefined);
  const outcome = shown([note], world, "");
  const behind =
    others.length > 0 ? ` (the newest of ${counted(others.length + 1, "note")} that say it)` : "";
  return {
    ...outcome,
    headline: `${plain(value, 0)} ${row.unit || "out of 10"}${behind}. ${outcome.headline}`,
    figures: [
      { name: row.name, value, unit: row.unit },
      ...(outcome.figures ?? []).filter((each) => each.name !== row.name),
    ],
  };
}

interface Search {
  inputs: RecallInputs;
  span: Span | undefined;
}

const newest = perList(
  (notes: readonly Note[], _all: undefined) => [...notes].sort(newestFirst),
  () => "",
);

/** The notes that fit all that was said, newest first. A flavor is matched by its name first, by the words last. */
const matching = perList(
  (notes: readonly Note[], { inputs, span }: Search) => fits(inputs, newest(notes, undefined), span),
  ({ inputs, span }) => JSON.stringify([inputs, span]),
);

function fits(inputs: RecallInputs, notes: readonly Note[], span: Span | undefined): readonly Note[] {
  const { rating_from: from, rating_to: to, strictly } = inputs;
  const inPeriod = notes.filter((note) => !span || (note.date >= span.from && note.date <= span.to));
  const fitting = inPeriod.filter((note) => {
    const { rating } = note;
    if (inputs.problems?.some((id) => !note.problems.includes(id))) return false;
    if (inputs.praise?.some((id) => !note.praise?.includes(id))) return false;
    const isOff = (asked: number | undefined, own: number | undefined, slack: number) =>
      asked !== undefined && (own === undefined || Math.abs(own - asked) > slack);
    // °F said in whole degrees come back within half a degree
    if (
      isOff(inputs.oven_c, note.oven_c, 0.6) ||
      isOff(inputs.bake_min, note.bake_min, 1e-6) ||
      isOff(inputs.rest_min, note.rest_min, 1e-6)
    )
      return false;
    if (from === undefined && to === undefined) return true;
    if (rating === undefined) return false;
    const slack = strictly ? -1e-9 : 1e-9;
    return (from === undefined || rating >= from - slack) && (to === undefined || rating <= to + slack);
  });
  const byWords = inputs.words?.length
    ? fitting.filter((note) => inputs.words?.every((word) => hasWord(note.text, word)))
    : fitting;
  return (inputs.flavors ?? []).reduce(ofFlavor, byWords);
}

function ofFlavor(notes: readonly Note[], taste: string): readonly Note[] {
  const own = notes.filter((note) => note.flavors.includes(taste));
  if (own.length) return own;
  const akin = notes.filter((note) => note.flavors.some((each) => isTaste(taste, each)));
  return akin.length
    ? akin
    : notes.filter((note) => taste.split(" ").every((word) => hasWord(note.text, word)));
}

/** A word of a note, in either number: "macaron" finds "macarons". */
const hasWord = (text: string, word: string) => {
  const stem = word.replace(/(?:es|s)$/, "");
  return text
    .toLowerCase()
    .split(/[^\p{L}\p{N}]+/u)
    .some((each) => each === word || each.replace(/(?:es|s)$/, "") === stem);
};

/** " of pistachio, hollow, in February 2026": what was looked for. */
function describe(inputs: RecallInputs, span: Span | undefined): string {
  const { rating_from: from, rating_to: to, strictly } = inputs;
  const rated =
    from !== undefined && from === to
      ? [`rated ${plain(from)}`]
      : [
          ...(from === undefined ? [] : [`rated ${strictly ? "over" : "at least"} ${plain(from)}`]),
          ...(to === undefined ? [] : [`rated ${strictly ? "under" : "at most"} ${plain(to)}`]),
        ];
  const heat = [
    ...(inputs.oven_c === undefined ? [] : [`at ${plain(inputs.oven_c, 0)} °C`]),
    ...(inputs.bake_min === undefined ? [] : [`baked ${plain(inputs.bake_min)} min`]),
    ...(inputs.rest_min === undefined ? [] : [`rested ${plain(inputs.rest_min)} min`]),
  ];
  const flaws = [...(inputs.problems ?? []), ...(inputs.praise ?? [])];
  const bits = [
    ...(flaws.length ? [`with ${listed(flaws)}`] : []),
    ...rated,
    ...heat,
    ...(span ? [span.name] : []),
    ...(inputs.words?.length ? [`with the words ${listed(inputs.words)}`] : []),
  ];
  return `${inputs.flavors?.length ? ` of ${listed(inputs.flavors)}` : ""}${bits.length ? ` ${bits.join(", ")}` : ""}`;
}

function shown(notes: readonly Note[], world: World, about: string): Outcome {
  const [first] = notes;
  const lines = notes.slice(0, 5).map((note) => noteLine(note, world.now_ms));
  const more = notes.length > 5 ? `; and ${notes.length - 5} more` : "";
  return {
    status: "answered",
    headline:
      notes.length === 1
        ? capital(`${lines[0]}`)
        : `${counted(notes.length, "note")}${about}. ${lines.join("; ")}${more}`,
    ...(notes.length === 1 && first ? { figures: noteFigures(first) } : {}),
    items: notes.slice(0, most).map(noteItem),
    leaves: { note: notes.length === 1 ? first?.id : undefined },
  };
}

/** The newest two of what was found, the newer first; what differs is in their items. */
function versus(notes: readonly Note[], about: string, world: World): Outcome {
  const pair = notes.slice(0, 2);
  const [late, early] = pair;
  if (!late || !early)
    return { ...shown(pair, world, about), cautions: ["There is no earlier one to compare it with."] };
  const said = (note: Note) =>
    [
      `${friendlyDay(note.date, world.now_ms)}${note.flavors.length > 0 ? ` ${listed(note.flavors)}` : ""}`,
      ...(note.oven_c === undefined ? [] : [`${plain(note.oven_c, 0)} °C`]),
      ...(note.bake_min === undefined ? [] : [`${plain(note.bake_min)} min`]),
      ...(note.problems.length > 0 ? [listed(note.problems)] : []),
      ...(note.rating === undefined ? [] : [`${plain(note.rating)} out of 10`]),
    ].join(", ");
  return {
    status: "answered",
    headline: capital(`${said(late)}; before that ${said(early)}`),
    rule: { text: `the last two notes${about}`, basis: "your bench" },
    items: pair.map(noteItem),
  };
}

/** The highest or lowest rating, the notes that have it, and how many have one at all. */
const marked = perList(
  (notes: readonly Note[], want: "best" | "worst") => {
    const marks = notes.flatMap(({ rating }) => rating ?? []);
    const mark = marks.reduce((a, b) => (want === "best" ? Math.max(a, b) : Math.min(a, b)), marks[0] ?? 0);
    return { rated: marks.length, mark, top: notes.filter((note) => note.rating === mark) };
  },
  (want) => want,
);

function ranked(want: "best" | "worst", notes: readonly Note[], about: string, world: World): Outcome {
  const { rated, mark, top } = marked(notes, want);
  if (rated === 0)
    return {
      status: "answered",
      headline: `None of ${counted(notes.length, "note")}${about} has a rating.`,
      items: [],
    };
  const outcome = shown(top, world, `, ${plain(mark)} out of 10`);
  const unrated = notes.length - rated;
  return {
    ...outcome,
    headline: `${plain(mark)} out of 10. ${outcome.headline}`,
    rule: {
      text: `the ${want === "best" ? "highest" : "lowest"} of ${counted(rated, "rating")} in your notes`,
      basis: "your bench",
    },
    ...(unrated ? { cautions: [`${counted(unrated, "note")} without a rating left out.`] } : {}),
  };
}

function count(notes: readonly Note[], about: string, world: World): Outcome {
  const oldest = notes.at(-1);
  const since = oldest ? `, the first ${friendlyDay(oldest.date, world.now_ms)}` : "";
  return {
    status: "answered",
    headline: `${counted(notes.length, "batch", "batches")}${about}${since}`,
    figures: [{ name: "batches", value: notes.length, unit: "batches" }],
    rule: { text: "notes counted, one a batch", basis: "your bench" },
    items: notes.slice(0, most).map(noteItem),
  };
}

const saidOf = perList(
  (notes: readonly Note[], what: "macarons" | "shells" | "trays") =>
    notes.flatMap((note) => note[what] ?? []),
  (what) => what,
);

/** Every number where they are few, or how many there are: nobody reads hundreds. */
const summed = (counts: readonly number[]): string =>
  counts.length <= most
    ? counts.map((each) => plain(each)).join(" + ")
    : `${plain(counts[0] ?? 0)} + ${plain(counts[1] ?? 0)} + … (${counts.length} numbers)`;

function total(inputs: RecallInputs, notes: readonly Note[], about: string): Outcome {
  const what = inputs.measure === "shells" || inputs.measure === "trays" ? inputs.measure : "macarons";
  const counts = saidOf(notes, what);
  const silent = notes.length - counts.length;
  const sum = counts.reduce((a, b) => a + b, 0);
  const figures: Figure[] = counts.length ? [{ name: what, value: sum, unit: what }] : [];
  return {
    status: "answered",
    headline: counts.length ? `${plain(sum)} ${what}${about}` : `No note${about} says how many ${what}.`,
    figures,
    rule: { text: `the ${what} of ${counted(counts.length, "note")} added up`, basis: "your bench" },
    ...(silent && counts.length
      ? { cautions: [`${counted(silent, "note")} without a number left out.`] }
      : {}),
    working: [`${summed(counts)} = ${plain(sum)}`],
    items: counts.length ? notes.slice(0, most).map(noteItem) : [],
  };
}
