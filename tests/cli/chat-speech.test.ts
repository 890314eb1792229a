/** Reading aloud: what is said, and through a program that only writes down what it is given. */
import { chmodSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import fc from "fast-check";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { findVoice, type Voice } from "../../src/cli/chat/speech.ts";
import { spoken, spokenAnswers } from "../../src/cli/chat/spoken.ts";
import { dose, recipe } from "./chat-answers.ts";

describe("what is said", () => {
  it.each([
    ["6.9 to 11.5 g flavor", "6.9 to 11.5 grams flavor"],
    ["3-5 % of it", "3 to 5 per cent of it"],
    ["30-60 min at 148 °C", "30 to 60 minutes at 148 degrees Celsius"],
    ["on 2026-03-14", "on 2026-03-14"],
    ["a g-string, 5 gels", "a g-string, 5 gels"],
    ["0.89 ± 0.02", "0.89 plus or minus 0.02"],
  ])("%s", (text, said) => expect(spoken(text)).toBe(said));

  it("is the number first, then the caution; not the rule", () => {
    expect(spokenAnswers([dose])).toBe(
      "6.9 to 11.5 grams flavor. Caution: The directions on your bottle are the limit.",
    );
    expect(spokenAnswers([recipe])).toContain("almond flour 188 grams.");
    expect(spokenAnswers([recipe])).not.toContain("Rule");
  });

  it("can hold no command of a speech program, no markup, no control character, and has an end", () => {
    fc.assert(
      fc.property(fc.string({ unit: "grapheme", maxLength: 3000 }), (text) => {
        const said = spoken(text);
        // biome-ignore lint/suspicious/noControlCharactersInRegex: none may be left
        expect(said).not.toMatch(/[[\]<>{}&`$|\\\u0000-\u001f\u007f-\u009f]/);
        expect(said.length).toBeLessThanOrEqual(900);
      }),
    );
    expect(spoken("[[rate 500]] <audio src='x'/> $(reboot)")).toBe("rate 500 audio src 'x'/ reboot");
  });

  it("of something long ends with a sentence", () => {
    const said = spoken("Fold until it sinks back in ten seconds. ".repeat(60));
    expect(said.endsWith("seconds.")).toBe(true);
    expect(said.length).toBeGreaterThan(800);
  });
});

describe.runIf(process.platform !== "win32")("a speech program", () => {
  let folder: string;
  const troubles: string[] = [];
  const log = () => readFileSync(join(folder, "log"), "utf8");
  const program = (name: string, script: string) => {
    writeFileSync(join(folder, name), `#!/bin/sh\n${script}\n`);
    chmodSync(join(folder, name), 0o755);
  };
  const find = (platform: string, path = folder) =>
    findVoice({ platform, env: { PATH: path }, trouble: (error) => troubles.push(error.message) });
  const until = async (what: () => boolean) => {
    for (const end = Date.now() + 10_000; !what(); await new Promise((go) => setTimeout(go, 10)))
      if (Date.now() > end) throw new Error(`not so in time: ${what}`);
  };
  const voice = async (platform: string): Promise<Voice> => {
    const found = await find(platform);
    if (!found.ok) throw new Error(found.why);
    return found.voice;
  };

  beforeAll(() => {
    folder = mkdtempSync(join(tmpdir(), "speech-"));
    writeFileSync(join(folder, "log"), "");
    const note = `echo "$0 $*" | sed 's|.*/||' >> "${folder}/log"; /bin/cat >> "${folder}/log"; echo end >> "${folder}/log"`;
    program("espeak-ng", `PATH=/bin:/usr/bin; ${note}`);
    program("say", `PATH=/bin:/usr/bin; ${note}`);
  });
  afterAll(() => rmSync(folder, { recursive: true, force: true }));

  it("is given text on its standard input alone, one after the other", async () => {
    const speaker = await voice("linux");
    speaker.say("-f /etc/passwd; $(touch x)");
    speaker.say("second");
    await until(() => log().split("end\n").length === 3);
    expect(log()).toBe(
      "espeak-ng --stdin\n-f /etc/passwd; $(touch x)\nend\nespeak-ng --stdin\nsecond\nend\n",
    );
  });

  it("is another on another system", async () => {
    writeFileSync(join(folder, "log"), "");
    (await voice("darwin")).say("hello");
    await until(() => log().includes("end"));
    expect(log()).toBe("say -f -\nhello\nend\n");
  });

  it("falls silent at once, and drops what waits", async () => {
    writeFileSync(join(folder, "log"), "");
    program("espeak", "exit 0");
    program("espeak-ng", `echo begun >> "${folder}/log"; exec /bin/sleep 30`);
    const speaker = await voice("linux");
    speaker.say("one");
    speaker.say("two");
    await until(() => log() === "begun\n");
    speaker.hush();
    await new Promise((go) => setTimeout(go, 100));
    expect(log()).toBe("begun\n");
    expect(troubles).toEqual([]);
  });

  it("that gives up is named, once", async () => {
    program("espeak-ng", "exit 3");
    const speaker = await voice("linux");
    speaker.say("one");
    speaker.say("two");
    await until(() => troubles.length > 0);
    expect(troubles).toEqual([`${join(folder, "espeak-ng")} ended with 3.`]);
  });

  it("that isn't there is said to be missing, by name", async () => {
    const found = await find("linux", "/nowhere:relative:");
    expect(found).toMatchObject({ ok: false, why: expect.stringContaining("espeak-ng") });
  });
});
