/** The page on where every number comes from, made of data/rules and data/tables. */
import { readdirSync } from "node:fs";
import { join } from "node:path";
import composition from "../../data/tables/composition.json" with { type: "json" };
import portions from "../../data/tables/portions.json" with { type: "json" };
import { units } from "../../data/words/units.ts";
import { usualSettings } from "../../src/tools/day-plan/types.ts";
import { textOf } from "../guards/sources.ts";
import { root } from "../support/built.ts";
import { table } from "./table.ts";

/** One thing that a rule file exports, with what its comment says. */
export interface Entry {
  file: string;
  name: string;
  comment: string;
  value: unknown;
}

/** Fields that hold words to be recognised, or what another field of the row says already. */
const words = new Set(["words", "asks", "id", "cooler"]);
const isWords = (name: string, value: unknown) =>
  words.has(name) || (name === "loose" && Array.isArray(value));

const commentOf = (raw: string | undefined) =>
  (raw ?? "")
    .replace(/^\s*\*\s?/gm, "")
    .replace(/\s+/g, " ")
    .trim();

/** Everything that the rule files export, in the order in which it stands in them. */
export async function ruleEntries(): Promise<Entry[]> {
  const files = readdirSync(join(root, "data/rules")).sort();
  const all = await Promise.all(
    files.map(async (name) => {
      const file = `data/rules/${name}`;
      const module: Record<string, unknown> = await import(join(root, file));
      const found = textOf(file).matchAll(/(?:\/\*\*((?:(?!\*\/)[\s\S])*)\*\/\n)?export const (\w+)/g);
      return [...found].map(([, comment, each = ""]) => ({
        file,
        name: each,
        comment: commentOf(comment),
        value: module[each],
      }));
    }),
  );
  // a function is how a value is made, not a value
  return all.flat().filter(({ value }) => typeof value !== "function");
}

