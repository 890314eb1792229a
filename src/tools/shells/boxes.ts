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

const gone =
  "(?:breaks?|broke|broken|cracks?|cracked|fails?|failed|ruined|hollow|eaten|burnt?|no good|lost|bad|go missing|get (?:eaten|broken|lost)|(?:are|is|were|come out|came out) (?:broken|cracked|hollow|bad|ruined|burnt|no good|ugly|duds?)|dont make it|didnt make it|wont do|for (?:us|me|tasting|the kids|the family))";
const goneBehind = new RegExp(`^ (?:of (?:them|those) |macarons? |macs |more |have |got |get )*${gone}\\b`);
const goneBefore =
  /\b(?:break|broke|crack|cracked|lose|lost|eat|ate|keep|kept|drop|dropped|burn|burnt|ruin|ruined|minus|less|without|throw out|threw out|bin|binned) (?:about )?$/;

/** "and if 4 break": macarons that go into no box. */
const broken = (reading: Reading): Amount | undefined =>
  reading.amounts.find(
    (each) =>
      // "i keep 6 in a box" says what a box holds
      !holdsSo(reading, each) &&
      each.dim === "number" &&
      each.unit === "" &&
      !each.fraction &&
      Number.isInteger(each.value) &&
      (goneBehind.test(reading.text.slice(each.at[1])) || goneBefore.test(reading.text.slice(0, each.at[0]))),
  );

/** "and 2 for us", behind some that broke: those are gone too; "and if 6 break" is another guess. */
const isMore = /^(?:and|also|plus|another|then)\b(?!.*\b(?:if|instead)\b)|\b(?:another|more)\b/;

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
  const lost = broken(reading);
  const [bare] = bareNumbers(reading).filter((each) => each !== holds && each !== lost);
  if (isAnswer) return { want: "boxes", in_box: (holds ?? bare)?.value };
  const said = counted(reading, "macarons");
  const macarons =
    (said === holds?.value || (lost?.of && said === lost.value) ? undefined : said) ??
    bare?.value ??
    (again ? before?.macarons : memory.table.macarons);
  return {
    want: "boxes",
    ...(macarons === undefined ? {} : { macarons }),
    ...(holds ? { in_box: holds.value } : {}),
    ...(lost ? { broken: lost.value + (isMore.test(reading.text) ? (before?.broken ?? 0) : 0) } : {}),
  };
}

/** Boxes, the last of them perhaps not full. */
export function inBoxes({ macarons: made, in_box, broken = 0 }: ShellsInputs): Outcome {
  const macarons = made === undefined ? undefined : made - broken;
  if (made === undefined || macarons === undefined) return asking("How many macarons are there?", "macarons");
  if (in_box === undefined) return asking("How many go into a box?", "in_box");
  if (macarons < 0)
    return {
      status: "impossible",
      headline: `${plain(broken)} can't be gone of ${countText(made, "macaron")}.`,
    };
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
    working: [
      ...(broken ? [`${plain(made)} − ${plain(broken)} = ${plain(macarons)} macarons`] : []),
      `${plain(full)} × ${plain(in_box)} = ${plain(full * in_box)}`,
      `${plain(over)} over`,
    ],
    leaves: { macarons: made },
  };
}
