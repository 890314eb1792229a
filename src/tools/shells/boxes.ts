/** "how many boxes of 12 for 50 macarons": the boxes that a number of macarons fills, and what stays over. */
import type { Amount, Memory, Outcome, Reading } from "../contract/index.ts";
import { asking } from "../lib/asking.ts";
import { bareNumbers, counted, says } from "../lib/find.ts";
import { counted as countText, plain } from "../lib/show.ts";
import type { ShellsInputs } from "./shells.ts";

type Draft = Partial<ShellsInputs>;

/** "boxes of 12", "12 in a box", "12 to a box", "a box holds 12". */
const holdsSo = ({ text }: Reading, { at, dim, unit, fraction }: Amount): boolean =>
  dim === "number" &&
  unit === "" &&
  !fraction &&
  (/\bbox(?:es)? (?:of|with|holds?|takes?|fits?|for) (?:up to )?$/.test(text.slice(0, at[0])) ||
    /^ (?:macarons? |macs |of them |go |fit )?(?:in|into|to|per|a|for) (?:a |each |every |one |the |my )?box\b/.test(
      text.slice(at[1]),
    ));

/** Nothing where no number of boxes is asked for. */
export function boxesAsked(reading: Reading, memory: Memory): Draft | undefined {
  const before = memory.last?.tool === "shells" ? (memory.last.inputs as Draft) : undefined;
  const isAnswer = memory.slot === "in_box" && before?.want === "boxes";
  // "boxes of 6, got 48 macarons"
  const told = says(
    reading,
    /^\S*<count=boxes> of \S*<number> , (?:i |we )?(?:have |got |made )+\S*<number> \S*<count=macarons>/,
  );
  // "and 12s", "and boxes of 8"
  const size =
    memory.follows && before?.want === "boxes"
      ? /^(?:(?:and|or|what about|how about|with|in|if|now) )*(?:boxes of )?(\d+)s?(?: (?:in|to) (?:a|each) box)?(?: \?)?$/.exec(
          reading.text,
        )?.[1]
      : undefined;
  if (size !== undefined) return { want: "boxes", in_box: Number(size) };
  const again =
    memory.follows && before?.want === "boxes" && !says(reading, /batter|<count=(?:shells|trays)/);
  if (!says(reading, /how (?:many|much) (?:more )?\S*<count=boxes/) && !isAnswer && !again && !told)
    return undefined;
  if (reading.amounts.some((each) => each.dim === "weight" || each.dim === "money")) return undefined;
  if (says(reading, /profit|margin|earn|break even|sell|cost|charge/)) return undefined;
  const holds = reading.amounts.find((each) => holdsSo(reading, each));
  const [bare] = bareNumbers(reading).filter((each) => each !== holds);
  if (isAnswer) return { want: "boxes", in_box: (holds ?? bare)?.value };
  const macarons =
    (counted(reading, "macarons") === holds?.value ? undefined : counted(reading, "macarons")) ??
    bare?.value ??
    (again ? before?.macarons : memory.table.macarons);
  return {
    want: "boxes",
    ...(macarons === undefined ? {} : { macarons }),
    ...(holds ? { in_box: holds.value } : {}),
  };
}

/** Boxes, the last of them perhaps not full. */
export function inBoxes({ macarons, in_box }: ShellsInputs): Outcome {
  if (macarons === undefined) return asking("How many macarons are there?", "macarons");
  if (in_box === undefined) return asking("How many go into a box?", "in_box");
  const full = Math.floor(macarons / in_box);
  const over = macarons - full * in_box;
  const all = full + (over > 0 ? 1 : 0);
  return {
    status: "answered",
    headline: `${countText(all, "box", "boxes")} for ${countText(macarons, "macaron")}${over > 0 ? `: ${plain(full)} full, ${plain(over)} in the last` : ", all full"}`,
    figures: [{ name: "boxes", value: all, unit: "boxes" }],
    rule: {
      text: `${plain(macarons)} / ${plain(in_box)}, up to a whole box`,
      basis: "arithmetic",
    },
    working: [`${plain(full)} × ${plain(in_box)} = ${plain(full * in_box)}`, `${plain(over)} over`],
    leaves: { macarons },
  };
}
