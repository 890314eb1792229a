/** Every calculator, a line each. Adding one means: its file, a test, and a line here. */
import type { Tool } from "./contract/index.ts";
import { buttercream } from "./buttercream.ts";
import { convert } from "./convert/convert.ts";
import { day } from "./day/day.ts";
import { dose } from "./dose/dose.ts";
import { explain } from "./explain.ts";
import { fill } from "./fill.ts";
import { ganache } from "./ganache/ganache.ts";
import { helpWith } from "./help.ts";
import { method } from "./method/method.ts";
import { scale } from "./scale/scale.ts";
import { shells } from "./shells/shells.ts";
import { split } from "./split/split.ts";
import { timer } from "./timer/timer.ts";
import { undo } from "./undo.ts";

export const tools: readonly Tool[] = [dose, scale, shells, split, fill, ganache, buttercream, convert, timer, day, method, explain, undo, helpWith(() => tools)];

/** A calculator by its name. */
export const toolNamed = (name: string): Tool | undefined => tools.find((each) => each.name === name);
