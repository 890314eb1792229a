/** Sets, shows and resets the bench. A change is an effect; nothing is stored here. */
import type { Effect, Outcome, World } from "../contract/index.ts";
import { listed } from "../lib/show.ts";
import type { BenchInputs } from "./bench.ts";
import { bookInstead, forgetLearned, ownAgain, showLearned } from "./lessons.ts";
import { type Setting, type SettingKey, saySetting, settingFigure, settings } from "./settings.ts";

/** @throws never */
export function answerBench(inputs: BenchInputs, world: World): Outcome {
  if (inputs.do === "show") return show(inputs.keys, world);
  if (inputs.do === "learned") return showLearned(inputs.topics, world);
  if (inputs.do === "forget") return forgetLearned(inputs.topics, world);
  if (inputs.do === "own") return ownAgain(world);
  if (inputs.do === "told") return toldOnly;
  if (inputs.do === "reset")
    return (inputs.book ? bookInstead(world) : undefined) ?? reset(inputs.keys, world);
  if (inputs.metric_cup && inputs.cup_ml === undefined)
    return asking("How many ml does your cup hold: 240 or 250?", "cup_ml");
  if (inputs.off_c !== undefined && inputs.oven_offset_c === undefined)
    return asking("Does it run hot or cold?", "oven_offset_c");
  return set(inputs, world);
}

/** "i baked at 160": how it went, and no setting. */
const toldOnly: Outcome = {
  status: "answered",
  headline:
    'That is how it went, and nothing is set. For every bake say "i always bake at 160"; to keep it with a batch, "note baked at 160"; for a timer, "timer 16 min".',
};

const asking = (question: string, slot: string): Outcome => ({
  status: "asking",
  headline: question,
  question,
  slot,
});

/** The settings that the inputs carry, in the table's order. */
const given = (inputs: BenchInputs): { row: Setting; value: unknown }[] =>
  settings.flatMap((row) => (inputs[row.key] === undefined ? [] : [{ row, value: inputs[row.key] }]));

function set(inputs: BenchInputs, world: World): Outcome {
  const changes = given(inputs);
  if (changes.length === 0)
    return openQuestion('What should I set? For example "my mat has 28 circles" or "my oven runs 10 hot".');
  const said = changes.map(({ row, value }) => saySetting(row, value));
  // A tray's size would stay without effect under an older count of its circles.
  const counted =
    inputs.tray_width_mm !== undefined &&
    inputs.shells_a_tray === undefined &&
    world.bench.shells_a_tray !== undefined;
  const effects: Effect[] = changes.map(({ row, value }) => ({ do: "set", setting: row.key, value }));
  return {
    status: "answered",
    headline: `${capitalised(listed(said))}, from now on${counted ? "; the count of circles is forgotten" : ""}.`,
    figures: changes.flatMap(({ row, value }) => settingFigure(row, value)),
    rule: {
      text: `${listed(said)}, instead of the book's ${listed(changes.map(({ row }) => row.book))}`,
      basis: "your bench",
    },
    effects: [
      ...effects,
      ...(counted ? [{ do: "set", setting: "shells_a_tray", value: null } as const] : []),
    ],
    change: `the setting ${listed(said)}`,
    // the bench says it from now on; left on the table it would outlive an undo
    ...(inputs.diameter_mm === undefined ? {} : { leaves: { diameter_mm: undefined } }),
  };
}

const capitalised = (text: string) => text.charAt(0).toUpperCase() + text.slice(1);

function chosen(keys: string[] | undefined): readonly Setting[] {
  return keys?.length ? settings.filter((row) => keys.includes(row.key)) : settings;
}

const isSet = (row: Setting, world: World) => world.bench[row.key] !== undefined;

function show(keys: string[] | undefined, world: World): Outcome {
  const rows = chosen(keys);
  const own = rows.filter((row) => isSet(row, world));
  const said = own.map((row) => saySetting(row, world.bench[row.key]));
  const book = [...new Set(rows.filter((row) => !isSet(row, world)).map((row) => row.book))];
  const rest = keys?.length
    ? book.length && !own.length
      ? `Not set; the book has ${listed(book)}`
      : ""
    : own.length
      ? "the rest is the book's"
      : "";
  const headline = own.length
    ? `${capitalised(listed(said))}${rest ? `; ${rest}` : ""}.`
    : keys?.length
      ? `${rest}.`
      : "Nothing is set: everything is the book's.";
  return {
    status: "answered",
    headline,
    figures: own.flatMap((row) => settingFigure(row, world.bench[row.key])),
    // whose each of the two is
    items: own.map((row) => ({
      setting: row.name,
      text: `yours: ${saySetting(row, world.bench[row.key])}`,
      book: `the book's: ${row.book}`,
    })),
  };
}

function reset(keys: string[] | undefined, world: World): Outcome {
  const rows = chosen(keys).filter((row) => isSet(row, world));
  if (rows.length === 0)
    return {
      status: "answered",
      headline: `Nothing of that was set: it is the book's already${keys?.length ? `, ${listed([...new Set(chosen(keys).map((row) => row.book))].slice(0, 3))}` : ""}.`,
      items: [],
    };
  const said = rows.map((row) => saySetting(row, world.bench[row.key]));
  return {
    status: "answered",
    headline: `Forgotten: ${listed(said)}. Back to ${listed([...new Set(rows.map((row) => row.book))])}.`,
    effects: rows.map((row) => ({ do: "set", setting: row.key satisfies SettingKey, value: null })),
    change: `forgetting ${listed(said)}`,
  };
}

/** No one setting is asked for: a number that comes next is the next question's, not its answer. */
const openQuestion = (question: string): Outcome => ({ status: "asking", headline: question, question });
