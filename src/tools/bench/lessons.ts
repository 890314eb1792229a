/** What her batches taught: listed, forgotten, set aside for the book and taken up again. */
import type { Figure, Item, LearnedTopic, Outcome, World } from "../contract/index.ts";
import { learnedTopics } from "../contract/record.ts";
import { bestDose } from "../lib/best-dose.ts";
import { friendlyDay } from "../lib/days.ts";
import { type Lesson, lessonFigure, lessonsIn, lessonText, oddLines, teachers } from "../lib/learned.ts";
import { counted, listed, plain } from "../lib/show.ts";

/** The same, said of a topic. */
const topicNames: Readonly<Record<LearnedTopic, string>> = {
  shells: "the batter in a shell",
  filling: "the filling in a macaron",
  losses: "what is lost",
  bake: "the baking time",
  rest: "the resting time",
  doses: "the doses",
};

const isAbout = (topics: readonly LearnedTopic[] | undefined, topic: LearnedTopic) =>
  !topics?.length || topics.includes(topic);

/** Doses that liked batches agree on, a taste each. They are listed also while the book is in use. */
function dosesOf(world: World): { taste: string; percent: number; ratings: number[] }[] {
  const bench = { ...world.bench, use_book: false };
  const tastes = new Set(world.notes.flatMap((note) => note.doses?.map((each) => each.flavor) ?? []));
  return [...tastes].sort().flatMap((taste) => {
    const rows = ["flavor", "extract", "oil", "nut paste", "fruit powder", "purée", "zest"];
    const found = rows.flatMap((row) => {
      const usual = bestDose({ taste, row, base: "filling" }, { notes: world.notes, bench })?.usual;
      return usual ? [{ form: row, usual }] : [];
    });
    return found.map(({ form, usual }) => ({
      taste: form === "flavor" ? taste : `${taste} ${form === "nut paste" ? "paste" : form}`,
      percent: usual.percent,
      ratings: usual.batches.map((each) => each.rating),
    }));
  });
}

const settled = (lesson: Lesson): lesson is Lesson & { value: number } => lesson.value !== undefined;

/** @throws never: nothing learned is an answer with empty `items` */
export function showLearned(topics: readonly LearnedTopic[] | undefined, world: World): Outcome {
  const all = lessonsIn(world).filter((lesson) => isAbout(topics, lesson.topic));
  const doses = isAbout(topics, "doses") ? dosesOf(world) : [];
  const known = all.filter(settled);
  const waiting = waitingLines(all, world.now_ms);
  const odd = oddLines(known, world.now_ms);
  if (known.length + doses.length === 0)
    return {
      status: "answered",
      headline: `Nothing yet${topics?.length ? ` about ${listed(topics.map((each) => topicNames[each]))}` : ""}: it takes two batches noted with counts and weights that agree, like "note: vanilla, 460 g batter, 72 shells, 230 g filling, 34 macarons, baked 15 min".`,
      items: [],
      ...(waiting.length ? { cautions: waiting } : {}),
    };
  const lines = [
    ...known.map(
      (lesson) =>
        `${lessonFigure(lesson, lesson.value)} (${counted(lesson.used.length, "batch", "batches")})`,
    ),
    ...doses.map((each) => `${plain(each.percent)} % ${each.taste} (${each.ratings.length} liked batches)`),
  ];
  const aside = world.bench.use_book
    ? ' The book is in use; say "use my own figures again" to go by these.'
    : "";
  return {
    status: "answered",
    headline: `${listed(lines)}.${aside}`,
    figures: [
      ...known.map(({ what, value, unit }): Figure => ({ name: what, value, unit })),
      ...doses.map((each): Figure => ({ name: `share ${each.taste}`, value: each.percent, unit: "%" })),
    ],
    rule: {
      text: "the median of your latest 10 batches that tell it, two at least; one further than a third from the median is left out",
      basis: "your bench",
    },
    ...(odd.length + waiting.length ? { cautions: [...odd, ...waiting] } : {}),
    items: [
      ...known.map((lesson) => itemOf(lesson, world.now_ms)),
      ...doses.map(
        (each): Item => ({
          learned: `share ${each.taste}`,
          text: `${plain(each.percent)} %, rated ${listed(each.ratings.map((rating) => plain(rating)))}`,
        }),
      ),
    ],
    working: known.map(
      (lesson) =>
        `${lesson.what}: the median of ${lesson.used.map((each) => plain(each.value)).join(", ")} = ${plain(lesson.value)} ${lesson.unit}`,
    ),
  };
}

