/** The README with its session and its help as the program gives them now. */
import { helpText } from "../../src/cli/help.ts";
import { turnText } from "../../src/cli/plain.ts";
import { textOf } from "../guards/sources.ts";
import { baker } from "../support/ask.ts";

export const columns = 100;

/** The text of a section, by its heading. */
export const section = (readme: string, title: string): string => {
  const [, text = ""] = readme.split(`\n## ${title}\n`);
  return text.split("\n## ")[0] ?? "";
};

/** What stands between fences. */
export const blocksOf = (text: string): string[] =>
  [...text.matchAll(/```\w*\n([\s\S]*?)```/g)].map(([, block = ""]) => block);

/** What is asked in the short session, in order. */
export const sessionOf = (readme: string): string[] =>
  [...(blocksOf(section(readme, "A short session"))[0] ?? "").matchAll(/^∪ (.*)$/gm)].map(
    ([, say = ""]) => say,
  );

export async function currentReadme(): Promise<string> {
  const readme = textOf("README.md");
  const talk = baker();
  const turns: string[] = [];
  for (const asked of sessionOf(readme)) {
    const answers = await talk.ask(asked);
    turns.push(`∪ ${asked}\n${turnText({ asked, answers }, columns, false)}\n`);
  }
  const blocks: readonly (readonly [title: string, block: string])[] = [
    ["A short session", turns.join("\n")],
    ["At the command line", `${helpText(columns)}\n`],
  ];
  return blocks.reduce((text, [title, block]) => {
    const old = section(text, title);
    return text.replace(old, () => old.replace(blocksOf(old)[0] ?? "", () => block));
  }, readme);
}
