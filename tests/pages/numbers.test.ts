/** The page on where numbers come from is current, and every number in it says where from. */
import { join } from "node:path";
import { expect, it } from "vitest";
import { root } from "../support/built.ts";
import { hasNumber, numbersPage, ruleEntries, saysItsOrigin } from "./numbers.ts";

it("is current: npm run pages writes it anew", async () => {
  await expect(await numbersPage()).toMatchFileSnapshot(join(root, "data/pages/numbers.md"));
});

it("every rule with a number in it says what that rests on", async () => {
  const entries = await ruleEntries();
  expect(entries.length).toBeGreaterThan(40);
  const silent = entries.filter((each) => hasNumber(each) && !saysItsOrigin(each));
  expect(silent.map(({ file, name }) => `${file}: ${name}`)).toEqual([]);
});

it("a published number has its source beside it, and no cell is a bare object", async () => {
  const page = await numbersPage();
  expect(page).not.toContain("[object");
  expect(page).not.toMatch(/\| undefined|undefined \|/);
  for (const part of ["McGee, On Food and Cooking", "NDB 01124", "3-501.17", "21 CFR 101.4", "NIST SP 811"])
    expect(page).toContain(part);
});
