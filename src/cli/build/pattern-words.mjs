// What a text must hold for a regular expression to have a chance in it.
import { RegExpParser } from "@eslint-community/regexpp";

const parser = new RegExpParser({ ecmaVersion: 2024 });

/** With more words to look for, looking costs more than it saves. */
const mostWords = 128;

/** And so with more lists; but a long pattern takes longer to compile than many searches do. */
const mostLists = (source) => Math.min(6, 2 + Math.floor(source.length / 250));
/** They are read at every start: the second and those behind it are to be short beside the pattern. */
const mostLetters = (source) => 60 + source.length / 4;

/** A text's ends, in what is read off a pattern: the text is searched with a space before and behind it. */
const [start, end] = ["\u0002", "\u0003"];

/** What is searched for the words. */
export const spacedOut = (text) => ` ${text} `;

/**
 * @returns lists of strings: any text that matches, spaced out, holds one at least of each list. None where there is no
 * such list, or only a long one. In small letters where the pattern takes large ones as well.
 */
export function wordsOf(source, flags = "") {
  if (/[^gisu]|i.*u|u.*i/.test(flags)) return [];
  const pattern = parser.parsePattern(source, 0, source.length, { unicode: flags.includes("u") });
  const all = bestOf(ofAlternatives(pattern.alternatives, false).needs, mostLists(source));
  const needs = all.filter(
    (_, at) =>
      at === 0 ||
      all
        .slice(0, at + 1)
        .flat()
        .join().length <= mostLetters(source),
  );
  if (!flags.includes("i")) return needs;
  return needs
    .filter((list) => list.every((text) => /^[ -~]*$/.test(text)))
    .map((list) => list.map((text) => text.toLowerCase()));
}

/**
 * `exact`: all that the piece can match, where that is a short list; `needs`: lists of strings, one of each is in its
 * match; `spaced`: what comes behind it has a space before it, if the piece itself had.
 */
const nothing = { exact: [""], needs: [], spaced: true };
const anything = { needs: [], spaced: false };

function ofAlternatives(alternatives, spaced) {
  const each = alternatives.map(({ elements }) => ofSequence(elements, spaced));
  if (each.length === 1) return each[0];
  const exact = each.every((one) => one.exact) ? each.flatMap((one) => one.exact) : undefined;
  const needs = each.map((one) => bestOf(one.needs, 1)[0] ?? telling(one.exact));
  return {
    exact: exact && exact.length <= mostWords ? exact : undefined,
    needs: needs.every(Boolean) ? listed(needs.flat()) : [],
    spaced: each.every((one) => one.spaced),
  };
}

function ofSequence(elements, spaced) {
  const needs = [];
  let run = [""];
  // what is before the run
  let before = spaced ? " " : "";
  let now = spaced;
  let isWhole = true;
  const held = (texts) => listed(texts.map((text) => before + text));
  for (const element of elements) {
    const of = ofElement(element, now);
    const { exact } = of;
    needs.push(...of.needs);
    if (of.ahead) needs.push(...held(product(run, of.ahead) ?? []));
    now = exact ? exact.every((text) => (text === "" ? now : endsSpaced(text))) : of.spaced && now;
    const longer = exact && product(run, exact);
    if (longer) {
      run = longer;
      continue;
    }
    needs.push(...held(run));
    const was = run.every((text) => endsSpaced(before + text));
    run = exact ?? [""];
    before = exact ? (was ? " " : "") : now ? " " : "";
    isWhole = false;
  }
  return { exact: isWhole ? run : undefined, needs: [...needs, ...held(run)], spaced: now };
}

const endsSpaced = (text) => text.endsWith(" ") || text.endsWith(start);

const product = (starts, ends) =>
  starts.length * ends.length <= mostWords
    ? starts.flatMap((one) => ends.map((other) => one + other))
    : undefined;

function ofElement(element, spaced) {
  switch (element.type) {
    case "Character":
      return { exact: [String.fromCodePoint(element.value)], needs: [] };
    case "Group":
    case "CapturingGroup":
      return element.modifiers ? anything : ofAlternatives(element.alternatives, spaced);
    case "Assertion":
      return ofAssertion(element, spaced);
    case "CharacterClass":
      return ofClass(element);
    case "Quantifier":
      return ofRepeated(element, spaced);
    default:
      return anything;
  }
}

/** Nothing is matched here, whatever it looks at. */
function ofAssertion({ kind, negate, alternatives }, spaced) {
  if (kind === "start") return { exact: [start], needs: [] };
  if (kind === "end") return { exact: [end], needs: [] };
  if (!/^look/.test(kind) || negate) return nothing;
  const seen = ofAlternatives(alternatives, kind === "lookahead" && spaced);
  return { ...nothing, needs: needsOf(seen), ...(kind === "lookahead" ? { ahead: seen.exact } : {}) };
}

function ofClass({ negate, elements }) {
  const letters = elements.map(({ type, value }) =>
    type === "Character" ? String.fromCodePoint(value) : "",
  );
  return negate || letters.length > 8 || letters.includes("") ? anything : { exact: letters, needs: [] };
}

/** "(?:so |and )*": behind it there is a space as before it. */
function ofRepeated({ min, max, element }, spaced) {
  const of = ofElement(element, spaced && max === 1);
  if (max === 1)
    return min === 1
      ? of
      : of.exact
        ? { exact: [...of.exact, ""], needs: [] }
        : { ...anything, spaced: of.spaced };
  const keeps = of.exact ? of.exact.every((text) => / $/.test(text)) : of.spaced;
  return { needs: min === 0 ? [] : needsOf(of), spaced: keeps };
}

const needsOf = ({ exact, needs }) => (needs.length > 0 ? needs : listed(exact));

/** A match that begins or ends where the text does holds nothing before or behind. */
const plain = (text) => {
  const from = text.lastIndexOf(start);
  const to = text.indexOf(end);
  return `${from < 0 ? "" : " "}${text.slice(from + 1, to < 0 ? undefined : to)}${to < 0 ? "" : " "}`;
};

/** A list worth looking for: short, and of no single letters; without those that hold another. */
function telling(list) {
  if (!list || list.length === 0) return undefined;
  const each = [...new Set(list.map(plain))];
  if (!each.every((text) => (text.length > 2 ? text.trim() !== "" : text.trim().length > 1)))
    return undefined;
  const shortest = each.filter((text) => !each.some((other) => other !== text && text.includes(other)));
  return shortest.length <= mostWords ? shortest : undefined;
}

const listed = (list) => {
  const told = telling(list);
  return told ? [told] : [];
};

/** Long strings are seldom there by chance, and one short one spoils a list. */
const seldom = (list) => Math.min(...list.map((text) => text.length)) - list.length / 16;

/** The lists that say most, the best first, without those that follow from another. */
function bestOf(lists, most) {
  const best = [];
  for (const list of [...lists].sort((one, other) => seldom(other) - seldom(one)))
    if (!best.some((other) => other.every((text) => list.some((each) => text.includes(each)))))
      best.push(list);
  return best.slice(0, most);
}
