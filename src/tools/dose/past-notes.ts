/** What the baker's own notes say of a flavor, beside its dose. */
import type { Item, World } from "../contract/index.ts";
import type { BestDose } from "../lib/best-dose.ts";
import { friendlyDay } from "../lib/days.ts";
import { percent, plain } from "../lib/show.ts";
import type { DoseInputs } from "./dose.ts";

/** Words on how strongly it tasted. */
const ofTaste =
  /\b(?:strong\w*|weak\w*|faint|intense|overpowering|overwhelming|bland|subtle|mild|sharp|too (?:much|little)|barely|could(?:nt|n't) taste|flavou?r\w*|taste\w*)\b/i;

/** What the notes say of this flavor, the newest first: beside the dose, never instead of it. */
export function pastNotes(inputs: DoseInputs, rated: BestDose | undefined, world: World): Item[] {
  if (!inputs.taste) return [];
  const last = world.notes
    .filter(
      (note) =>
        !note.ignored &&
        note.flavors.includes(inputs.taste ?? "") &&
        (note.doses?.length || ofTaste.test(note.text)),
    )
    .slice(-1)
    .map((note) => ({
      date: note.date,
      flavors: note.flavors,
      text: note.text,
      ...(note.rating !== undefined ? { rating: note.rating } : {}),
    }));
  if (!rated) return last;
  const { best, usual } = rated;
  const day = friendlyDay(best.note.date, world.now_ms);
  return [
    ...last,
    {
      best: `${percent(best.percent)} ${inputs.taste}, rated ${plain(best.rating)} out of 10, ${day}`,
      ...(usual && !inputs.usual
        ? { your_bench: `${percent(usual.percent)} is your usual, in ${usual.batches.length} liked batches` }
        : {}),
    },
  ];
}