/** What a rule file says of itself at its top. */
export const headOf = (file: string): string => commentOf(/^\/\*\*([\s\S]*?)\*\//.exec(textOf(file))?.[1]);

const unitSigns: Readonly<Record<string, string>> = { c: "°C", f: "°F", percent: "%" };

/** "shellBatter" as "shell batter", "limit_c" as "limit, °C". */
export function plainName(name: string): string {
  const [stem = "", unit] = name.split("_");
  const spaced = stem.replace(/(?<=[a-z])(?=[A-Z])|(?<=[A-Z])(?=[A-Z][a-z])/g, " ").toLowerCase();
  return unit ? `${spaced}, ${unitSigns[unit] ?? unit}` : spaced;
}

const isPlain = (value: unknown) => typeof value !== "object" || value === null;
const isRange = (value: unknown): value is [number, number] =>
  Array.isArray(value) && value.length === 2 && value.every((each) => typeof each === "number");

/** A value in one cell. */
function cell(value: unknown): string {
  if (value === undefined) return "";
  if (isPlain(value)) return String(value);
  if (isRange(value)) return `${value[0]}-${value[1]}`;
  if (value instanceof Map) return [...value].map(([key, each]) => `${key}: ${cell(each)}`).join(", ");
  if (Array.isArray(value)) return value.map(cell).join("; ");
  const { name, value: at, low, high, unit, ...rest } = value as Record<string, unknown>;
  const range = low === undefined ? "" : `${low}-${high}`;
  const figure = [name, at, at !== undefined && range ? `(${range})` : range, unit].filter(
    (each) => each !== undefined && each !== "",
  );
  const more = Object.entries(rest).map(([key, each]) => `${plainName(key)}: ${cell(each)}`);
  return [...(figure.length ? [figure.join(" ")] : []), ...more].join(", ");
}

type Row = Record<string, unknown>;

/** Rows of a table out of whatever shape an export has. */
function rowsOf({ name, value }: Entry): Row[] {
  if (value instanceof Map) return [...value].map(([key, each]) => ({ name: String(key), value: each }));
  if (Array.isArray(value))
    return value.every(isPlain) ? [{ name: plainName(name), value }] : (value as Row[]).flatMap(spread);
  if (isPlain(value)) return [{ name: plainName(name), value }];
  const row = value as Row;
  const nested = Object.values(row).every(
    (each) => !isPlain(each) && !Array.isArray(each) && !(each instanceof Map),
  );
  if (!nested) return [{ name: plainName(name), ...row }];
  return Object.entries(row).flatMap(([key, each]) =>
    rowsOf({ file: "", name: key, comment: "", value: each }).map((found) => ({
      ...found,
      name: found.name === plainName(key) ? key : `${key}, ${found.name}`,
    })),
  );
}

/** A row for each of a row's causes, and one for a row without any. */
function spread(row: Row): Row[] {
  const { causes, title, ...rest } = row;
  if (!Array.isArray(causes))
    return [{ ...row, ...(row.name === undefined && row.id ? { name: row.id } : {}) }];
  return causes.map((cause: Row, at) => ({
    name: at === 0 ? title : "",
    ...cause,
    ...(at === 0 ? rest : {}),
  }));
}

/** One value, or a list of words: no table is needed. */
const isLone = (value: unknown) => isPlain(value) || (Array.isArray(value) && value.every(isPlain));

/** An entry as a heading with its table. */
function entryLines(entry: Entry): string[] {
  const rows = rowsOf(entry);
  const found = new Set(rows.flatMap((row) => Object.keys(row).filter((name) => !isWords(name, row[name]))));
  const names = [...(found.has("name") ? ["name"] : []), ...[...found].filter((name) => name !== "name")];
  return [
    "",
    `### ${plainName(entry.name)}`,
    "",
    ...(entry.comment ? [entry.comment, ""] : []),
    ...(isLone(entry.value)
      ? [`${cell(entry.value)}`]
      : table(
          names.map((each) => (each === "name" ? "" : plainName(each))),
          rows.map((row) => names.map((each) => cell(row[each]))),
        )),
  ];
}

/** Whether an entry says where it comes from: in its rows, its comment, its own name, or at the top of its file. */
export function saysItsOrigin(entry: Entry): boolean {
  const told =
    /published|common practice|from memory|arithmetic|source|NIST|USDA|FDA|CFR|Regulation|Act \d{4}/i;
  const rows = JSON.stringify(entry.value) ?? "";
  return (
    /"(?:basis|source)":/.test(rows) ||
    told.test(`${entry.name} ${rows} ${entry.comment} ${headOf(entry.file)}`)
  );
}

/** Whether there is a number in it at all. */
export const hasNumber = ({ value }: Entry): boolean =>
  typeof value === "number" || /[:[,]-?\d/.test(JSON.stringify(value) ?? "");

export async function numbersPage(): Promise<string> {
  const entries = await ruleEntries();
  const files = [...new Set(entries.map(({ file }) => file))];
  const short = (file: string) => file.replace(/^data\/rules\/|\.ts$/g, "");
  return [
    "# Where every number comes from",
    "",
    'Made of the rule files and tables by "npm run pages"; changes here are lost.',
    "",
    "**published**: the source is named. **common practice**: a rule of thumb of the trade. **from memory**: a working",
    "figure that a baker would recognise, to be replaced by your own record. **arithmetic**: it follows from the others.",
    "A setting, bottle, recipe or note of your own goes before all but what is published, and the answer then says **your",
    "bench**. Nothing is rounded before it is shown.",
    "",
    "It is no food authority: for keeping, allergens and selling, yours has the last word.",
    "",
    ...files.map((file) => `- [${short(file)}](#${short(file)})`),
    "- [steps of the day](#steps-of-the-day)",
    "- [units](#units)",
    "- [composition](#composition)",
    "- [portions](#portions)",
    ...files.flatMap((file) => [
      "",
      `## ${short(file)}`,
      "",
      headOf(file),
      "",
      `In [${file}](../../${file}).`,
      ...entries.filter((each) => each.file === file).flatMap(entryLines),
    ]),
    "",
    "## steps of the day",
    "",
    "Lengths in minutes, of a macaron in seconds; from memory, all of them settings. In [src/tools/day-plan/types.ts](../../src/tools/day-plan/types.ts).",
    "",
    ...table(
      ["", "value"],
      Object.entries(usualSettings).map(([name, value]) => [plainName(name), cell(value)]),
    ),
    "",
    "## units",
    "",
    "What one of each is, in g, ml, mm or min. In [data/words/units.ts](../words/units.ts).",
    "",
    ...table(
      ["unit", "kind", "is", "source"],
      units.map(({ unit, dim, per, source }) => [unit, dim, String(per), source]),
    ),
    "",
    "## composition",
    "",
    `${composition.source}. Per ${composition.per}. In [data/tables/composition.json](../tables/composition.json).`,
    "",
    ...jsonTable(composition.rows),
    "",
    "## portions",
    "",
    `${portions.source}. In [data/tables/portions.json](../tables/portions.json).`,
    "",
    ...jsonTable(portions.rows),
    "",
  ].join("\n");
}

function jsonTable(rows: readonly object[]): string[] {
  const names = Object.keys(rows[0] ?? {});
  return table(
    names,
    rows.map((row) => names.map((name) => String((row as Row)[name] ?? ""))),
  );
}
