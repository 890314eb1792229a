/** Keeps the baker's recipes. What couldn't be read of one is named, never dropped. */
import type { Effect, Formula, Outcome, World } from "../contract/index.ts";
import { asking } from "../lib/asking.ts";
import { listed, plain } from "../lib/show.ts";
import { cautionsFor, collect, finished, left, wanted } from "./collect.ts";
import type { FormulaInputs } from "./formula.ts";
import { house } from "./house.ts";
import { kindOf } from "./kind.ts";
import { figuresOf, leavesOf, textOf } from "./lines.ts";

const isHouse = (name: string, world: World) =>
  world.bench.house_formula?.toLowerCase() === name.toLowerCase();
const named = (world: World, name: string | undefined): Formula | undefined =>
  world.formulas.findLast((each) => each.name.toLowerCase() === name?.toLowerCase());
const own = { text: "your own recipe, as you saved it", basis: "your bench" as const };

/** @throws never: an order that can't be carried out comes back as `asking` or `impossible`, with nothing changed. */
export function answerFormula(inputs: FormulaInputs, world: World): Outcome {
  switch (inputs.does) {
    case "save":
      return save(inputs, world);
    case "change":
      return change(inputs, world);
    case "change or scale":
      return changeOrScale(inputs);
    case "drop line":
      return dropLine(inputs, world);
    case "rename":
      return rename(inputs, world);
    case "forget":
      return forget(inputs, world);
    case "house":
    case "book house":
      return house(inputs, world);
    case "show": {
      // "show it to me", where there is only one
      const only = world.formulas.length === 1 ? world.formulas[0]?.name : undefined;
      const name = inputs.name ?? only;
      return name ? show(name, world) : list(world);
    }
    default:
      return list(world);
  }
}

/** Nothing in the record changes on a guess: it says how either is said. */
function changeOrScale({ name = "it", lines = [] }: FormulaInputs): Outcome {
  const [line] = lines;
  const said = line ? `${plain(line.grams)} g ${line.name}` : "that much";
  return {
    status: "impossible",
    headline: `For the weights of ${name} with ${said}, say "${name} with ${said}". To change the recipe itself, say "change ${line ? `the ${line.name}` : "a line"} in ${name} to ${line ? `${plain(line.grams)} g` : "its weight"}".`,
  };
}

/** A recipe of that name already there is replaced, and the answer says so. */
function save(inputs: FormulaInputs, world: World): Outcome {
  const { name, lines, unread = [], unweighed = [], doubts = [], taken = [] } = inputs;
  if (inputs.file) return wanted(inputs.file);
  if (!name) {
    const question = asking("What shall I call it?", "name");
    // "how many macarons is that", before it has a name
    return lines?.length ? { ...question, leaves: leavesOf(lines) } : question;
  }
  if (inputs.started && !inputs.collecting && !inputs.cancelled)
    return finished(inputs, named(world, name), world);
  if (inputs.collecting || inputs.cancelled) return collect(inputs, named(world, name), world);
  if (!lines?.length) return asking(`What is in ${name}? Each ingredient with its weight, please.`, "lines");
  const known = named(world, name);
  const kind = kindOf(lines);
  const entry = { name, ...(kind ? { kind } : {}), lines, ...(unweighed.length ? { unweighed } : {}) };
  const effect: Effect = known
    ? {
        do: "change",
        list: "formulas",
        id: known.id,
        patch: { ...entry, unweighed: unweighed.length ? unweighed : null },
      }
    : { do: "add", list: "formulas", entry };
  return {
    status: "answered",
    headline: `Saved ${name}: ${textOf(lines, world)}${left("not weighed", unweighed)}${left("not read", unread)}${known && !inputs.started ? "; it replaces what was saved before" : ""}`,
    figures: figuresOf(lines),
    rule: own,
    ...(taken.length ? { assumed: taken } : {}),
    ...cautionsFor(unread, unweighed, doubts),
    effects: [effect],
    change: `the recipe ${name}`,
    leaves: leavesOf(lines),
  };
}

function show(name: string, world: World): Outcome {
  const found = named(world, name);
  if (!found)
    return {
      status: "answered",
      headline: `No recipe is called ${name}${world.formulas.length ? `; there are ${listed(world.formulas.map((each) => each.name))}` : ""}`,
      items: [],
    };
  return {
    status: "answered",
    headline: `${found.name}: ${textOf(found.lines, world)}${left("not weighed", found.unweighed ?? [])}`,
    figures: figuresOf(found.lines),
    rule: own,
    items: [{ name: found.name, lines: found.lines.map((each) => `${each.name} ${plain(each.grams)} g`) }],
    leaves: leavesOf(found.lines),
  };
}

