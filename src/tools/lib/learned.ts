/**
 * What the baker's own batches teach: figures out of her notes, for use in place of a figure from memory.
 *
 * The rule, for every figure alike: of the latest ten batches that tell it, one further than a third of their median
 * away from it is odd and left out by name; the figure is the median of the rest, and there have to be two of them.
 * Two batches that disagree by more teach nothing until a third one settles it. Pure: notes and bench in, figures out.
 */
import { usualDiameter } from "../../../data/rules/shells.ts";
import type { Bench, LearnedTopic, Note, World } from "../contract/index.ts";
import { friendlyDay } from "./days.ts";
import { newestFirst } from "./notes.ts";
import { counted, plain } from "./show.ts";
import type { Own } from "./sizing.ts";

/** So many batches count, the latest: an oven, a mat or a hand changes. */
const recent = 10;
/** Below this many that agree nothing is learned. */
const least = 2;
/** A batch is odd when it lies further from the median than this share of it. */
const oddShare = 1 / 3;
/** Shells that differ by less than this in mm bake alike. */
const sameSize_mm = 2;

/** One batch's own figure. */
export interface Batch {
  note: number;
  date: string;
  value: number;
}

export type LessonName = "shell" | "filling" | "batter loss" | "filling loss" | "spares" | "bake" | "rest";

/** One figure with the batches behind it. Without a `value` they are too few, or don't agree. */
export interface Lesson {
  name: LessonName;
  topic: LearnedTopic;
  /** As lists and figures name it. */
  what: string;
  /** g, % or min. */
  unit: "g" | "%" | "min";
  value?: number;
  used: Batch[];
  odd: Batch[];
}

export type Lessons = Partial<Record<LessonName, Lesson>>;

interface Row {
  name: LessonName;
  topic: LearnedTopic;
  what: string;
  unit: Lesson["unit"];
  /** What the note tells, in a measure by which odd ones show: a loss is judged by the share that is kept. */
  of(note: Note, size: Sized): number | undefined;
  /** From that measure to the figure, where it is another. */
  as?(measure: number): number;
}

/** The size asked about and the baker's usual one, in mm. */
interface Sized {
  asked_mm: number;
  usual_mm: number;
}

/** Shells that were piped: as counted, else two a macaron. Fewer than the macarons take is a slip and tells nothing. */
function piped({ shells, macarons }: Note): number | undefined {
  if (shells !== undefined && macarons !== undefined && shells < 2 * macarons) return undefined;
  return shells ?? (macarons === undefined ? undefined : 2 * macarons);
}

/** A weight for one, brought to the size asked about by d². Without a size noted it only tells of the usual one. */
function sized(grams: number, note: Note, { asked_mm, usual_mm }: Sized): number | undefined {
  if (note.diameter_mm !== undefined) return grams * (asked_mm / note.diameter_mm) ** 2;
  return asked_mm === usual_mm ? grams : undefined;
}

function each(whole_g: number | undefined, count: number | undefined, note: Note, size: Sized) {
  return whole_g !== undefined && whole_g > 0 && count !== undefined && count > 0
    ? sized(whole_g / count, note, size)
    : undefined;
}

/** The share that didn't stay in bowl and bag. */
const kept = (whole_g: number | undefined, left_g: number | undefined) =>
  whole_g !== undefined && left_g !== undefined && left_g >= 0 && left_g < whole_g
    ? 1 - left_g / whole_g
    : undefined;

const asLoss = (share: number) => (1 - share) * 100;

const rows: readonly Row[] = [
  {
    name: "shell",
    topic: "shells",
    what: "batter a shell",
    unit: "g",
    of: (note, size) => each(note.batter_g, piped(note), note, size),
  },
  {
    name: "filling",
    topic: "filling",
    what: "filling a macaron",
    unit: "g",
    of: (note, size) => each(note.filling_g, note.macarons, note, size),
  },
  {
    name: "batter loss",
    topic: "losses",
    what: "batter left in bowl and bag",
    unit: "%",
    of: (note) => kept(note.batter_g, note.batter_left_g),
    as: asLoss,
  },
  {
    name: "filling loss",
    topic: "losses",
    what: "filling left in bowl and bag",
    unit: "%",
    of: (note) => kept(note.filling_g, note.filling_left_g),
    as: asLoss,
  },
  {
    // Exactly two shells a macaron is one count said twice, and no word on losses.
    name: "spares",
    topic: "losses",
    what: "spare shells",
    unit: "%",
    of: ({ shells, macarons }) =>
      shells !== undefined && macarons !== undefined && macarons > 0 && shells > 2 * macarons
        ? shells / (2 * macarons)
        : undefined,
    as: (ratio) => (ratio - 1) * 100,
  },
  {
    name: "bake",
    topic: "bake",
    what: "bake",
    unit: "min",
    of: (note, { asked_mm, usual_mm }) =>
      Math.abs((note.diameter_mm ?? usual_mm) - asked_mm) <= sameSize_mm ? note.bake_min : undefined,
  },
  { name: "rest", topic: "rest", what: "rest", unit: "min", of: (note) => note.rest_min },
];

/** The middle of some values, whatever their order; the mean of the two middle ones where their number is even. */
export function middle(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  const half = sorted.length / 2;
  return Number.isInteger(half)
    ? ((sorted[half - 1] ?? 0) + (sorted[half] ?? 0)) / 2
    : (sorted[Math.floor(half)] ?? 0);
}

