// What a text must hold for a regular expression to have a chance in it.
import { RegExpParser } from "@eslint-community/regexpp";

const parser = new RegExpParser({ ecmaVersion: 2024 });

/** With more words to look for, looking costs more than it saves. */
const most = 128;

/**
 * @returns strings of which any text that matches holds one at least; undefined where there is no such list, or a long one
 */
export function wordsOf(source, flags = "") {
  if (/[^gsu]/.test(flags)) return undefined;
  const pattern = parser.parsePattern(source, 0, source.length, { unicode: flags.includes("u") });
  return ofAlternatives(pattern.alternatives).needs;
}

/** `exact`: all that the piece can match, where that is a short list; `needs`: strings of which one is in its match. */
const nothing = { exact: [""] };
const anything = {};

function ofAlternatives(alternatives) {
  const each = alternatives.map(({ elements }) => ofSequence(elements));
  const exact = each.every((one) => one.exact) ? each.flatMap((one) => one.exact) : undefined;
  const needs = each.map((one) => one.needs ?? telling(one.exact));
  return {
    exact: exact && exact.length <= most ? exact : undefined,
    needs: needs.every(Boolean) ? telling(needs.flat()) : undefined,
  };
}

function ofSequence(elements) {
  let needs;
  let run = [""];
  let isWhole = true;
  for (const element of elements) {
    const { exact, needs: own } = ofElement(element);
    needs = better(needs, own);
    if (exact && run.length * exact.length <= most) {
      run = run.flatMap((start) => exact.map((end) => start + end));
      continue;
    }
    needs = better(needs, telling(run));
    run = exact ?? [""];
    isWhole = false;
  }
  return { exact: isWhole ? run : undefined, needs: better(needs, telling(run)) };
}

function ofElement(element) {
  switch (element.type) {
    case "Character":
      return { exact: [String.fromCodePoint(element.value)] };
    case "Group":
    case "CapturingGroup":
      return element.modifiers ? anything : ofAlternatives(element.alternatives);
    case "Assertion":
      return /^look/.test(element.kind) && !element.negate
        ? { ...nothing, needs: ofAlternatives(element.alternatives).needs }
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
  return negate || letters.length > 8 || letters.includes("") ? anything : { exact: letters };
}

function ofRepeated({ min, max, element }) {
  const of = ofElement(element);
  if (min === 0) return max === 1 && of.exact ? { exact: [...of.exact, ""] } : anything;
  return max === 1 ? of : { needs: of.needs ?? telling(of.exact) };
}

/** A list worth looking for: short, and of no single letters; without those that hold another. */
function telling(list) {
  if (!list || list.length === 0 || !list.every((text) => text.trim().length > 1)) return undefined;
  const each = [...new Set(list)];
  const shortest = each.filter((text) => !each.some((other) => other !== text && text.includes(other)));
  return shortest.length <= most ? shortest : undefined;
}

/** Long strings are seldom there by chance, and one short one spoils a list. */
const seldom = (list) => Math.min(...list.map((text) => text.length)) - list.length / 16;
const better = (one, other) => (!one || (other && seldom(other) > seldom(one)) ? other : one);
