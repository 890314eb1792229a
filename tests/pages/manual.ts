/** The manual page in roff, made of the options table that help and completion are made of. */
import { type Option, options, settings, statuses, summary, uses } from "../../src/cli/options.ts";

/** A text as roff reads it as nothing but text: ASCII, hyphens that are searched for as typed, no line a request. */
const text = (plain: string): string =>
  plain
    .replaceAll("\\", "\\e")
    .replaceAll("-", "\\-")
    .replace(/^([.'])/gm, "\\&$1");

const bold = (plain: string) => `\\fB${text(plain)}\\fR`;
const slanted = (plain: string) => `\\fI${text(plain)}\\fR`;

const section = (title: string, ...lines: string[]) => [`.SH ${title}`, ...lines];
const entry = (term: string, ...says: string[]) => [".TP", term, ...says.map((each) => sentence(each))];

/** With a capital and a full stop, as running text has them. */
const sentence = (says: string) =>
  text(`${says[0]?.toUpperCase()}${says.slice(1)}${/[.!?]$/.test(says) ? "" : "."}`);

const spelt = ({ name, short, takes }: Option) =>
  [...(short ? [`-${short}`] : []), `--${name}`].map(bold).join(", ") +
  (takes ? ` ${slanted(takes.name)}` : "");

export function manual(): string {
  const all: readonly Option[] = options;
  return [
    '.\\" Made of src/cli/options.ts by "npm run pages"; changes here are lost.',
    '.TH BOWLSIDE 1 "" "bowlside" "User Commands"',
    // words are left whole, so that what is searched for or typed again is found as it is
    ".nh",
    ".ad l",
    ...section("NAME", `bowlside \\- ${text(summary)}`),
    ...section(
      "SYNOPSIS",
      `.B bowlside`,
      ...all.map((each) => `[${spelt(each)}]`),
      `[${slanted("question")} ...]`,
    ),
    ...section(
      "DESCRIPTION",
      text(
        "A chat for a baker of filled macarons, offline and on one machine. It is asked in plain words, typos and",
      ),
      text(
        "half sentences too, and answers with the number, the rule behind it, what was assumed and what to watch for.",
      ),
      text("The same question gets the same number."),
      ".PP",
      text(
        "It is no food authority: for keeping, allergens and selling it shows the usual cautions and defers to yours.",
      ),
      ...uses.flatMap(([how, says]) => entry(bold(how), says)),
    ),
    ...section(
      "OPTIONS",
      ...all.flatMap((each) => entry(spelt(each), each.says, ...(each.more ? [each.more] : []))),
    ),
    ...section("EXIT STATUS", ...statuses.flatMap(([status, says]) => entry(bold(String(status)), says))),
    ...section("ENVIRONMENT", ...settings.flatMap(([name, says]) => entry(bold(name), says))),
    ...section(
      "FILES",
      ...entry(
        slanted("record.json"),
        "Notes, timers, bottles, stock, recipes, settings and plans, in the folder of the record",
      ),
      ...entry(slanted("history.txt"), "The questions of earlier chats, beside it"),
      ".PP",
      text(
        "Without --home and BOWLSIDE_HOME the folder is ~/.local/share/bowlside (or bowlside in XDG_DATA_HOME),",
      ),
      text(
        "~/Library/Application Support/bowlside or %LOCALAPPDATA%\\bowlside, by system. A damaged record is kept aside",
      ),
      text("and named, never overwritten."),
    ),
    ...section(
      "EXAMPLES",
      ".EX",
      ...[
        'bowlside "I have 230 g buttercream, how much flavor?"',
        "bowlside start the rest timer",
        "bowlside --json < questions.txt",
        'bowlside --demo "what\'s next"',
      ].map(text),
      ".EE",
    ),
    "",
  ].join("\n");
}