const itemOf = (lesson: Lesson, now_ms: number): Item => ({
  learned: lesson.what,
  text: lessonText(lesson),
  batches: lesson.used.map(
    (each) => `${friendlyDay(each.date, now_ms)}: ${plain(each.value)} ${lesson.unit}`,
  ),
});

/** Figures that one batch tells, or several that don't agree: not used, and said so. */
const waitingLines = (all: readonly Lesson[], now_ms: number): string[] =>
  all
    .filter((lesson) => !settled(lesson))
    .map((lesson) => {
      const told = [...lesson.used, ...lesson.odd];
      const said = told.map(
        (each) => `${plain(each.value)} ${lesson.unit} ${friendlyDay(each.date, now_ms)}`,
      );
      return told.length < 2
        ? `${lesson.what}: one batch so far, ${listed(said)}; the book is used`
        : `${lesson.what}: your batches don't agree, ${listed(said)}; the book is used until another one settles it`;
    });

/** Ends what earlier notes teach; the notes stay, and later ones teach again. */
export function forgetLearned(topics: readonly LearnedTopic[] | undefined, world: World): Outcome {
  const chosen = topics?.length ? topics : learnedTopics;
  const last = Math.max(0, ...world.notes.map((note) => note.id));
  const taught = chosen.filter(
    (topic) =>
      (topic === "doses" && teachers(world.notes, world.bench, topic).some((note) => note.doses?.length)) ||
      lessonsIn(world).some((lesson) => lesson.topic === topic),
  );
  if (taught.length === 0)
    return {
      status: "answered",
      headline: "There was nothing learned of that: it is the book's already.",
      items: [],
    };
  const all = topics?.length ? listed(taught.map((topic) => topicNames[topic])) : "what your batches taught";
  return {
    status: "answered",
    headline: `Forgotten: ${all}. Back to the book; your notes stay, and batches noted from now on teach again.`,
    effects: [
      {
        do: "set",
        setting: "forgotten",
        value: { ...world.bench.forgotten, ...Object.fromEntries(chosen.map((topic) => [topic, last])) },
      },
    ],
    change: `forgetting ${all}`,
  };
}

/** "use the book", where batches teach something: it is set aside and not lost, and settings stay. */
export function bookInstead(world: World): Outcome | undefined {
  const own = Object.keys(world.bench).filter((key) => !["use_book", "forgotten"].includes(key));
  const stay = own.length ? ' What you set on your bench stays; "reset all my settings" ends that too.' : "";
  if (world.bench.use_book)
    return { status: "answered", headline: `The book is in use already.${stay}`, items: [] };
  if (!lessonsIn(world).some(settled) && dosesOf(world).length === 0) return undefined;
  return {
    status: "answered",
    headline: `The book's figures from now on; what your batches taught is set aside, say "use my own figures again" to go back.${stay}`,
    effects: [{ do: "set", setting: "use_book", value: true }],
    change: "using the book",
  };
}

/** Back from the book; where that wasn't in use, what was forgotten counts again. */
export function ownAgain(world: World): Outcome {
  const { use_book, forgotten } = world.bench;
  const setting = use_book ? "use_book" : "forgotten";
  if (!use_book && !forgotten) {
    const known = lessonsIn(world).some(settled);
    return {
      status: "answered",
      headline: known
        ? 'Your own figures are in use already; "what have you learned" lists them.'
        : "There are no figures of your own yet: they come from two batches noted with counts and weights.",
      items: [],
    };
  }
  return {
    status: "answered",
    headline: 'Your own figures again, where two batches tell them; "what have you learned" lists them.',
    effects: [{ do: "set", setting, value: null }],
    change: "going back to your own figures",
  };
}
