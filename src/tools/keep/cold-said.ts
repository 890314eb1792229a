/** Temperatures that need their own care: how cold a freezer is, how hot whites were heated. */
import type { Memory, Reading } from "../contract/index.ts";
import { wordsOf } from "../lib/pieces.ts";
import { celsius } from "../lib/units.ts";
import type { Draft } from "./draft.ts";

/** "freezer -12", "is minus 15 cold enough", "and fridge at 6" behind how cold the other is. */
export function coldOf(reading: Reading, memory: Memory): Draft {
  const said = wordsOf(reading);
  const before = memory.last?.tool === "keep" ? (memory.last.inputs as Draft) : undefined;
  const isTold = before?.freezer_c !== undefined || before?.about === "freezer" || before?.about === "cold";
  const fridge =
    /^(?:(?:and|the|my|is|with|if|so|but|what if) )*(?:fridge|refrigerator)(?: (?:is|at|on|runs|reads|shows|says|its))* (\d{1,2})(?: (?:ok|okay|fine|then))* ?\??$/.exec(
      reading.text,
    );
  if (isTold && fridge) return { about: "cold", air_c: Number(fridge[1]), freezer_c: undefined };
  const heat =
    reading.amounts.find((each) => each.dim === "temperature") ??
    reading.amounts.find((each) => each.dim === "number" && each.unit === "" && !each.of && each.value < 0);
  if (!heat || /\bfridge|refrigerator/.test(said)) return {};
  const ofFreezer = /\bfreezer\b/.test(said) || (heat.value < 0 && (isTold || /\bcold enough\b/.test(said)));
  // 0 is cold enough in °F alone: without its scale nothing is made of it
  if (!ofFreezer || (heat.unit !== "°F" && heat.unit !== "°C" && heat.value >= 0)) return {};
  return {
    about: "freezer",
    freezer_c: celsius(heat.value, heat.unit === "°F" ? "°F" : "°C"),
    air_c: undefined,
  };
}

/** A bare number is a heat of whites in this span: less is no heating in °C, more burns them in °F. */
const heats = { least: 35, most: 200 };
/** A bare heat of whites above this is meant in °F: nobody heats them so far in °C, as water boils at 100 °C. */
const hottestWhites_c = 110;
/** From here to there "65 degrees" of whites may be of either scale: warm whites in °F, or near the safe 71 °C. */
const eitherScale = 60;

/** "i heated the whites only to 60"; "is 65 degrees enough" is asked back, and then goes on in the scale that was said. */
export function heatedTo(reading: Reading, memory: Memory): Draft {
  const before = memory.last?.tool === "keep" ? (memory.last.inputs as Draft) : undefined;
  const scale = /(?:^|\W)(?:c|celsius|centigrade)\b/.test(reading.text)
    ? "°C"
    : /(?:^|\W)(?:f|fahrenheit)\b/.test(reading.text)
      ? "°F"
      : undefined;
  if (memory.slot === "degrees" && before?.degrees !== undefined && scale && reading.amounts.length === 0)
    return inScale(before.degrees, scale);
  const settled =
    before?.about === "eggs" && before.air_c !== undefined && before.degrees === undefined
      ? before.fahrenheit
        ? "°F"
        : "°C"
      : undefined;
  const heat = reading.amounts.find((each) => each.dim === "temperature");
  if (heat) {
    if (heat.unit !== "°") return {};
    if (settled) return inScale(heat.value, settled);
    return heat.value >= eitherScale && heat.value <= hottestWhites_c
      ? { degrees: heat.value, air_c: undefined, fahrenheit: undefined }
      : {};
  }
  const bare = reading.amounts.find(
    (each) =>
      each.dim === "number" &&
      each.unit === "" &&
      // "heated the whites to 60": so hot, and not so many of them
      (!each.of || / (?:to|at) (?:about |around |only )?$/.test(reading.text.slice(0, each.at[0]))) &&
      each.value >= heats.least &&
      each.value <= heats.most,
  );
  const isHeat = /\b(?:heat\w*|reach\w*|got|came|warm\w*|cook\w*|to|at)\b/.test(reading.text) || settled;
  if (!bare || !isHeat) return {};
  return inScale(bare.value, bare.value > hottestWhites_c ? "°F" : (settled ?? "°C"));
}

const inScale = (value: number, unit: "°C" | "°F"): Draft => ({
  air_c: celsius(value, unit),
  ...(unit === "°F" ? { fahrenheit: true } : {}),
});
