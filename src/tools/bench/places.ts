/** The oven, the baker's hours and what money is in. */
import type { Reading } from "../contract/index.ts";
import { hoursSaid } from "../lib/hours.ts";
import { ovenNamed, scaleOf } from "../lib/oven.ts";
import { celsius } from "../lib/units.ts";
import type { BenchInputs } from "./bench.ts";

type Draft = Partial<BenchInputs>;

/** "my oven runs 10 hot", "i have a fan oven", "i bake at 145". */
export function readOven(reading: Reading): Draft {
  const { mask } = reading;
  const measured = byThermometer(reading);
  if (measured !== undefined) return { oven_offset_c: measured };
  // "at 150 but my oven runs 10 hot": how far off it is, not what it is set to
  const off = reading.amounts.find(
    (each) =>
      (each.dim === "temperature" || (each.dim === "number" && each.unit === "")) &&
      /(?:runs|reads|gets|bakes) (?:(?:hot|cold|cool|hotter|colder) by )?(?:about |roughly |some )?$/.test(
        reading.text.slice(0, each.at[0]),
      ),
  );
  const heat =
    off ??
    reading.amounts.find((each) => each.dim === "temperature") ??
    reading.amounts.find((each) => each.dim === "number" && each.unit === "" && !each.of);
  if (
    heat &&
    /(?:^| )(?:ovens?|(?:mine|it) runs)(?: |$)/.test(mask) &&
    /(?:hot|hotter|cold|colder|cool|cooler|high|low|over|under|off|warm|warmer)(?: |$)/.test(mask)
  ) {
    // A difference of temperatures has no zero point: only its scale counts.
    const off_c = heat.unit === "°F" ? heat.value / 1.8 : heat.value;
    if (/(?:^| )off(?: |$)/.test(mask)) return { off_c };
    return { oven_offset_c: /cold|cool|low|under/.test(mask) ? -off_c : off_c };
  }
  const fan = ovenNamed(reading) ?? (/(?:no|without(?: a)?) fan/.test(mask) ? "conventional" : undefined);
  if (fan && !heat) return { fan_oven: fan === "fan" };
  const named = reading.amounts.find((each) => each.dim === "temperature");
  const inOven = /step=bake|(?:^| )(?:bake|oven)(?: |$)/.test(mask);
  if (named && inOven)
    return { oven_c: celsius(named.value, named.unit === "°" && named.value >= 270 ? "°F" : named.unit) };
  const bare = heat && inOven && /(?:^| )at /.test(mask) && heat.value >= 100 ? heat.value : undefined;
  return bare === undefined ? {} : { oven_c: celsius(bare, bare >= 270 ? "°F" : "°C") };
}

/** "the thermometer says 165, the dial 150": fifteen degrees hot. °C. */
function byThermometer({ amounts, text }: Reading): number | undefined {
  const heats = amounts.filter(
    ({ dim, unit, of }) => dim === "temperature" || (dim === "number" && unit === "" && !of),
  );
  const at = text.indexOf("thermometer");
  if (at < 0 || heats.length !== 2 || !/\b(?:dial|set|knob|display|control|oven (?:says|is|at))\b/.test(text))
    return undefined;
  const inside = heats.find((each) => each.at[0] > at) ?? heats[0];
  const dial = heats.find((each) => each !== inside);
  if (!inside || !dial) return undefined;
  const isFahrenheit = [inside, dial].some((each) => scaleOf(each) === "°F");
  return (inside.value - dial.value) / (isFahrenheit ? 1.8 : 1);
}

/** "i get up at 6", "to bed at 11". Bed at an hour before noon is in the evening, up to midnight's small hours. */
export function readHours(reading: Reading): Draft {
  const span = hoursSaid(reading.text);
  if (span.wake_min !== undefined) return span;
  const found: Draft = {};
  for (const match of reading.mask.matchAll(
    /(?:^| )(get up|up|wake|awake|start|begin|out of bed|bed|sleep|asleep|stop|finish|turn in)(?= ).*?(\S+<when>)/g,
  )) {
    const place = match[2]?.replace(/<when>$/, "").replaceAll("_", " ");
    const when = reading.whens.find((each) => each.text === place && each.minute !== undefined);
    if (when?.minute === undefined) continue;
    if (/^(?:bed|sleep|asleep|stop|finish|turn in)$/.test(match[1] ?? "")) {
      const evening = when.half === undefined && when.minute >= 6 * 60 && when.minute < 12 * 60;
      found.sleep_min ??= evening ? when.minute + 12 * 60 : when.minute;
    } else found.wake_min ??= when.minute;
  }
  return found;
}

const codes: [RegExp, string][] = [
  [/canadian|(?:^| )cad(?: |<|$)/, "CAD"],
  [/australian|aussie|(?:^| )aud(?: |<|$)/, "AUD"],
  [/pounds?(?: |<|$)|sterling|quid|gbp|£/, "GBP"],
  [/euros?(?: |<|$)|(?:^| )eur(?: |<|$)|€/, "EUR"],
  [/francs?(?: |<|$)|chf/, "CHF"],
  [/dollars?(?: |<|$)|usd|bucks|\$/, "USD"],
];

/** The currency, what an hour of work costs, and whose label rules count. */
export function readMoney(reading: Reading): Draft {
  const { mask } = reading;
  const money = reading.amounts.find((each) => each.dim === "money");
  if (money && (money.per?.unit === "h" || /hour|hourly|labou?r|wage/.test(mask)))
    return { labor_per_h: money.value / (money.per?.unit === "min" ? 1 / 60 : (money.per?.value ?? 1)) };
  const market = /(?:^| )(?:eu|europe|european|e u)(?: |$)/.test(mask)
    ? "eu"
    : /(?:^| )(?:us|usa|america|american|united states|u s)(?: |$)/.test(mask) &&
        !/us cups?|us \S*<unit=cup>/.test(mask)
      ? "us"
      : undefined;
  if (market && /market|labels?|sell|selling/.test(mask)) return { market };
  if (
    money ||
    !/currency|money|price|prices|sell|charge|(?:^| )use (?:the )?(?:british |english )?\S*<unit=|(?:^| )in (?:euros?|dollars?|pounds?|\S*<unit=)/.test(
      mask,
    )
  )
    return {};
  const code = /<unit=([A-Z]{3})>/.exec(mask)?.[1] ?? codes.find(([pattern]) => pattern.test(mask))?.[1];
  return code ? { currency: code, weight_unit: undefined } : {};
}
