/** Every calculator, a line each. Adding one means: its file, a test, and a line here. */

import { bench } from "./bench/bench.ts";
import { buttercream } from "./buttercream/buttercream.ts";
import { buy } from "./buy/buy.ts";
import type { Tool } from "./contract/index.ts";
import { convert } from "./convert/convert.ts";
import { cost } from "./cost/cost.ts";
import { day } from "./day/day.ts";
import { dose } from "./dose/dose.ts";
import { explain } from "./explain.ts";
import { fill } from "./fill/fill.ts";
import { formula } from "./formula/formula.ts";
import { ganache } from "./ganache/ganache.ts";
import { helpWith } from "./help.ts";
import { keep } from "./keep/keep.ts";
import { label } from "./label/label.ts";
import { method } from "./method/method.ts";
import { note } from "./note/note.ts";
import { recall } from "./recall/recall.ts";
import { scale } from "./scale/scale.ts";
import { shelf } from "./shelf/shelf.ts";
import { shells } from "./shells/shells.ts";
import { split } from "./split/split.ts";
import { timer } from "./timer/timer.ts";
import { trouble } from "./trouble/trouble.ts";
import { undo } from "./undo.ts";

export const tools: readonly Tool[] = [
  dose,
  scale,
  shells,
  split,
  fill,
  ganache,
  buttercream,
  convert,
  timer,
  note,
  recall,
  day,
  method,
  buy,
  cost,
  formula,
  keep,
  label,
  shelf,
  trouble,
  bench,
  explain,
  undo,
  helpWith(() => tools),
];

/** A calculator by its name. */
export const toolNamed = (name: string): Tool | undefined => tools.find((each) => each.name === name);
