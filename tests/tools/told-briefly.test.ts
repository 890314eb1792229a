/**
 * Questions and orders in their shortest form, and two in a breath. Values by hand: a cup of granulated sugar weighs 200 g
 * (USDA SR, portion weights); ganache to pipe is 1.25 : 1 of dark (common practice); filled macarons keep 7 days, the day
 * of filling counted (FDA Food Code 2022, 3-501.17). The clock stands on Saturday 14 March 2026.
 */
import { describe, expect, it } from "vitest";
import type { Answer } from "../../src/tools/contract/index.ts";
import { baker } from "../support/ask.ts";

const last = async (...turns: readonly string[]): Promise<Answer[]> => {
  const { ask } = baker();
  let answers: Answer[] = [];
  for (const turn of turns) answers = await ask(turn);
  return answers;
};
const figure = (answers: readonly Answer[], name: string) =>
  answers.flatMap(({ figures = [] }) => figures).find((each) => each.name === name)?.value;

describe("two in a breath, and none is lost", () => {
  it.each([
    ["dark filling ganache out of 220 g cream, ganache timer on too", ["ganache", "timer"]],
    ["whites weigh 85 g. weights of everything else, and macarons it makes", ["scale", "shells"]],
    ["125g whites in bowl. rest of the weights n macs it makes?", ["scale", "shells"]],
    ["140 g whites: rest of the shells, and yield at 4 cm", ["scale", "shells"]],
    ["log peach batch, good feet. and a timer, 20 min", ["note", "timer"]],
    ["600g milk choc, cream for piping. ganache timer.", ["ganache", "timer"]],
  ])("%s", async (said, tools) => expect((await last(said)).map(({ tool }) => tool)).toEqual(tools));

  it("sets no timer that is asked about", async () => {
    expect((await last("is the ganache timer on"))[0]?.headline).not.toMatch(/45 min/);
  });
});

it("cups of a weight are no recipe", async () => {
  expect(figure(await last("cups for 250 g granulated sugar"), "result")).toBe(1.25);
});

it("what remains of a bowl goes to the other", async () => {
  const [answer] = await last("split 400 g buttercream, vanilla gets 150 and cocoa whatever remains");
  expect(answer?.figures?.map(({ value }) => value)).toEqual(expect.arrayContaining([150, 250]));
});

it("a list is brought to a weight in all", async () => {
  const answers = await last("take 200 g butter, 120 g sugar, 80 g whites up to 1 kg in total");
  expect([figure(answers, "butter"), figure(answers, "whites")]).toEqual([500, 200]);
});

it("the chocolate that it is settled on", async () => {
  const second = await last("we will go with the dark, tell me the cream for 200 g");
  expect(figure(second, "cream")).toBe(160);
});

describe("which were filled when", () => {
  it("is of the past, behind others too", async () => {
    const [answer] = await last("filled on the 12th, still ok?", "And those filled on the 10th?");
    expect(answer?.headline).toContain("2026-03-16");
  });

  it("and whether they may still be handed out", async () => {
    expect((await last("i filled them on the 6th, can they still go out today"))[0]?.headline).toContain(
      "2026-03-12",
    );
  });
});

it("her size is kept from an order", async () => {
  expect((await last("save my size, i pipe 3.5 cm"))[0]).toMatchObject({ tool: "bench", status: "answered" });
});

it("a note under a day", async () => {
  expect((await last("put this under wednesday: lavender, tops wrinkled"))[0]?.headline).toContain(
    "Wed 11 Mar",
  );
});
