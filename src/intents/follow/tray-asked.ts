/** "how many 38 mm shells on it", behind the tray's own measures: what that tray holds, and no order and no size to keep. */
import type { Reading } from "../../tools/contract/index.ts";
import { spaced } from "./spaced.ts";
import type { State } from "./state.ts";

const ofTray = ["tray_width_mm", "tray_depth_mm", "shells_a_tray"];

const asks =
  /\b(?:how many|how much|what number|what (?:does|will|can|would|do) (?:it|that|this|they|i)|whats? (?:fits?|goes))\b/;
const holds =
  /\b(?:on (?:it|that|this|there|one|each|the (?:tray|sheet|mat))|onto (?:it|that|there)|it (?:hold|take|fit)s?|fits?|hold|holds|take|takes|room for|go on)\b/;
/** Another thing is counted, or it is asked of an order. */
const otherMatter =
  /\b(?:trays|sheets|boxes|eggs|whites|batter|minutes|hours|long|batches|people|guests|cost|grams|timer|note|need)\b/;

/** The sentence put plainly; undefined where it asks for something else. Pure. */
export function trayAsked(reading: Reading, { last }: State): string | undefined {
  if (last?.tool !== "bench" || !ofTray.some((key) => key in last.inputs)) return undefined;
  const text = spaced(reading.text);
  const [size, ...others] = reading.amounts;
  if (others.length > 0 || (size && size.dim !== "length") || reading.whens.length > 0) return undefined;
  if (!asks.test(text) || !holds.test(text) || otherMatter.test(text)) return undefined;
  if (reading.things.some(({ base, ingredient, dose, step }) => base ?? ingredient ?? dose ?? step))
    return undefined;
  return size ? `how many ${size.text} shells fit on one tray` : "how many shells fit on one tray";
}
