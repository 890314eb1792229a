/** Hands text to the terminal's clipboard, by the escape sequence that xterm introduced and most terminals know. */
import type { Answer } from "../../tools/contract/index.ts";
import { answerLines } from "./lines.ts";
import type { Signs } from "./signs.ts";

/** Lines of a message or a document, not of a window. */
const columns = 100;

/** Answers as plain text, without plots: for pasting elsewhere. */
export function copyText(answers: readonly Answer[], signs: Signs): string {
  return answers
    .map((answer) =>
      answerLines(answer, columns, signs, true)
        .map((line) => line.text.trimEnd())
        .join("\n"),
    )
    .join("\n\n");
}

/** OSC 52: the clipboard, base64. What isn't a letter of base64 can't be in it, so nothing of the text is a command. */
export const clipboardSequence = (text: string): string =>
  `\u001b]52;c;${Buffer.from(text, "utf8").toString("base64")}\u0007`;
