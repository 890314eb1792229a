/** "export my notes as csv", "import notes from batches.csv": what goes out or in, and by which file. */
import type { Reading } from "../contract/index.ts";

export interface Exchange {
  do: "export" | "import";
  what?: "notes" | "everything";
  /** Notes aren't printed; asked for, it is said. */
  as?: "csv" | "json" | "pdf";
  file?: string;
}

const formats = "(?:a |an |my )?(?:csv|json|spreadsheet)";
const out = new RegExp(
  `(?:^| )(?:exports?|exporting|download|dump|back ?up)(?: |$)|(?:^| )(?:as|to|in|into|for) ${formats}|(?:^| )(?:csv|json|spreadsheet) (?:of|with|from) `,
);
const back =
  /(?:^| )(?:imports?|importing|(?:read|load|bring|take|pull|add|get|restore) .*(?:notes?|batches|diary)\S* .*(?:in|from|out of|back))(?: |$)/;
const leaves = new RegExp(`(?:^| )(?:as|to|in|into|for) ${formats}`);
const onPaper =
  /(?:^| )(?:print\w*|pdfs?) .*(?:notes?|diary)(?: |$)|(?:^| )(?:notes?|diary) .*(?:pdfs?|print\w*)(?: |$)/;
const all =
  /(?:^| )(?:exports?|download|dump|back ?up) all(?: (?:as|to|in|into|please)|$| $)|(?:^| )(?:everything|all of it|it all|all my (?:data|stuff)|whole record|(?:my|the|entire) record|my data|all the data)(?: |$)/;

/** A file by its name or path, in quotes where it has spaces, as it was typed. */
function fileIn(said: string): string | undefined {
  const found =
    /["“]([^"”]+\.(?:csv|json|txt|tsv))["”]|'([^']+\.(?:csv|json|txt|tsv))'|((?:~|\.{0,2})\/\S+|\S+\.(?:csv|json|txt|tsv))\b/i.exec(
      said,
    );
  return (found?.[1] ?? found?.[2] ?? found?.[3])?.replace(/[?!,;]+$/, "");
}

/** Nothing where the sentence is about something else. */
export function exchangeSaid(reading: Reading): Exchange | undefined {
  const plain = ` ${reading.mask.replace(/<[^>]*>/g, "").replaceAll("_", " ")} `;
  const file = fileIn(reading.said);
  const goesOut = leaves.test(plain) && !/(?:^| )(?:imports?|importing|from)(?: |$)/.test(plain);
  if (!goesOut && back.test(plain)) return { do: "import", ...(file ? { file } : {}) };
  if (onPaper.test(plain)) return { do: "export", what: "notes", as: "pdf" };
  if (!out.test(plain)) return undefined;
  const as = /(?:^| )json(?: |$)/.test(plain) ? "json" : /csv|spreadsheet/.test(plain) ? "csv" : undefined;
  return { do: "export", what: all.test(plain) ? "everything" : "notes", ...(as ? { as } : {}) };
}

/** The file's name alone, where it was asked for: "batches.csv". */
export function fileSaid(reading: Reading): Exchange | undefined {
  const file = fileIn(reading.said);
  return file ? { do: "import", file } : undefined;
}