function list(world: World): Outcome {
  const items = world.formulas.map((each) => ({
    name: each.name,
    ...(each.kind ? { kind: each.kind } : {}),
    lines: each.lines.map((line) => `${line.name} ${plain(line.grams)} g`),
  }));
  return {
    status: "answered",
    headline: items.length
      ? `${plain(items.length)} ${items.length === 1 ? "recipe" : "recipes"}: ${listed(items.map((each) => each.name))}`
      : "No recipes are saved yet",
    items,
  };
}

/** Replaces a line's weight, or adds a line that wasn't there. */
function change({ name, lines }: FormulaInputs, world: World): Outcome {
  const found = named(world, name);
  if (!found) return { status: "impossible", headline: `No recipe is called ${name ?? "that"}.` };
  if (!lines?.length) return asking(`Which line of ${found.name}, and to how many grams?`, "lines");
  const known = (each: string) =>
    found.lines.find((line) => line.name === each) ??
    (each === "sugar" ? found.lines.find((line) => line.name === "granulated sugar") : undefined);
  const renamed = lines.map((each) => ({ ...each, name: known(each.name)?.name ?? each.name }));
  const next = [
    ...found.lines.map((line) => renamed.find((each) => each.name === line.name) ?? line),
    ...renamed.filter((each) => !found.lines.some((line) => line.name === each.name)),
  ];
  const said = renamed.map((each) => {
    const old = found.lines.find((line) => line.name === each.name);
    return old
      ? `${each.name} ${plain(old.grams)} → ${plain(each.grams)} g`
      : `${each.name} ${plain(each.grams)} g added`;
  });
  return edited(found, next, `${found.name}: ${listed(said)}`, world);
}

function dropLine({ name, line }: FormulaInputs, world: World): Outcome {
  const found = named(world, name);
  if (!found) return { status: "impossible", headline: `No recipe is called ${name ?? "that"}.` };
  if (!found.lines.some((each) => each.name === line))
    return { status: "impossible", headline: `There is no ${line ?? "such line"} in ${found.name}.` };
  const next = found.lines.filter((each) => each.name !== line);
  if (next.length === 0)
    return {
      status: "impossible",
      headline: `${line} is all there is in ${found.name}; forget the recipe instead.`,
    };
  return edited(found, next, `${found.name}: ${line} taken out`, world);
}

function edited(found: Formula, lines: Formula["lines"], headline: string, world: World): Outcome {
  const kind = kindOf(lines);
  return {
    status: "answered",
    headline: `${headline}. Now ${textOf(lines, world)}`,
    figures: figuresOf(lines),
    rule: own,
    effects: [{ do: "change", list: "formulas", id: found.id, patch: { lines, ...(kind ? { kind } : {}) } }],
    change: `the change to ${found.name}`,
    leaves: leavesOf(lines),
  };
}

function rename({ name, new_name }: FormulaInputs, world: World): Outcome {
  const found = named(world, name);
  if (!found) return { status: "impossible", headline: `No recipe is called ${name ?? "that"}.` };
  if (!new_name) return asking(`What shall ${found.name} be called?`, "new_name");
  if (named(world, new_name))
    return { status: "impossible", headline: `There is already a recipe called ${new_name}.` };
  return {
    status: "answered",
    headline: `${found.name} is now ${new_name}`,
    rule: own,
    effects: [
      { do: "change", list: "formulas", id: found.id, patch: { name: new_name } },
      ...(isHouse(found.name, world)
        ? [{ do: "set", setting: "house_formula", value: new_name } as const]
        : []),
    ],
    change: `the name of ${new_name}`,
  };
}

function forget({ name }: FormulaInputs, world: World): Outcome {
  if (!name) return asking("Which recipe?", "name");
  const found = named(world, name);
  if (!found) return { status: "impossible", headline: `There is no recipe called ${name} to forget.` };
  return {
    status: "answered",
    headline: `Forgotten: ${found.name}${isHouse(found.name, world) ? "; the book's house formula counts again" : ""}`,
    items: [{ name: found.name, lines: found.lines.map((each) => `${each.name} ${plain(each.grams)} g`) }],
    effects: [
      { do: "remove", list: "formulas", id: found.id },
      ...(isHouse(found.name, world) ? [{ do: "set", setting: "house_formula", value: null } as const] : []),
    ],
    change: `forgetting ${found.name}`,
  };
}
