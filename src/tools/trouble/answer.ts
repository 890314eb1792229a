/** Causes and changes for a symptom, and what the baker's own record says of it. */
import { type TroubleRow, troubleBasis, troubles } from "../../../data/rules/troubles.ts";
import { symptoms } from "../../../data/words/symptoms.ts";
import type { Figure, Item, Note, Outcome, World } from "../contract/index.ts";
import { counted, listed } from "../lib/show.ts";
import { alike, comparison } from "./compare.ts";
import { fromHeat } from "./heat.ts";
import type { TroubleInputs } from "./trouble.ts";

/** How many of her own notes are laid beside the causes, the newest first. */
const mostNotes = 3;

/** @throws never: a missing symptom comes back as `asking`. */
export function answerTrouble(
  { symptom, oven_c, fan, one_side, ruled_out = 0, damp, other }: TroubleInputs,
  world: World,
): Outcome {
  if (other)
    return {
      status: "declined",
      headline: `I have no rule for what goes wrong with ${other}. I know the faults of shells, batter, meringue, ganache and buttercream.`,
    };
  const found = troubles.find((each) => each.id === symptom);
  const row = found && fromHeat(found, oven_c, fan);
  if (!row) {
    const question =
      "What do you see: no feet, cracked or hollow shells, a split ganache, a curdled buttercream?";
    return { status: "asking", headline: question, question, slot: "symptom" };
  }
  const [usual, ...others] = row.causes;
  const first = row.causes[ruled_out] ?? usual;
  if (ruled_out > others.length)
    return {
      status: "answered",
      headline: `${row.title}: those are the ${counted(row.causes.length, "cause")} that I know. Change one thing at a time and note each batch; I then lay the notes beside one another.`,
      figures: figuresOf(row),
      rule: { text: "what differs between noted batches tells more than a list", basis: troubleBasis },
    };
  const lead = ruled_out > 0 ? "then perhaps" : "most often";
  const own = notesAbout(row.id, world.notes);
  const differs = comparison(row.id, world.notes);
  const same = differs.length === 0 ? alike(row.id, world.notes) : [];
  // a row that names the stronger side says it itself
  const uneven = one_side && row.id !== "lopsided feet" && isOfShells(row.id) ? stronger : undefined;
  const figures = [...(uneven?.figure ? [uneven.figure] : []), ...figuresOf(row)];
  return {
    status: "answered",
    headline: `${uneven ? `On one side only: most often ${uneven.cause}. ${sentence(uneven.change)} Else: ` : ""}${damp ? "Damp air keeps a skin from forming: rest them longer, up to 60 min, in the driest room. " : ""}${row.title}: ${lead} ${first?.cause}. ${sentence(first?.change ?? "")}${differs.length ? ` In your notes: ${differs.map((each) => each.text).join("; ")}.` : ""}${same.length ? ` In your notes ${listed(same)} ${same.length === 1 ? "was" : "were"} the same when all was well.` : ""}`,
    figures,
    rule: {
      text: `${counted(row.causes.length, "cause")} in the order in which they are worth trying: the first that its check finds is the one to change`,
      basis: troubleBasis,
    },
    items: [
      ...row.causes.map(({ cause, check, change }, at): Item => ({ order: at + 1, cause, check, change })),
      ...differs.map(
        (each): Item => ({ differs: each.what, with: each.here, without: each.well, unit: each.unit }),
      ),
      ...own,
    ],
    ...(row.now || row.caution
      ? { cautions: [...(row.now ? [row.now] : []), ...(row.caution ? [row.caution] : [])] }
      : {}),
    working: row.causes.map(({ cause, check, change }, at) => `${at + 1}. ${cause} (${check}): ${change}`),
  };
}

/** The cause that lopsided feet begin with is that of all that is wrong on one side. */
const stronger = troubles.find(({ id }) => id === "lopsided feet")?.causes[0];
const isOfShells = (id: string): boolean => symptoms.find((each) => each.id === id)?.of === undefined;

const sentence = (text: string) => `${text.charAt(0).toUpperCase()}${text.slice(1)}.`;

/** Each number to change to, once: the first cause that names it wins. */
function figuresOf(row: TroubleRow): Figure[] {
  const all = row.causes.flatMap((each) => (each.figure ? [each.figure] : []));
  return all.filter((figure, at) => all.findIndex((other) => other.name === figure.name) === at);
}

/** Her notes of the same fault, the newest first. */
function notesAbout(symptom: string, notes: readonly Note[]): Item[] {
  return notes
    .filter((note) => !note.ignored && note.problems.includes(symptom))
    .slice(-mostNotes)
    .reverse()
    .map(
      (note): Item => ({
        date: note.date,
        flavors: note.flavors,
        text: note.text,
        problems: note.problems,
        ...(note.rating !== undefined ? { rating: note.rating } : {}),
      }),
    );
}