/** Notes that may teach a topic: not set aside, and none from before she said to forget it. */
export const teachers = (
  notes: readonly Note[],
  bench: Pick<Bench, "forgotten">,
  topic: LearnedTopic,
): Note[] =>
  notes
    .filter((note) => !note.ignored && note.id > (bench.forgotten?.[topic] ?? 0))
    .map((note) => (note.planned?.length ? withoutPlanned(note, note.planned) : note));

/** A note without the counts that came from a plan: nobody counted them. */
const withoutPlanned = (note: Note, planned: readonly string[]): Note =>
  Object.fromEntries(Object.entries(note).filter(([name]) => !planned.includes(name))) as Note;

/**
 * Every figure that some batch tells, settled or not, whether or not the book is to be used.
 * @param asked_mm the shells' diameter it is about; the baker's usual one without it
 */
export function lessonsIn({ notes, bench }: Pick<World, "notes" | "bench">, asked_mm?: number): Lesson[] {
  const usual_mm = bench.diameter_mm ?? usualDiameter.value;
  const size = { asked_mm: asked_mm ?? usual_mm, usual_mm };
  return rows.flatMap(({ name, topic, what, unit, of, as = (measure) => measure }): Lesson[] => {
    const told = teachers(notes, bench, topic)
      .sort(newestFirst)
      .flatMap((note): Batch[] => {
        const value = of(note, size);
        return value === undefined ? [] : [{ note: note.id, date: note.date, value }];
      })
      .slice(0, recent);
    if (told.length === 0) return [];
    const center = middle(told.map((batch) => batch.value));
    const isOdd = ({ value }: Batch) => Math.abs(value - center) > center * oddShare * (1 + 1e-9);
    const shown = (batch: Batch): Batch => ({ ...batch, value: as(batch.value) });
    const good = told.filter((batch) => !isOdd(batch));
    const used = good.map(shown);
    const odd = told.filter(isOdd).map(shown);
    const value = good.length < least ? undefined : as(middle(good.map((batch) => batch.value)));
    return [{ name, topic, what, unit, used, odd, ...(value === undefined ? {} : { value }) }];
  });
}

/** What is learned and in force: nothing where she said to use the book. */
export function learned(world: Pick<World, "notes" | "bench">, asked_mm?: number): Lessons {
  if (world.bench.use_book) return {};
  const settled = lessonsIn(world, asked_mm).filter((lesson) => lesson.value !== undefined);
  return Object.fromEntries(settled.map((lesson) => [lesson.name, lesson]));
}

/** The learned figures as the sizing takes them. */
export function ownFigures(lessons: Lessons): Own {
  const rows: [keyof Own, number | undefined][] = [
    ["shell_g", lessons.shell?.value],
    ["filling_g", lessons.filling?.value],
    ["batterLoss_percent", lessons["batter loss"]?.value],
    ["fillingLoss_percent", lessons["filling loss"]?.value],
  ];
  return Object.fromEntries(rows.filter(([, value]) => value !== undefined));
}

const benchKeys = { spares: "spare_percent", bake: "bake_min", rest: "rest_min" } as const;

/** The learned figures that are the bench's to set and that it doesn't set: a setting always wins. */
export function taughtTo(
  bench: Bench,
  lessons: Lessons,
  names: readonly (keyof typeof benchKeys)[],
): Lesson[] {
  return names.flatMap((name) => {
    const lesson = lessons[name];
    return lesson && bench[benchKeys[name]] === undefined ? [lesson] : [];
  });
}

/** The bench with those in their places. */
export function taughtBench(bench: Bench, taught: readonly Lesson[]): Bench {
  const own = taught.flatMap(({ name, value }) =>
    name in benchKeys ? [[benchKeys[name as keyof typeof benchKeys], value] as const] : [],
  );
  return { ...bench, ...Object.fromEntries(own) };
}

/** "7.1 g a shell", "16 min bake": the figure in words. */
export function lessonFigure({ name, what, unit }: Lesson, value: number): string {
  if (name === "shell") return `${plain(value, 1)} g a shell`;
  if (name === "filling") return `${plain(value, 1)} g a macaron`;
  return `${plain(value, 1)} ${unit} ${what}`;
}

/** "your last 4 batches", "4 of your last 5 batches" where one is left out. */
const whose = ({ used, odd }: Lesson) =>
  `${odd.length ? `${used.length} of ` : ""}your last ${counted(used.length + odd.length, "batch", "batches")}`;

/** "your last 4 batches: 7.1 g a shell". */
export const lessonText = (lesson: Lesson): string =>
  `${whose(lesson)}: ${lessonFigure(lesson, lesson.value ?? 0)}${lesson.name === "shell" || lesson.name === "filling" ? ", what stays in bowl and bag in it" : ""}`;

/** The batches that were left out, a line each: "left out: the batch of Fri 13 Mar, 12.8 g a shell". */
export const oddLines = (lessons: readonly Lesson[], now_ms: number): string[] =>
  lessons.flatMap((lesson) =>
    lesson.odd.map(
      (batch) =>
        `left out: the batch of ${friendlyDay(batch.date, now_ms)}, ${lessonFigure(lesson, batch.value)}, far from the others`,
    ),
  );
