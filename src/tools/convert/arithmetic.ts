/**
 * Plain arithmetic through mathjs's parser, with everything else switched off. Only three kinds of node can be built
 * at all: numbers, brackets and operators; the constructors of all others refuse, so that a function, a name, a unit
 * or an assignment never gets as far as a tree. The tree is walked here; nothing typed is ever evaluated.
 */
import { createParse } from "mathjs/number";

export type Worked =
  | { ok: true; value: number }
  | { ok: false; why: "division by zero" | "too long" | "not arithmetic" };

/** A sum on a baker's bench is short; these stop what isn't one. */
const longest = 200;
const deepest = 40;
const highestPower = 100;

class Part {
  get isNode() {
    return true;
  }
}

class Constant extends Part {
  readonly isConstantNode = true;
  constructor(readonly value: unknown) {
    super();
  }
}

class Brackets extends Part {
  readonly isParenthesisNode = true;
  constructor(readonly content: unknown) {
    super();
  }
}

class Operator extends Part {
  readonly isOperatorNode = true;
  constructor(
    readonly op: string,
    readonly fn: string,
    readonly args: unknown[],
    readonly implicit = false,
  ) {
    super();
  }
}

class Refusal extends Error {
  constructor(readonly why: Extract<Worked, { ok: false }>["why"]) {
    super(why);
  }
}

class Refused {
  constructor() {
    throw new Refusal("not arithmetic");
  }
}

/** Kinds of node that the parser asks for and never gets. */
const switchedOff = [
  "AccessorNode",
  "ArrayNode",
  "AssignmentNode",
  "BlockNode",
  "ConditionalNode",
  "FunctionAssignmentNode",
  "FunctionNode",
  "IndexNode",
  "ObjectNode",
  "RangeNode",
  "RelationalNode",
  "SymbolNode",
];

let parser: ((expression: string) => unknown) | undefined;

/** Built when the first sum is asked for: a question about buttercream shouldn't pay for it. */
function parse(expression: string): unknown {
  parser ??= createParse({
    // The parser wants a dispatcher over argument types; it is only ever given text here.
    typed: Object.assign((_name: string, signatures: Record<string, unknown>) => signatures.string, {
      addConversion() {},
    }),
    numeric: (digits: string) => Number(digits),
    config: { number: "number", numberFallback: "number" },
    ConstantNode: Constant,
    ParenthesisNode: Brackets,
    OperatorNode: Operator,
    ...Object.fromEntries(switchedOff.map((name) => [name, Refused])),
  });
  return parser(expression);
}

const twoSided: Record<string, (a: number, b: number) => number> = {
  add: (a, b) => a + b,
  subtract: (a, b) => a - b,
  multiply: (a, b) => a * b,
  divide(a, b) {
    if (b === 0) throw new Refusal("division by zero");
    return a / b;
  },
  pow(a, b) {
    if (Math.abs(b) > highestPower) throw new Refusal("too long");
    if (a === 0 && b < 0) throw new Refusal("division by zero");
    return a ** b;
  },
};

const oneSided: Record<string, (a: number) => number> = { unaryMinus: (a) => -a, unaryPlus: (a) => a };

function walk(part: unknown, depth: number): number {
  if (depth > deepest) throw new Refusal("too long");
  if (part instanceof Constant && typeof part.value === "number") return part.value;
  if (part instanceof Brackets) return walk(part.content, depth + 1);
  if (!(part instanceof Operator) || part.implicit) throw new Refusal("not arithmetic");
  const [a, b] = part.args.map((each) => walk(each, depth + 1));
  const two = Object.hasOwn(twoSided, part.fn) ? twoSided[part.fn] : undefined;
  const one = Object.hasOwn(oneSided, part.fn) ? oneSided[part.fn] : undefined;
  if (two && a !== undefined && b !== undefined) return two(a, b);
  if (one && a !== undefined && b === undefined) return one(a);
  throw new Refusal("not arithmetic");
}

/**
 * Works a sum out: digits, decimal points, + - * / ^ and brackets, at most 200 characters.
 * @returns the value, or why there is none; never throws
 */
export function workOut(sum: string): Worked {
  if (sum.length > longest) return { ok: false, why: "too long" };
  if (!/^[\d.\s+\-*/^()]+$/.test(sum)) return { ok: false, why: "not arithmetic" };
  try {
    const value = walk(parse(sum), 0);
    return Number.isFinite(value) ? { ok: true, value } : { ok: false, why: "too long" };
  } catch (error) {
    return { ok: false, why: error instanceof Refusal ? error.why : "not arithmetic" };
  }
}
