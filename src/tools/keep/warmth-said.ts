/** How warm it was where they stood: degrees, or words for heat. */
import type { Amount, Reading } from "../contract/index.ts";
import { celsius } from "../lib/units.ts";
import type { Draft } from "./draft.ts";

/** Air of a day or a room, in °F or °C: no number beyond is one, and below these it is too little for either. */
const air = { coldRoom: 10, warmDay: 25, most: 120 };

/** Degrees of no named scale from here on are °F: air of 60 °C doesn't occur, 60 °F is a cool room. */
const leastFahrenheit = 60;

const hotWords =
  /\b(?:heat ?wave|boiling|scorching|baking hot|hot (?:day|car|van|sun|outside|out|afternoon|kitchen)|really hot|so hot|in the sun)\b/;
/** "not hot out", "wasn't really hot outside": nobody says that it was. */
const notHot =
  /\b(?:not|never|isnt|wasnt|isn't|wasn't|hardly|nothing like|no)(?: (?:a|that|so|too|very|really|particularly|even|at all|all that|such a))* (?:hot|boiling|scorching|baking hot|heat ?wave|in the sun)\b[^,.;]*/g;
const mildWords =
  /\b(?:(?:normal|usual|ordinary|cooler|mild) (?:day|weather|room|temperature)|(?:not|wasn'?t|isn'?t|no|never) (?:(?:a|an|too|very|that|so|really|particularly|all that|even) )*(?:hot|heat ?wave|boiling|warm)(?! (?:enough|yet|anymore|any more)))\b/;

export function warmthSaid(reading: Reading): Draft {
  const { amounts, text } = reading;
  const heat = amounts.find((each) => each.dim === "temperature") ?? asCups(reading) ?? bareAir(reading);
  if (!heat && mildWords.test(text)) return { hot: false, about: "outside" };
  if (!heat) return hotWords.test(text.replace(notHot, "")) ? { hot: true } : {};
  const fahrenheit = heat.unit === "°F" || (heat.unit === "°" && heat.value >= leastFahrenheit);
  return { air_c: celsius(heat.value, fahrenheit ? "°F" : "°C"), ...(fahrenheit ? { fahrenheit } : {}) };
}

/** "8 c" beside a fridge is no cups. */
const asCups = ({ amounts, text }: Reading): Amount | undefined =>
  /fridge|refrigerator/.test(text)
    ? amounts.find((each) => each.unit === "cup" && !each.of && /\d ?c$/.test(each.text))
    : undefined;

/** A number without its degrees, where the words beside it say that it is the air's. */
function bareAir({ amounts, text }: Reading): Amount | undefined {
  const bare = amounts.filter((each) => each.dim === "number" && each.unit === "" && each.value <= air.most);
  // "suppose the room was 27 only"
  const ofRoom = bare.find(
    (each) =>
      each.value >= air.coldRoom &&
      /\b(?:room|kitchen|air|weather|outside|flat|tent|hall) (?:was|is|were|at|gets?|of) (?:about |around |only )?$/.test(
        text.slice(0, each.at[0]),
      ),
  );
  // "its 96 out today"
  const ofDay = bare.find(
    (each) =>
      each.value >= air.warmDay &&
      /\b(?:its|it is|it was|hits?|hitting|around|about)(?: (?:about|around|like|over))? $/.test(
        text.slice(0, each.at[0]),
      ) &&
      /^ (?:degrees )?(?:out|outside|here|in here|in the (?:shade|sun|kitchen|tent)|today)\b/.test(
        text.slice(each.at[1]),
      ),
  );
  const said = ofRoom ?? ofDay;
  return said && { ...said, unit: "°" };
}
