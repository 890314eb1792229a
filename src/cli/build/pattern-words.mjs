// What a text must hold for a regular expression to have a chance in it.
import { RegExpParser } from "@eslint-community/regexpp";

const parser = new RegExpParser({ ecmaVersion: 2024 });

/** With more words to look for, looking costs more than it saves; and so with more lists. */
const most = { words: 128, lists: 2 };

/**
 * @returns lists of strings: any text that matches holds one at least of each list. None where there is no such list, or
 * only a long one. In small letters where the pattern takes large ones as well.
 */
export function wordsOf(source, flags = "") {
  if (/[^gisu]|i.*u|u.*i/.test(flags)) return [];
  const pattern = parser.parsePattern(source, 0, source.length, { unicode: flags.includes("u") });
  const needs = bestOf(ofAlternatives(pattern.alternatives).needs);
  if (!flags.includes("i")) return needs;
  return needs
    .filter((list) => list.every((text) => /^[ -~]*$/.test(text)))
    .map((list) => list.map((text) => text.toLowerCase()));
}

/** `exact`: all that the piece can match, where that is a short list; `needs`: lists of strings, one of each is in its match. */
const nothing = { exact: [""], needs: [] };
const anything = { needs: [] };

function ofAlternatives(alternatives) {
  const each = alternatives.map(({ elements }) => ofSequence(elements));
  if (each.length === 1) return each[0];
  const exact = each.every((one) => one.exact) ? each.flatMap((one) => one.exact) : undefined;
  const needs = each.map((one) => bestOf(one.needs)[0] ?? telling(one.exact));
  return {
    exact: exact && exact.length <= most.words ? exact : undefined,
    needs: needs.every(Boolean) ? listed(needs.flat()) : [],
  };
}

function ofSequence(elements) {
  const needs = [];
  let run = [""];
  let isWhole = true;
  for (const element of elements) {
    const { exact, needs: own } = ofElement(element);
    needs.push(...own);
    if (exact && run.length * exact.length <= most.words) {
      run = run.flatMap((start) => exact.map((end) => start + end));
      continue;
    }
    needs.push(...listed(run));
    run = exact ?? [""];
    isWhole = false;
  }
  return { exact: isWhole ? run : undefined, needs: [...needs, ...listed(run)] };
}

function ofElement(element) {
  switch (element.type) {
    case "Character":
      return { exact: [String.fromCodePoint(element.value)], needs: [] };
    case "Group":
    case "CapturingGroup":
      return element.modifiers ? anything : ofAlternatives(element.alternatives);
    case "Assertion":
      return /^look/.test(element.kind) && !element.negate
        ? { ...nothing, needs: needsOf(ofAlternatives(element.alternatives)) }
        : nothing;
    case "CharacterClass":
      return ofClass(element);
    case "Quantifier":
      return ofRepeated(element);
    default:
      return anything;
  }
}

function ofClass({ negate, elements }) {
  const letters = elements.map(({ type, value }) =>
    type === "Character" ? String.fromCodePoint(value) : "",
  );
  return negate || letters.length > 8 || letters.includes("") ? anything : { exact: letters, needs: [] };
}

function ofRepeated({ min, max, element }) {
  const of = ofElement(element);
  if (min === 0) return max === 1 && of.exact ? { exact: [...of.exact, ""], needs: [] } : anything;
  return max === 1 ? of : { needs: needsOf(of) };
}

const needsOf = ({ exact, needs }) => (needs.length > 0 ? needs : listed(exact));

/** A list worth looking for: short, and of no single letters; without those that hold another. */
function telling(list) {
  if (!list || list.length === 0 || !list.every((text) => text.trim().length > 1)) return undefined;
  const each = [...new Set(list)];
  const shortest = each.filter((text) => !each.some((other) => other !== text && text.includes(other)));
  return shortest.length <= most.words ? shortest : undefined;
}

const listed = (list) => {
  const told = telling(list);
  return told ? [told] : [];
};

/** Long strings are seldom there by chance, and one short one spoils a list. */
const seldom = (list) => Math.min(...list.map((text) => text.length)) - list.length / 16;

/** The lists that say most, the best first, without those that follow from another. */
function bestOf(lists) {
  const best = [];
  for (const list of [...lists].sort((one, other) => seldom(other) - seldom(one)))
    if (!best.some((other) => other.every((text) => list.some((each) => text.includes(each)))))
      best.push(list);
  return best.slice(0, most.lists);
}
