// How a long regular expression begins. It is asked first: most that could match by their words fail in the first ones.
import { RegExpParser, RegExpValidator } from "@eslint-community/regexpp";

const parser = new RegExpParser({ ecmaVersion: 2024 });

/** A shorter pattern compiles as fast as its head would. */
const longEnough = 300;
/** And so does one that its head is most of. */
const most = 0.6;
/** A group that is shorter is taken whole. */
const shortGroup = 60;

/** @returns a pattern that is found in whatever the whole one is found in; undefined where it wouldn't be worth it */
export function headOf(source, flags = "") {
  if (source.length < longEnough || /[^gisu]/.test(flags)) return undefined;
  const pattern = parser.parsePattern(source, 0, source.length, { unicode: flags.includes("u") });
  if (refersBack(source, flags)) return undefined;
  const head = ofAlternatives(pattern.alternatives);
  return head.length <= source.length * most ? head : undefined;
}

function refersBack(source, flags) {
  let does = false;
  const validator = new RegExpValidator({ ecmaVersion: 2024, onBackreference: () => (does = true) });
  validator.validatePattern(source, 0, source.length, { unicode: flags.includes("u") });
  return does;
}

const ofAlternatives = (alternatives) => alternatives.map(({ elements }) => ofSequence(elements)).join("|");

const looks = /\(\?<?[=!]/;

/** Up to the end of its first word. */
function ofSequence(elements) {
  let head = "";
  for (const element of elements) {
    const cut = cutShort(element);
    if (cut !== undefined) return head + cut;
    // "^(?!.*how)(?:so |and |...)*": what it looks at first tells enough
    if (looks.test(head) && element.type === "Quantifier" && element.raw.length > shortGroup) return head;
    head += element.raw;
    if (element.type === "Character" && element.raw === " ") break;
  }
  return head;
}

/** How a long group begins, if it has to be there. */
function cutShort(element) {
  if (element.raw.length <= shortGroup) return undefined;
  if (element.type === "Quantifier") return element.min > 0 ? cutShort(element.element) : undefined;
  const isGroup = element.type === "Group" || element.type === "CapturingGroup";
  return isGroup && !element.modifiers ? `(?:${ofAlternatives(element.alternatives)})` : undefined;
}
