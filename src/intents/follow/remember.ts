/** What a conversation keeps of an answer. */
import type { Outcome, Table } from "../../tools/contract/index.ts";
import { derivedFrom } from "./derived.ts";
import { heatIn } from "./heat-asked.ts";
import type { State, Topic } from "./state.ts";
import type { Step } from "./step.ts";
import { lengthIn } from "./that-long.ts";

type Answered = Pick<Step, "tool" | "inputs" | "in_box" | "from"> & Partial<Pick<Step, "known" | "reading">>;

/** The state after an answer. A question that asked leaves its slot open; thanks and small talk change nothing. */
export function remember(state: State, step: Answered, outcome: Outcome): State {
  const none = step.tool.name === "help" ? turnedDown(step) : undefined;
  if (none) return { ...state, elsewhere: none };
  if (["help", "explain", "undo"].includes(step.tool.name)) return state;
  const last = topicOf(step, state);
  const topics = [...state.topics.filter((each) => each.tool !== last.tool), last].slice(-8);
  const in_box = step.in_box ?? state.in_box;
  const { pending: _pending, waiting: _waiting, elsewhere: _elsewhere, ...others } = state;
  const waiting = stillWaiting(state, step);
  const kept = { ...others, ...(waiting ? { waiting } : {}), ...(in_box === undefined ? {} : { in_box }) };
  if (outcome.status === "asking" && outcome.slot)
    return {
      ...kept,
      ...(outcome.leaves ? { table: laid(state.table, outcome.leaves) } : {}),
      last,
      topics,
      pending: { ...last, slot: outcome.slot, ...(step.reading ? { of: step.reading.said } : {}) },
    };
  // "there is no rule for cocoa in ganache": the bowl of which that was said is the one that is spoken of
  const isBowl = outcome.status === "declined" && outcome.leaves?.mass !== undefined;
  if (isBowl) return { ...kept, last, topics, table: laid(state.table, outcome.leaves) };
  if (outcome.status === "declined" || outcome.status === "asking")
    return { ...kept, table: laid(state.table, outcome.leaves), ...(state.last ? {} : { last }) };
  if (outcome.status === "impossible" && outcome.slot)
    return { ...kept, last: { ...last, wrong: outcome.slot }, topics };
  const row = [...(state.last?.tool === last.tool ? (state.row ?? []) : []), last.inputs].slice(-4);
  const turn = turnWith(state, last, step.reading, outcome.leaves);
  const table = laid(state.table, outcome.leaves);
  const past = [
    ...(state.past ?? []),
    { ...last, table, ...(step.reading ? { text: step.reading.text } : {}) },
  ].slice(-12);
  const minutes = lengthIn(outcome);
  const heat_c = heatIn(outcome) ?? state.heat_c;
  return {
    table,
    ...(minutes === undefined ? {} : { minutes }),
    ...(heat_c === undefined ? {} : { heat_c }),
    last,
    topics,
    row,
    turn,
    past,
    ...(waiting ? { waiting } : {}),
    ...(in_box === undefined ? {} : { in_box }),
  };
}

/** "for 40 cupcakes?": nothing of it is worked out, and what is asked on may still be of those. */
function turnedDown({ inputs, reading }: Answered): State["elsewhere"] {
  const { elsewhere, kind = "bake" } = inputs as { elsewhere?: string; kind?: "bake" | "matter" | "guests" };
  return elsewhere === undefined ? undefined : { name: elsewhere, kind, text: reading?.text ?? "" };
}

/** "timer please, also what is 3 tbsp sugar in g": what was asked first still waits, behind what was answered. */
function stillWaiting({ pending, waiting }: State, { tool, reading }: Answered): State["waiting"] {
  const asked = pending ?? waiting;
  return asked?.of !== undefined && asked.of === reading?.said && asked.tool !== tool.name
    ? asked
    : undefined;
}

function topicOf({ tool, inputs, known = {}, reading, from: given }: Answered, { turn }: State): Topic {
  const said = Object.keys(known).filter((key) => known[key] === "said");
  const own = reading && turn?.said === reading.said ? turn.left : undefined;
  const from = given ?? (reading && own ? derivedFrom(inputs, reading, own) : undefined);
  return { tool: tool.name, inputs, ...(said.length > 0 ? { said } : {}), ...(from ? { from } : {}) };
}

/** The turn that is under way with one more question answered, or a new one. */
function turnWith(
  { turn }: State,
  last: Topic,
  reading: Step["reading"] | undefined,
  leaves: Table = {},
): State["turn"] {
  const { said = "", text = "" } = reading ?? {};
  const now = turn?.said === said ? turn : undefined;
  const before = now?.topics.filter(({ tool }) => tool !== last.tool) ?? [];
  const times = now?.topics.at(-1)?.tool === last.tool ? now.times + 1 : 1;
  return {
    said,
    text,
    topics: [...before, last],
    times,
    all: [...(now?.all ?? []), last],
    left: { ...now?.left, ...leaves },
    before: (now ? now.before : turn?.topics) ?? [],
  };
}

/** The table with what an answer left on it; a weight is also kept under its thing's name. */
function laid(table: Table, leaves: Table | undefined): Table {
  const mass = leaves?.mass;
  const before = leaves?.masses ? { ...table.masses, ...leaves.masses } : table.masses;
  const masses = mass?.thing ? { ...before, [mass.thing]: mass.grams } : before;
  // another number of macarons is another order: how the one before was shared out says nothing of it
  const isOther = leaves?.macarons !== undefined && leaves.macarons !== table.macarons;
  // a size that was said goes with those that were sized by it
  const sized = leaves?.macarons !== undefined && leaves.diameter_mm === undefined;
  if (sized && table.diameter_mm !== undefined) {
    const { diameter_mm: _size, ...unsized } = table;
    return laid(unsized, leaves);
  }
  const { shares, ...others } = table;
  if (isOther && shares && !leaves.shares) return laid(others, leaves);
  const { rest: _rest, ...kept } = table;
  const recent = mass ? { recent: [...(table.recent ?? []), mass].slice(-2) } : {};
  return { ...(mass ? kept : table), ...recent, ...leaves, ...(masses ? { masses } : {}) };
}
