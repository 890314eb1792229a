/** What sounds like notes going out of the record into a file, or in from one. */

const file = "(?:a |an |my )?(?:csv|json|spreadsheet)";
const held = "(?:\\S*notes?\\S*|\\S*batches\\S*|diary|record|data|everything|it all|all of it)";

export const exchangeCues: readonly (readonly [weight: number, ...patterns: string[]])[] = [
  [
    10,
    `(?:exports?|exporting|download|dump|back ?up) .. ${held}`,
    `(?:exports?|exporting|dump) .. ${file}`,
    `${held} .. (?:as|to|in|into|for) ${file}`,
    `(?:csv|json|spreadsheet) (?:of|with|from) .. ${held}`,
    `(?:imports?|importing) .. ${held}`,
    `(?:imports?|importing) .. (?:csv|json)`,
    `(?:read|load|bring|restore|take|get|add) .. (?:notes|diary|\\S*batches\\S*) .. (?:in|back|from|out of) .. (?:csv|json)`,
  ],
  [
    10,
    "(?:print|printed|pdf) (?:of |out )?(?:my |all |the )*(?:notes|diary)",
    "(?:notes|diary) (?:as|in) (?:a )?pdf",
  ],
  [10, `(?:exports?|exporting|download|dump|back ?up) all(?: .*)?`],
  [6, "^(?:(?:please|can you|could you|ok|and) )*(?:exports?|imports?)(?: (?:please|that|it|them|now))*$"],
];
