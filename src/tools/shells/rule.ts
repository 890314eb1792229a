/** The rule that sizes follow: her size, what her batches teach, and what was assumed. */
import { batterLoss, shellBatter, spareShells } from "../../../data/rules/shells.ts";
import type { Rule, World } from "../contract/index.ts";
import { type Lessons, lessonText, oddLines, taughtTo } from "../lib/learned.ts";
import { plain } from "../lib/show.ts";
import { type Own, type Sizing, shellWeight } from "../lib/sizing.ts";

/** The size with what her batches teach about it; `set` is the bench as she set it. */
export interface Measures extends Sizing {
  lessons: Lessons;
  own: Own;
  set: World["bench"];
}

export const isOwn = (size: Measures) => size.diameterFrom === "bench";

export function assumptions(size: Measures, spares: boolean, world: World): string[] {
  const { bench } = world;
  return [
    ...(size.diameterFrom === "book" ? [`${plain(size.diameter_mm)} mm shells`] : []),
    ...(spares ? [`${plain(bench.spare_percent ?? spareShells.value)} % spare shells`] : []),
  ];
}

/** The lessons that an answer rests on: of the batter, and of the spares where it takes some. */
function lessonsOf({ lessons, set }: Measures, spares: boolean) {
  const { shell, "batter loss": loss } = lessons;
  return [
    ...(shell ? [shell] : []),
    ...(loss ? [loss] : []),
    ...(spares ? taughtTo(set, lessons, ["spares"]) : []),
  ];
}

export function shellRule(size: Measures, world: World, tail: string, tray: boolean, spares = false): Rule {
  const taught = lessonsOf(size, spares);
  const own =
    isOwn(size) ||
    (tray && (world.bench.shells_a_tray !== undefined || world.bench.tray_width_mm !== undefined)) ||
    size.set.spare_percent !== undefined ||
    taught.length > 0;
  const at = `${plain(size.diameter_mm)} mm${isOwn(size) ? ", your size" : ""}`;
  const rest = taught.filter((lesson) => lesson.name !== "shell").map((lesson) => `; ${lessonText(lesson)}`);
  const lost =
    size.own.batterLoss_percent === undefined ? `; ${batterLoss.value} % stays in bowl and bag` : "";
  return {
    text: size.lessons.shell
      ? `${lessonText(size.lessons.shell)}, at ${at}${rest.join("")}${tail}`
      : `${shellBatter.value} × d² g batter a shell, d in cm: ${plain(shellWeight(size.diameter_mm))} g at ${at}${lost}${rest.join("")}${tail}`,
    basis: own ? "your bench" : shellBatter.basis,
  };
}

/** What of the batter made reaches the shells: 0.96 by the book. */
export const keptShare = (own: Own) => 1 - (own.batterLoss_percent ?? batterLoss.value) / 100;

/** Batches that were left out, as cautions. */
export function oddOnes(size: Measures, world: World, spares: boolean): { cautions?: string[] } {
  const lines = oddLines(lessonsOf(size, spares), world.now_ms);
  return lines.length ? { cautions: lines } : {};
}
