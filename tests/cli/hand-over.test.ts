/** Files that the shipped program hands over: where they go, who may read them, what they are; and what it needs for it. */
import { mkdirSync, readdirSync, readFileSync, rmSync, statSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { afterAll, beforeAll, expect, it } from "vitest";
import { builtProgram, type Program } from "../support/built.ts";
import { pagesOf } from "../support/pdf.ts";

let program: Program;
beforeAll(async () => {
  program = await builtProgram();
}, 180_000);
afterAll(() => program?.remove());

const label =
  "us label: 130 g almond flour, 130 g powdered sugar, 100 g egg whites, 100 g sugar, net weight 120 g, as pdf";

let folders = 0;
/** A folder to stand in and a record of its own. */
function place() {
  folders += 1;
  const cwd = join(program.home, "..", `stands-${folders}`);
  mkdirSync(cwd, { recursive: true });
  return { cwd, env: { BOWLSIDE_HOME: join(cwd, "record") } };
}

it("writes a label into the folder she stands in, readable by her alone, and never over a file", async () => {
  const { cwd, env } = place();
  writeFileSync(join(cwd, "label.pdf"), "hers");
  const ran = await program.run([label], { cwd, env });
  expect([ran.status, ran.stderr]).toEqual([0, ""]);
  expect(ran.stdout.replace(/\s+/g, " ")).toContain("label-2.pdf");
  expect(readFileSync(join(cwd, "label.pdf"), "utf8")).toBe("hers");
  const [page] = await pagesOf(readFileSync(join(cwd, "label-2.pdf")));
  expect(page?.text).toContain("Net Wt 4.2 oz (120 g)");
  if (process.platform !== "win32") expect(statSync(join(cwd, "label-2.pdf")).mode & 0o777).toBe(0o600);
});

it("the same question at the same hour gives the same bytes", async () => {
  const { cwd, env } = place();
  for (let n = 0; n < 2; n++) await program.run(["print a batch sheet for 40 macarons"], { cwd, env });
  const [one, two] = ["batch-2026-03-14.pdf", "batch-2026-03-14-2.pdf"].map((name) =>
    readFileSync(join(cwd, name)),
  );
  expect(one?.equals(two ?? Buffer.alloc(0))).toBe(true);
  const pages = await pagesOf(one);
  expect(pages.map(({ text }) => text).join(" ")).toContain("40 macarons");
});

it("takes notes out and in, and reads nothing it wasn't told to", async () => {
  const { cwd, env } = place();
  const input =
    "note: crème lemon, 24 macarons, baked 15 min\nexport my notes as csv\nexport everything as json\n";
  expect((await program.run([], { cwd, env, input })).status).toBe(0);
  const other = { ...env, BOWLSIDE_HOME: join(cwd, "other") };
  const back = await program.run(["--json"], {
    cwd,
    env: other,
    input:
      "import notes from notes-2026-03-14.csv\nimport my notes from record-2026-03-14.json\nshow my notes\n",
  });
  const answers = back.stdout
    .trim()
    .split("\n")
    .map((line) => JSON.parse(line).answers[0]);
  expect(answers[0].headline).toContain("1 note added");
  expect(answers[1].headline).toContain("Nothing new");
  expect(answers[2].items[0].text).toBe("crème lemon, 24 macarons, baked 15 min");
  expect(readdirSync(cwd).sort()).toEqual([
    "notes-2026-03-14.csv",
    "other",
    "record",
    "record-2026-03-14.json",
  ]);
  expect(readFileSync(join(cwd, "notes-2026-03-14.csv")).subarray(0, 3)).toEqual(
    Buffer.from([0xef, 0xbb, 0xbf]),
  );
});

it.skipIf(process.platform === "win32" || process.getuid?.() === 0)(
  "says so where it may not write",
  async () => {
    const { cwd, env } = place();
    mkdirSync(join(cwd, "record"), { recursive: true });
    const locked = join(cwd, "locked");
    mkdirSync(locked, { mode: 0o500 });
    const ran = await program.run([label], { cwd: locked, env });
    expect(ran.status).toBe(3);
    expect(ran.stdout).toContain("may not be written to");
  },
);

it("needs neither library for a question without a file: both may be gone", async () => {
  const folder = dirname(program.file);
  const { cwd, env } = place();
  for (const part of ["paper.mjs", "csv.mjs"]) rmSync(join(folder, part));
  const ran = await program.run(["I have 230 g buttercream, how much flavor?"], { cwd, env });
  expect([ran.status, ran.stdout.split("\n")[0]]).toEqual([0, "6.9 to 11.5 g flavor"]);
  expect((await program.run([label], { cwd, env })).status).toBe(1);
});
