/** What is told around a question is left out where the whole wasn't understood, and never anything that counts. */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { withoutTalk } from "../../src/intents/turn/without-talk.ts";
import { baker } from "../support/ask.ts";

describe("shorter ways to say a turn", () => {
  it.each([
    ["I can't face sums before coffee. What is 15 % of 640?", "What is 15 % of 640?"],
    ["Sorry, one more thought, might 20 g do?", "might 20 g do?"],
    [
      "My mum says they ought to have nearer forty in this heat, so would you add ten minutes?",
      "would you add ten minutes?",
    ],
    [
      "She picks them up herself. 40 macarons, how much batter? It is for her wedding.",
      "40 macarons, how much batter?",
    ],
    ["my mum says 300 g", "300 g"],
  ])("%s", (said, shorter) => expect(withoutTalk(said)).toContain(shorter));

  it.each([
    "No butter today. 300 g swiss buttercream, please.",
    "I have put in ten drops of it. Is that enough?",
    "ground earl grey tea. 280 g buttercream. dose?",
    "I have 2 kg of it. How much flavor?",
    "What is it? How much flavor for 200 g buttercream?",
    "how much flavor",
    "",
  ])("nothing of: %s", (said) => expect(withoutTalk(said)).toEqual([]));

  it("an order to note is one wherever it stands", () => {
    expect(withoutTalk("Could you note that I made fig today, 30 of them?")).toContain(
      "note: I made fig today, 30 of them",
    );
    expect(withoutTalk("They look splendid. Please log yesterday's batch as plum, two cracked.")).toContain(
      "note: yesterday's batch as plum, two cracked.",
    );
    // where something else was understood, the whole is no note
    expect(withoutTalk("Please log the batch as plum, and set a timer.", true)).toEqual([]);
    expect(withoutTalk("What did I note of the plum batch?")).toEqual([]);
  });

  it("every one is a part of what was said, and shorter", () => {
    const words = fc.constantFrom(
      "I",
      "have",
      "230 g",
      "buttercream",
      ".",
      "?",
      "my mum says",
      ", so",
      "how much",
      "it is",
      "fig",
    );
    fc.assert(
      fc.property(fc.array(words, { maxLength: 14 }), (list) => {
        const said = list.join(" ");
        for (const each of withoutTalk(said)) {
          expect(each.length).toBeLessThan(said.length);
          // digits are never left out
          expect(each.match(/\d+/g)).toEqual(said.match(/\d+/g));
        }
      }),
    );
  });
});

describe("in a conversation", () => {
  it("what wasn't understood whole is answered without the talk", async () => {
    const { one: the } = baker();
    // 640 / 16, and by hand
    expect(
      (await the("I can't face mental arithmetic before coffee. What's 640 / 16?")).figures?.[0]?.value,
    ).toBe(40);
    await the("rest timer");
    const more = await the(
      "My mum says they ought to have nearer forty in this heat, so would you add ten minutes?",
    );
    expect(more.headline).toMatch(/40 min/);
  });

  it("notes are kept once, with all that was told", async () => {
    const { ask, record } = baker();
    await ask(
      "Before I forget, could you note that I made raspberry today, about forty of them, baked at 150 C for 14 minutes?",
    );
    expect(record().notes).toHaveLength(1);
    expect(record().notes[0]).toMatchObject({
      macarons: 40,
      oven_c: 150,
      bake_min: 14,
      flavors: ["raspberry"],
    });
  });

  it("what needs an answer from her is still asked, and what is out of reach declined", async () => {
    const { one: the } = baker();
    expect((await the("I made a bowl of buttercream. How much vanilla?")).status).toBe("asking");
    expect((await the("My sister has a new puppy. How big will he get?")).status).toBe("declined");
  });

  it("of two questions none is lost", async () => {
    const { ask } = baker();
    const answers = await ask(
      "They're out of the oven and look splendid. Start the cool timer, and how much batter for 24?",
    );
    expect(answers.map(({ tool }) => tool)).toEqual(["timer", "shells"]);
  });
});
