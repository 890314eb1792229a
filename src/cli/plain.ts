/** A turn as plain text: the same lines as the chat's, with color only where the terminal takes it. */
import { answerLines } from "./chat/lines.ts";
import { drawn, type Signs } from "./chat/signs.ts";
import type { Turn } from "./session.ts";

const tones: Readonly<Record<string, readonly [string, string]>> = {
  headline: ["\u001b[1m", "\u001b[22m"],
  rule: ["\u001b[2m", "\u001b[22m"],
  assumed: ["\u001b[2m", "\u001b[22m"],
};

export function turnText(turn: Turn, columns: number, color: boolean, signs: Signs = drawn): string {
  const paint = (text: string, tone: string) =>
    color && tones[tone] ? `${tones[tone][0]}${text}${tones[tone][1]}` : text;
  return turn.answers
    .map((answer) =>
      answerLines(answer, columns, signs)
        .map((line) => paint(line.text, line.tone))
        .join("\n"),
    )
    .join("\n\n");
}
