/** "half of it white and the other two a quarter each", behind three colors: the others by their names, as much of each. */
import type { Amount } from "../contract/index.ts";
import { says } from "../lib/find.ts";
import { shareOf } from "./names.ts";
import type { Draft, Said } from "./said.ts";

const others =
  /(?:^|[ _])(?:other|others|rest|remainder|remaining)(?:[ _<]|$).*(?:each|apiece|shared?|split|divided|equal|equally|evenly|alike|the same|between)(?:[ <]|$)|(?:^| )(?:each|every one|both) of the[ _](?:other|others|rest|remaining)/;

const shareIn = ({ dim, value, fraction }: Amount): number | undefined =>
  dim === "percent" ? value / 100 : dim === "number" && fraction && value < 1 ? value : undefined;

export function othersAlike({ reading, before, named }: Said): Draft | undefined {
  const names = (before?.parts ?? before?.percents ?? before?.weights ?? []).flatMap(
    ({ name }) => name ?? [],
  );
  if (names.length < 3 || before?.rest || new Set(names).size < names.length || !says(reading, others))
    return undefined;
  const [own, each, ...more] = reading.amounts.filter((amount) => shareIn(amount) !== undefined);
  const share = own && shareIn(own);
  const name = own && named(own);
  const hues = reading.things.flatMap((thing) => (thing.base ? [] : (thing.color ?? thing.taste ?? [])));
  if (!share || !name || !names.includes(name) || more.length > 0 || hues.length > 1) return undefined;
  const left = (1 - share) / (names.length - 1);
  // what is said of each has to come to the whole
  if (each && Math.abs((shareIn(each) ?? 0) - left) > 5e-3) return undefined;
  return { percents: names.map((one) => shareOf(100 * (one === name ? share : left), one)) };
}
