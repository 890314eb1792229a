/** A sentence as the timers hear it: "the first" is one of several and no day of the month, "the rest" is the resting. */
import type { Reading } from "../contract/index.ts";
import { isSign, type Piece, pieces } from "../lib/pieces.ts";

export interface Heard {
  some: Piece[];
  mask: string;
}

const place = /^(?:the )?(?:first|second|third|fourth|fifth|last)$/;

const changesOne =
  /^(?:\S+ )*?(?:shorten|extend|stretch|lengthen|move|change|set|make|reset|push|turn|cut(?:<\S*)?|bring|reduce|put) (?:the|my|that) \S+ \|one to (.+)$/;

/** "shorten tray 2 to 18 min": the tray's number. */
const trayTo =
  /(?:^| )((?:shorten|extend|stretch|lengthen|move|change|set|make|reset|push|turn|cut(?:<\S*)?|bring|reduce) (?:the |my )?(?:tray|batch|sheet|timer)(?:<\S*)?) (\d+)_to_(?=\S*<(?:time|number))/;
const oneTo =
  /(?:^| )(?:shorten|extend|stretch|lengthen|move|change|set|make|reset|push|turn|cut(?:<\S*)?|bring|reduce|put) (?:the|my|that) \S+ one<number> to \S*<(?:time|number)/;

const plainName = "(?:(?!\\S*<(?:time|when))[^ :,]+ ?){1,3}";
/** "macarons: timer 40 minutes": its name stands apart, behind a sign. */
const nameAhead = new RegExp(`^${plainName}[:-] (?:set )?(?:a )?timer (?:for |of )?\\S*<time>$`);
/** "21 minutes, timer, macarons". */
const nameBehind = new RegExp(`^\\S*<time> , timer , ${plainName}$`);

export function heard(reading: Reading): Heard {
  const { some, mask } = heardSo(reading);
  if (nameAhead.test(mask))
    return { some: some.filter((each) => !isSign(each)), mask: mask.replace(/ [:-] /, " ") };
  if (!nameBehind.test(mask)) return { some, mask };
  const [time = "", , name = ""] = mask.split(" , ");
  const plain = some.filter((each) => !isSign(each));
  return {
    some: [...plain.slice(2), ...plain.slice(1, 2), ...plain.slice(0, 1)],
    mask: `${name} timer ${time}`,
  };
}

function heardSo(reading: Reading): Heard {
  const some = pieces(reading).flatMap((each): Piece[] => {
    // "add 5 to the first"
    if (each.when && place.test(each.text)) return [{ text: each.text.replace(/^the /, "") }];
    // "shorten the syrup one to 10 min": the one of syrup, and no range
    if (
      each.text === "one" &&
      each.amount &&
      !/count=trays>? one/.test(reading.mask) &&
      oneTo.test(reading.mask)
    )
      return [{ text: "one" }];
    const ofTray = each.amount?.high !== undefined && trayTo.test(reading.mask);
    const [, tray, end] = ofTray ? (/^(\d+) to (.+)$/.exec(each.text) ?? []) : [];
    if (each.amount && tray && end) {
      const { high = 0, ...low } = each.amount;
      const number = { ...low, dim: "number" as const, unit: "", value: Number(tray), text: tray };
      return [{ text: tray, amount: number }, { text: "to" }, { text: end, amount: { ...low, value: high } }];
    }
    const range =
      each.amount?.high === undefined
        ? null
        : changesOne.exec(`${reading.mask.split(" one_to_")[0]} |${each.text}`);
    if (range && each.amount) {
      const { high = 0, ...low } = each.amount;
      return [{ text: "one" }, { text: "to" }, { text: range[1] ?? "", amount: { ...low, value: high } }];
    }
    // "the rest should be 20 min": a verb that was taken into what remains
    const verb = /^(?:the )?rest (should|is|be)$/.exec(each.text)?.[1];
    return verb && each.thing?.id === "remainder" ? [{ text: "the rest" }, { text: verb }] : [each];
  });
  return {
    some,
    mask: reading.mask
      // "a quarter of an hour": a length as any other
      .replaceAll("<time,fraction>", "<time>")
      .replace(trayTo, " $1 $2<number> to ")
      .trimStart()
      .replace(
        /(^| )((?:shorten|extend|stretch|lengthen|move|change|set|make|reset|push|turn|cut|bring|reduce|put) (?:the|my|that) \S+) one(?:<number>)?[_ ]to[_ ](?=\S*<(?:time|number))/,
        "$1$2 one to ",
      )
      .replace(/(^| )(?:the_)?(first|second|third|fourth|fifth|last)<when>/g, "$1$2")
      // "stick 3 back on", "drop 2", "cut 4 off": done to a timer, and no butter
      .replace(
        /(^| )(stick|drop|cut)<\S*> (?=(?:(?:another|the|those) )?\S*<(?:number|time)[^ ]*(?: (?:more|extra))?(?:$| back(?: |$)| on(?: (?:it|that|this))?$| off(?: |$)))/g,
        "$1$2 ",
      )
      .replace(/(^| )(?:the_)?rest_(should|is|be)<remainder>/g, "$1the rest $2"),
  };
}
