/** Single figures: one shell, one tray, eggs for a weight of whites, a weight before and after baking. */
import { bakedShare, shellBatter } from "../../../data/rules/shells.ts";
import type { Outcome, World } from "../contract/index.ts";
import { lessonText } from "../lib/learned.ts";
import { counted, plain, weight } from "../lib/show.ts";
import { eggsFor, saidSize, shellWeight } from "../lib/sizing.ts";
import { assumptions, isOwn, keptShare, type Measures, oddOnes, shellRule } from "./rule.ts";

export function oneShell(size: Measures, world: World): Outcome {
  const grams = shellWeight(size.diameter_mm, size.own);
  const less = `less the ${plain(100 * (1 - keptShare(size.own)))} % that stays in bowl and bag`;
  return {
    status: "answered",
    headline: `${plain(grams)} g batter in one ${plain(size.diameter_mm)} mm shell`,
    figures: [{ name: "batter", value: grams, unit: "g" }],
    rule: shellRule(size, world, size.own.shell_g === undefined ? "" : `; ${less}`, false),
    ...oddOnes(size, world, false),
    assumed: assumptions(size, false, world),
    working: [
      size.own.shell_g === undefined
        ? `${shellBatter.value} × ${plain(size.diameter_mm / 10)}² = ${plain(grams, 4)} g`
        : `${plain(size.own.shell_g, 4)} × ${plain(keptShare(size.own), 4)} = ${plain(grams, 4)} g`,
    ],
    leaves: saidSize(size),
  };
}

export function trayAnswer(size: Measures, onTray: number, world: World): Outcome {
  const own = world.bench.shells_a_tray !== undefined || world.bench.tray_width_mm !== undefined;
  if (onTray === 0)
    return { status: "impossible", headline: `No ${plain(size.diameter_mm)} mm shell fits that tray.` };
  return {
    status: "answered",
    headline: `${counted(onTray, "shell")} of ${plain(size.diameter_mm)} mm on one tray`,
    figures: [{ name: "shells", value: onTray, unit: "shells" }],
    rule:
      own || isOwn(size)
        ? {
            text:
              world.bench.shells_a_tray !== undefined
                ? `your mat has ${world.bench.shells_a_tray}`
                : "your tray and size, 10 mm margin, 20 mm gaps",
            basis: "your bench",
          }
        : { text: "400 × 300 mm tray, 10 mm margin all round, 20 mm between shells", basis: "arithmetic" },
    assumed: assumptions(size, false, world),
    working: [
      `a row floor((380 + 20) / (${plain(size.diameter_mm)} + 20)), rows floor((280 + 20) / (${plain(size.diameter_mm)} + 20)): ${onTray}`,
    ],
    leaves: saidSize(size),
  };
}

/** @param egg_g what an egg weighs in its shell, where that was said: it is no measure of its white */
export function eggsAnswer(whites_g: number, world: World, egg_g?: number): Outcome {
  const eggs = eggsFor(whites_g);
  return {
    status: "answered",
    headline: `${counted(eggs, "egg white")} for ${weight(whites_g, world.bench.scale_g)} g`,
    figures: [{ name: "whites", value: eggs, unit: "whites" }],
    rule: {
      text: "one large egg's white is 33 g; whites = ceil(grams / 33)",
      basis: "published",
      source: "USDA SR, NDB 01124",
    },
    ...(egg_g === undefined ? {} : { assumed: [`33 g of white in an egg of ${plain(egg_g)} g too`] }),
    working: [`ceil(${plain(whites_g)} / 33) = ${eggs}`],
  };
}

export function baked(raw_g: number, shells: number, world: World, size?: Measures): Outcome {
  const grams = (raw_g * bakedShare.value) / 100;
  return {
    status: "answered",
    headline: `${weight(grams, world.bench.scale_g)} g baked`,
    figures: [{ name: "baked", value: grams, unit: "g" }],
    rule: size?.lessons.shell
      ? {
          text: `${lessonText(size.lessons.shell)}; baked weight = 0.87 × batter weight`,
          basis: "your bench",
        }
      : { text: `baked weight = 0.87 × batter weight`, basis: bakedShare.basis },
    assumed: size ? assumptions(size, false, world) : [],
    working: [
      ...(size
        ? [
            `${shells} shells of ${plain(shellWeight(size.diameter_mm, size.own), 4)} g are ${plain(raw_g)} g piped`,
          ]
        : []),
      `${plain(raw_g)} × 0.87 = ${plain(grams)} g`,
    ],
  };
}

/** The batter that a baked weight was. */
export function unbaked(baked_g: number, world: World): Outcome {
  const grams = (baked_g * 100) / bakedShare.value;
  return {
    status: "answered",
    headline: `${weight(grams, world.bench.scale_g)} g batter`,
    figures: [{ name: "batter", value: grams, unit: "g" }],
    rule: {
      text: `batter weight = baked weight / ${plain(bakedShare.value / 100)}`,
      basis: bakedShare.basis,
    },
    working: [`${plain(baked_g)} / ${plain(bakedShare.value / 100)} = ${plain(grams)} g`],
  };
}
