/** Typos are mended in the program as it is shipped: the bundle leaves parts of its packages out, and must not miss one. */
import { afterAll, beforeAll, expect, test } from "vitest";
import { builtProgram, type Program } from "../support/built.ts";

let program: Program;
beforeAll(async () => {
  program = await builtProgram();
}, 180_000);
afterAll(() => program?.remove());

test.each([
  ["pistachoi flavor for 200 g buttercream", "6 to 10 g pistachio flavor"],
  ["how much flavour for 200 g buttercraem", "6 to 10 g flavor"],
])("%s", async (line, headline) => {
  const { stdout, stderr, status } = await program.run([line]);
  expect(stderr).toBe("");
  expect(status).toBe(0);
  expect(stdout).toContain(headline);
});
