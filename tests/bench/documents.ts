/** What the readers beside the program learn from and are asked: the same sentences, raw and masked, with their calculator. */
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { featuresOf } from "../../src/intents/chosen/features.ts";
import { questions } from "../../src/intents/converse.ts";
import type { Understanding } from "../../src/intents/understanding.ts";
import type { Conversation, Expected } from "../support/judge.ts";

export interface Document {
  raw: string;
  /** The features that the program's own classifier sees. */
  masked: string[];
  tool: string;
}

export const conversationsIn = (file: string): Conversation[] =>
  readFileSync(file, "utf8")
    .split("\n")
    .filter(Boolean)
    .map((line) => JSON.parse(line) as Conversation);

export const filesOf = (folder: string): string[] =>
  readdirSync(folder)
    .filter((name) => name.endsWith(".jsonl"))
    .sort()
    .map((name) => join(folder, name));

/** The calculators that an expectation allows; what is to be declined is help's. */
export const wantedTools = (expected: Expected | undefined): string[] =>
  expected?.tool?.split("|") ?? (expected?.status === "declined" ? ["help"] : []);

/**
 * Phrases of the calculators and turns of conversations that ask one thing.
 * @param files of learned conversations
 */
export function documents(files: readonly string[], all: Understanding): Document[] {
  const docs: Document[] = [];
  const add = (raw: string, tool: string, last?: string) => {
    const [reading, ...more] = questions(raw, all);
    if (reading && more.length === 0) docs.push({ raw, masked: featuresOf(reading.mask, last), tool });
  };
  for (const tool of all.tools) {
    for (const { say } of tool.examples) add(say, tool.name);
    for (const { say, tool: other } of tool.elsewhere) add(say, other);
  }
  for (const conversation of files.flatMap(conversationsIn)) {
    let last: string | undefined;
    for (const { say, expect } of conversation.turns) {
      const [tool] = wantedTools(expect?.[0]);
      if (tool && expect?.length === 1) add(say, tool, last);
      last = wantedTools(expect?.at(-1))[0] ?? last;
    }
  }
  return docs;
}
