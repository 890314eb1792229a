/** A recipe said line by line: while it goes on, a turn is a line of it, unless it plainly asks something else. */
import type { IngredientLine, RecipeRead } from "../../tools/contract/index.ts";
import type { Inputs, State } from "../follow/state.ts";
import type { Step } from "../follow/step.ts";
import { itemsOf, readingOf } from "../read.ts";
import type { Understanding } from "../understanding.ts";
import { collected, linesIn, recipeLines } from "./recipe-lines.ts";

const done =
  /^(?:ok(?:ay)? |and )?(?:done|that'?s (?:it|all|everything|the lot|the recipe)|all done|finished|i'?m done|end|save(?: it| that)?)[.! ]*$/i;
const cancel = /^(?:cancel(?: (?:it|that))?|never ?mind|scrap (?:it|that)|forget it|abort)[.! ]*$/i;
/** Anything else that she asks ends the list; what was said of it is saved already. */
const other =
  /\?\s*$|^(?:(?:ok|and|so|please|pls|hey)[ ,]+)*(?:how|hw|what|whats|what's|which|why|when|where|who|can you|could you|should|is it|undo|help|show|list|scale|timer|note|log|buy|shopping|convert|label|price|remember|rename|set (?:a|the|my|an)|start (?:a|the|my|another)|new recipe|recipe|save recipe|read recipe|use \S+ (?:\S+ )?as)\b/i;

/** True while a recipe's lines are waited for. */
export const isDictating = (state: State): boolean =>
  state.pending?.tool === "formula" &&
  state.pending.slot === "lines" &&
  state.pending.inputs.collecting === true;

/** The step that a turn is within a recipe, a blank line too; undefined where the turn is about something else. */
export function dictated(said: string, state: State, { tools, reader }: Understanding): Step | undefined {
  const tool = tools.find((each) => each.name === "formula");
  if (!isDictating(state) || !state.pending || !tool) return undefined;
  const step = (inputs: Inputs, note: string): Step => {
    const { text, items, mended } = itemsOf(said, reader);
    const known = Object.fromEntries(
      Object.keys(inputs).map((key) => [key, key === "name" ? "remembered" : "said"] as const),
    );
    return {
      tool,
      inputs,
      known,
      reading: readingOf(said, text, items, mended, reader),
      trace: () => [note],
    };
  };
  const {
    collecting: _collecting,
    latest: _latest,
    lines: saved,
    unweighed: _unweighed,
    ...before
  } = state.pending.inputs;
  const some = before.started === true || (Array.isArray(saved) && saved.length > 0);
  if (cancel.test(said)) return step({ ...before, cancelled: true }, "the recipe is dropped");
  if (said === "" || done.test(said))
    return step(some ? { ...before, started: true } : { ...before, cancelled: true }, "the recipe's end");
  if (other.test(said)) return undefined;
  const lines = linesIn(said, reader);
  // lines are laid over those in the record, so that one that was undone stays out
  const added = joined(before as Partial<RecipeRead>, collected(lines));
  const inputs = {
    ...before,
    ...added,
    collecting: true,
    ...(some ? { started: true } : {}),
    latest: lines.map(told).join("; "),
  };
  return step(inputs, "a line of the recipe");
}

/** What one line was taken for. */
function told({ is, said, name, why }: IngredientLine): string {
  if (is === "heading") return `"${said}": a heading`;
  if (is === "unweighed") return `"${said}": ${name}, not weighed`;
  return is === "unread" ? `"${said}" not read (${why})` : `"${said}"`;
}

function joined(before: Partial<RecipeRead>, now: RecipeRead): Inputs {
  const lines = [...(before.lines ?? [])];
  for (const line of now.lines) {
    const at = lines.findIndex((each) => each.name === line.name);
    const old = lines[at];
    if (old) lines[at] = { name: line.name, grams: old.grams + line.grams };
    else lines.push(line);
  }
  const rest = (["unread", "unweighed", "taken", "doubts"] as const).flatMap((key) => {
    const all = [...(before[key] ?? []), ...now[key]];
    return all.length > 0 ? [[key, all] as const] : [];
  });
  return { ...(lines.length > 0 ? { lines } : {}), ...Object.fromEntries(rest) };
}

/** More rows than this are no recipe. */
const mostRows = 300;

/** The inputs that a file's text gives: its lines, and its name by a title, else by the file's own. */
export function recipeFromFile(
  before: Inputs,
  path: string,
  text: string,
  { reader }: Understanding,
): Inputs | string {
  const rows = text.split(/[\r\n]+/).filter((row) => /\S/.test(row));
  if (rows.length > mostRows) return `${path} has ${rows.length} lines; a recipe has at most ${mostRows}.`;
  const first = rows[0] ? linesIn(rows[0], reader) : [];
  const title =
    first.length === 1 && isTitle(first[0]) ? (first[0]?.said.replace(/^[#*\s]+|[:*\s]+$/g, "") ?? "") : "";
  const read = recipeLines(rows.slice(title ? 1 : 0).join("\n"), reader);
  if (read.lines.length === 0) return `I found no ingredient with a weight in ${path}.`;
  const { file: _file, ...kept } = before;
  const stem = path
    .replace(/^.*[/\\]/, "")
    .replace(/\.[^.]*$/, "")
    .replace(/[-_]+/g, " ");
  const name = String(kept.name ?? (title || stem))
    .toLowerCase()
    .slice(0, 60);
  return { ...kept, name, ...joined({}, read) };
}

/** A name above the lines: words without an amount that are no heading of a part. */
const isTitle = (line: IngredientLine | undefined) =>
  line !== undefined &&
  line.said.length <= 60 &&
  ((line.is === "unread" && ["no amount", "no ingredient in it"].includes(line.why ?? "")) ||
    (line.is === "heading" && /^\s*#\s/.test(line.said)));
