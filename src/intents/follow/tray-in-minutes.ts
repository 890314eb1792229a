/** "and 14 for tray one", behind a timer: minutes, whatever was sized before it. */
import { opening } from "../../../data/words/openers.ts";
import type { Reading } from "../../tools/contract/index.ts";
import { spaced } from "./spaced.ts";
import type { State } from "./state.ts";

const said = new RegExp(
  `^${opening}(?:also )?(\\d{1,3}) for (?:the )?((?:tray|batch|sheet) (?:[a-z]+|\\d)|(?:second|other|next|first|last) (?:tray|batch|sheet))(?: (?:too|as well|please|pls|then|now))*[ ?.!]*$`,
);

/** The minutes with their unit; undefined where no tray is timed. Pure. */
export function trayInMinutes({ text }: Reading, { last }: State): string | undefined {
  const [, minutes, tray] = last?.tool === "timer" ? (said.exec(spaced(text)) ?? []) : [];
  return minutes === undefined ? undefined : `${minutes} min for ${tray}`;
}
