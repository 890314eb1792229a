/** Words typed without the space between them. */
import { heardPair } from "./heard.ts";
import { slipsBetween } from "./slip.ts";
import type { Vocabulary } from "./vocabulary.ts";

/** What a word could have been, and how many slips it would take. */
export interface Meant {
  words: readonly string[];
  slips: number;
}

/** A forgotten space is a slip like another; where nobody was heard to say the two words it takes more to believe. */
const slips = { heard: 1, unheard: 1.4 };

type Together = Pick<Vocabulary, "trade" | "targets" | "counts" | "measures">;

/** Every way to cut a word in two known ones. `glued`: behind a number, where the first may be a unit, "gof". */
export function togetherOf({ trade, targets, counts, measures }: Together) {
  const isTrade = (part: string) => part.length >= 3 && trade().has(part);
  return (word: string, glued: boolean): Meant[] => {
    const found: Meant[] = [];
    for (let cut = 1; cut < word.length - 1; cut++) {
      const [one, two] = [word.slice(0, cut), word.slice(cut)];
      if (cut === 1 && !glued) continue;
      const isHeard = heardPair(one, two) > 0 && (glued || (targets().has(one) && targets().has(two)));
      // "threetbsp", "threefifty"
      if (isHeard || (counts(one) && measures(two))) found.push({ words: [one, two], slips: slips.heard });
      else if (isTrade(one) && isTrade(two)) found.push({ words: [one, two], slips: slips.unheard });
    }
    return found;
  };
}

/** Small words that a finger runs into the next: "recipfor". */
const joining = new Set("for the and with much many from into".split(" "));

/** "lemnzest", "almonxflour": two words of the trade, or one and a small word, one of them with a slip. */
export function nearlyTogether({ named, targets, alike }: Vocabulary) {
  const whole = (part: string) => (part.length >= 4 && named(part)) || joining.has(part);
  const slipped = (part: string, other: string) => {
    const [best, next] = [...targets()]
      .filter((target) => target.length >= 4 && (named(target) || joining.has(other)))
      .flatMap((target) => {
        const cost = slipsBetween(part, target, 1);
        return cost === undefined ? [] : [{ target, cost }];
      })
      .sort((a, b) => a.cost - b.cost);
    const isSure = best && (!next || next.cost > best.cost + 0.3 || alike(best.target, next.target));
    return isSure ? best.target : undefined;
  };
  return (word: string): string[] | undefined => {
    for (let cut = word.length - 3; cut >= 3; cut--) {
      const [left, right] = [word.slice(0, cut), word.slice(cut)];
      const first = whole(right) ? slipped(left, right) : undefined;
      if (first) return [first, right];
      const second = whole(left) ? slipped(right, left) : undefined;
      if (second) return [left, second];
    }
    return undefined;
  };
}
