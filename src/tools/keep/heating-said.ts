/** Heating what stood out, to make it good again: "can i heat them to 71 c", "if i bake them once more at 150". */
import type { Reading } from "../contract/index.ts";
import type { KeepInputs } from "./keep.ts";
import { warmthSaid } from "./warmth-said.ts";

const heat = "(?:re ?-?)?(?:heat|warm|bak|cook|toast|boil|steam|microwav|zapp?)(?:e|ing|ed)?";
const them =
  "(?:them|it|these|those|that|they|(?:the |my )?(?:\\S+ )?(?:macarons?|macs|batch|box|shells|filling))";
const oven = "(?:oven|microwave|grill|broiler|air fryer)";

/** As a cue: what it goes on with is what stood out. */
export const heatingWords = `(?:${heat} ${them}|(?:put|pop|stick|run|throw|chuck|go|stuck) (?:${them} )?(?:back )?(?:in|into|under|through) (?:the |my |an? )?${oven}|(?:warm|hot|low|cool) oven)`;
const heating = new RegExp(`\\b${heatingWords}(?: |[,?.!]|$)`);
/** "they were baked at 150 and sat out": how they were made. */
const wasBaked =
  /\b(?:i|we|were|was|had|been|ive) (?:just |only |all )?baked (?!.*\b(?:again|once more|a second time)\b)/;

/** °C from which on it is no air of a day or a room; nowhere on earth is it so hot. */
const noAir_c = 60;

export const heatsThem = (reading: Reading): boolean =>
  (heating.test(reading.text) || isBaking(reading)) && !wasBaked.test(reading.text);

/** "would 10 minutes at 160 f fix them": so long at what is no warmth of the air. */
function isBaking(reading: Reading): boolean {
  const { air_c } = warmthSaid(reading);
  return (
    air_c !== undefined &&
    air_c >= noAir_c &&
    /<time> (?:at|in|of) \S*<(?:temperature|number)>|<temperature> for \S*<time>/.test(reading.mask)
  );
}

/** Heating is all that is said: its time and its heat are none of those that they stood out. */
export const onlyHeats = (reading: Reading, before: Partial<KeepInputs> | undefined): boolean =>
  before?.about === "outside" && heatsThem(reading) && !stoodOut.test(reading.text);
const stoodOut = /\b(?:sat|stood|left|were|was|been|forgot\w*|had been)\b.*\bout\b|\bout of the fridge\b/;

/** How warm it was where they stood; no heat that they are to be brought to, and none of an oven. */
export function airSaid(reading: Reading): Partial<KeepInputs> {
  const { air_c, fahrenheit, ...warmth } = warmthSaid(reading);
  const isAir = air_c !== undefined && air_c < noAir_c && !heatsThem(reading);
  return { ...warmth, ...(isAir ? { air_c, ...(fahrenheit ? { fahrenheit } : {}) } : {}) };
}

/** Some of what grows makes poisons that no heat undoes. Source: USDA FSIS, "How Temperatures Affect Food". */
export const heatUndoesNothing =
  "Heating them doesn't take the time back: what grew may have left poisons that heat doesn't undo.";
