/** What stands at one end of a turn and belongs to all that is asked in it. */
import { carriesAmount, type Ear, type Part } from "./part.ts";

/** "how much vanilla and how much rum for 200 g buttercream": the weight at the end is for all that is asked before. */
export function sharedEnd(parts: Part[], ear: Ear): Part[] {
  const last = parts.at(-1) ?? [];
  const weight = last.findIndex((item) => item.is === "amount" && item.amount.dim === "weight");
  const joint = last[weight - 1];
  const behind = last.slice(weight + 1, weight + 4);
  const isFor = joint?.is === "word" && ["for", "in", "into", "to"].includes(joint.text);
  if (parts.length < 2 || !isFor || !behind.some((item) => item.is === "thing" && item.thing.base))
    return parts;
  const end = last.slice(weight - 1).filter((item) => !(item.is === "sign" && item.text === "?"));
  const asksFlavor = (part: Part) =>
    !carriesAmount(part) &&
    /^(?:(?:and|also|so) )*how (?:much|many) /.test(ear.mask(part)) &&
    part.some((item) => item.is === "thing" && (item.thing.dose || item.thing.taste)) &&
    !part.some((item) => item.is === "thing" && item.thing.base);
  return parts.map((part, at) => (at < parts.length - 1 && asksFlavor(part) ? [...part, ...end] : part));
}

/** "how many trays and how much filling for 45 macarons of 4 cm": both are asked of the macarons at the end. */
export function sharedCount(parts: Part[], ear: Ear): Part[] {
  const last = parts.at(-1) ?? [];
  const at = last.findIndex(
    (item, i) =>
      item.is === "amount" &&
      item.amount.dim === "number" &&
      last.slice(i + 1, i + 3).some((each) => each.is === "thing" && each.thing.count === "macarons"),
  );
  const joint = last[at - 1];
  if (parts.length < 2 || !(joint?.is === "word" && joint.text === "for")) return parts;
  const end = last.slice(at - 1).filter((item) => !(item.is === "sign" && item.text === "?"));
  const asksSize =
    /^(?:(?:and|also|so) )*how (?:much|many) \S*<(?:count=trays|base=(?:batter|filling))[^>]*>(?: (?:do|will) i need)?$/;
  return parts.map((part, i) =>
    i < parts.length - 1 && !carriesAmount(part) && asksSize.test(ear.mask(part)) ? [...part, ...end] : part,
  );
}

const asksStart =
  /^(?:(?:and|also|so|then) )*(?:when|what time) (?:do|should|must|shall) (?:i|we) (?:have to |need to )?(?:start|begin)(?: with them| it all)?(?: \?)?$/;

/** "60 macarons for saturday 11am, how much batter and when do i start": the day is planned for what was said first. */
export function sharedHour(parts: Part[], ear: Ear): Part[] {
  const [first = []] = parts;
  const isCount = (part: Part) => part.some((item) => item.is === "thing" && item.thing.count === "macarons");
  const hour = first.find((item) => item.is === "when");
  if (parts.length < 2 || !hour || !isCount(first)) return parts;
  // "plan 60 macarons for saturday 3pm, when do i start" asks for one plan
  if (ear.claimed(first)?.name === "day")
    return parts.filter((part, at) => at === 0 || !asksStart.test(ear.mask(part)));
  return parts.map((part, at) => (at > 0 && asksStart.test(ear.mask(part)) ? [...part, hour] : part));
}
