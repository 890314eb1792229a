/** Shells of one bowl of batter on the table: of a part of it that was split, or of so many grams from it. */
import { bareNumbers, diameter, says } from "../lib/find.ts";
import { isNamed } from "../lib/parts.ts";
import { type ShellsTurn, type ShellsWay, sized } from "./turn.ts";
import { wantSaid } from "./want-said.ts";

/** Below this a number behind "from" counts trays, bowls or whites; so few grams make no macarons worth counting. */
const leastBatter_g = 40;

/** A way that counts where batter lies on the table. */
const ofBatter =
  (way: ShellsWay): ShellsWay =>
  (turn) =>
    turn.memory.table.mass?.thing === "batter" ? way(turn) : undefined;

/** The one part of what was split that the sentence names, where it names no amount but a size. */
function partNamed({ reading, memory }: ShellsTurn) {
  const [only, ...others] = (memory.table.parts ?? []).filter((each) => isNamed(reading, each.name));
  // a size says how large they are, and nothing of the bowl
  const isSizeOnly = reading.amounts.every(({ dim }) => dim === "length");
  return others.length === 0 && isSizeOnly ? only : undefined;
}

const bowlBySize =
  /(?:from|out of|in|with|for) the (small\S*|little|lesser|big\S*|large\S*)(?: (?:one|batch|lot|recipe)\S*| \S*<(?:count=(?:bowls|batches)|base=batter)>)?(?: \?)?$/;
const traysForPart =
  /<count=trays\S* (?:(?:do|will|would|i|need|needed) )*for (?:the |my )?\S*<(?:[^>]*,)?(?:color|taste)=/;

/** "how many shells from the pink", "trays for the pink", behind a split. */
const ofNamed = ofBatter((turn) => {
  const { reading, memory } = turn;
  const part = partNamed(turn);
  const want =
    (/how many (?:\S+ )?\S*<count=(shells|macarons)/.exec(reading.mask)?.[1] as
      | "shells"
      | "macarons"
      | undefined) ?? (says(reading, traysForPart) ? "trays" : undefined);
  const size = diameter(reading) ?? memory.table.diameter_mm;
  return part && want ? { batter_g: part.grams, want, ...sized(size) } : undefined;
});

/** "how many macarons from 270". */
const fromSome = ofBatter(({ reading }) => {
  const [bare, ...others] = bareNumbers(reading);
  const asks = /how many \S*<count=macarons\S* .*(?:from|out of) (?:the |my )?\S*<number>(?: \?)?$/;
  return bare && others.length === 0 && bare.value >= leastBatter_g && says(reading, asks)
    ? { batter_g: bare.value, want: "macarons" }
    : undefined;
});

/** "and from the white", behind what another part makes. */
const fromAnother = ofBatter(({ reading, memory, before }) => {
  const part = memory.table.parts?.find(({ name }) =>
    reading.things.some((each) => (each.color ?? each.taste) === name),
  );
  const again = /^(?:and |so |what about |how about )*(?:from|out of) the \S+(?: \?)?$/;
  return part && before && memory.follows && says(reading, again)
    ? { batter_g: part.grams, want: before.want === "shells" ? "shells" : "macarons" }
    : undefined;
});

/** "how many shells of each", behind a split: of each bowl. */
export const ofEach = ofBatter(({ reading, memory: { table } }) => {
  const asks =
    /how (?:many|much) \S*<count=(?:shells|macarons)\S* (?:\S+ ){0,4}(?:of|from|for|in) each(?: (?:one|part|colou?r\S*|of them))?(?: \?)?$/;
  if (!table.parts || table.parts.length < 2 || !says(reading, asks)) return undefined;
  const want = wantSaid(reading);
  return table.parts.map(({ grams }) => ({
    batter_g: grams,
    ...sized(diameter(reading) ?? table.diameter_mm),
    ...(want ? { want } : {}),
  }));
});

/** "35 mm shells from the small one", behind two sizes of a batter: the smaller of the last two, or the larger. */
const fromSmall = ofBatter(({ reading, memory: { table } }) => {
  const size = bowlBySize.exec(reading.mask)?.[1];
  const [one, other] = (table.recent ?? []).filter(({ thing }) => thing === "batter");
  if (!size || !one || !other || one.grams === other.grams) return undefined;
  const grams = /small|little|less/.test(size)
    ? Math.min(one.grams, other.grams)
    : Math.max(one.grams, other.grams);
  const want = wantSaid(reading) ?? (says(reading, /<count=trays>/) ? "trays" : undefined);
  return {
    batter_g: grams,
    ...sized(diameter(reading) ?? table.diameter_mm),
    ...(want ? { want } : {}),
  };
});

export const bowlWays: readonly ShellsWay[] = [ofNamed, fromSome, fromSmall, fromAnother];
