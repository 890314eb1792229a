/** General-purpose readers, each taught the same sentences, to hold the program's choice of calculator against. */
import { containerBootstrap } from "@nlpjs/core";
import { LangEn } from "@nlpjs/lang-en";
import { Nlp } from "@nlpjs/nlp";
import Bayes from "natural/lib/natural/classifiers/bayes_classifier.js";
import Logistic from "natural/lib/natural/classifiers/logistic_regression_classifier.js";
import porter from "natural/lib/natural/stemmers/porter_stemmer.js";
import TfIdf from "natural/lib/natural/tfidf/tfidf.js";
import type { Document } from "./documents.ts";

export interface Peer {
  name: string;
  /** The calculator it takes a sentence for, or undefined. */
  choose(asked: Pick<Document, "raw" | "masked">): Promise<string | undefined>;
}

type Sight = (doc: Pick<Document, "raw" | "masked">) => string[];

/** Two ways to look at a sentence: its stemmed words as typed, and what the program makes of it. */
const sights: Readonly<Record<string, Sight>> = {
  raw: ({ raw }) => (raw.toLowerCase().match(/[a-z]+|\d+|[%$€°?]/g) ?? []).map((word) => porter.stem(word)),
  masked: ({ masked }) => masked,
};

const joined = (words: readonly string[]) => words.map((word) => word.replace(/[^a-z0-9]+/gi, "x")).join(" ");

/** The features that stand in most sentences: the logistic classifier's time grows with their number. */
function commonest(lists: readonly string[][], most: number): Set<string> {
  const seen = new Map<string, number>();
  for (const word of lists.flatMap((list) => [...new Set(list)])) seen.set(word, (seen.get(word) ?? 0) + 1);
  return new Set(
    [...seen]
      .sort((a, b) => b[1] - a[1])
      .slice(0, most)
      .map(([word]) => word),
  );
}

function bayes(docs: readonly Document[], see: Sight) {
  const classifier = new Bayes();
  for (const doc of docs) classifier.addDocument(see(doc), doc.tool);
  classifier.train();
  return (asked: Pick<Document, "raw" | "masked">) => classifier.classify(see(asked));
}

function logistic(docs: readonly Document[], see: Sight, most: number) {
  const known = commonest(docs.map(see), most);
  const seen: Sight = (doc) => see(doc).filter((word) => known.has(word));
  const classifier = new Logistic();
  for (const doc of docs) {
    const features = seen(doc);
    if (features.length > 0) classifier.addDocument(features, doc.tool);
  }
  classifier.train();
  return (asked: Pick<Document, "raw" | "masked">) => classifier.classify(seen(asked));
}

/** The nearest sentence by the cosine of TF-IDF weights. */
function nearest(docs: readonly Document[], see: Sight) {
  const index = new TfIdf();
  index.setStopwords([]);
  for (const doc of docs) index.addDocument(see(doc));
  const idf = (word: string) => index.idf(word);
  const weighed = (words: readonly string[]) => new Map(words.map((word) => [word, idf(word)]));
  const length = (vector: Map<string, number>) =>
    Math.sqrt([...vector.values()].reduce((sum, each) => sum + each * each, 0));
  const known = docs.map((doc) => {
    const vector = weighed(see(doc));
    return { vector, length: length(vector), tool: doc.tool };
  });
  return (asked: Pick<Document, "raw" | "masked">) => {
    const vector = [...weighed(see(asked))];
    let best: { tool: string; near: number } | undefined;
    for (const each of known) {
      const shared = vector.reduce((sum, [word, by]) => sum + by * (each.vector.get(word) ?? 0), 0);
      const near = shared / (each.length || 1);
      if (near > (best?.near ?? 0)) best = { tool: each.tool, near };
    }
    return best?.tool;
  };
}

async function library(docs: readonly Document[], see: (doc: Pick<Document, "raw" | "masked">) => string) {
  const container = await containerBootstrap();
  container.use(Nlp);
  container.use(LangEn);
  const nlp = container.get("nlp");
  Object.assign(nlp.settings, { autoSave: false });
  nlp.addLanguage("en");
  for (const doc of docs) nlp.addDocument("en", see(doc), doc.tool);
  // it prints a line a round, whatever its settings say
  const { log } = console;
  console.log = () => {};
  await nlp.train().finally(() => {
    console.log = log;
  });
  return async (asked: Pick<Document, "raw" | "masked">) => {
    const { intent } = await nlp.process("en", see(asked));
    return intent === "None" ? undefined : intent;
  };
}

/** @param most features that the logistic classifier may have; 0 leaves it out, which saves minutes */
export async function peers(docs: readonly Document[], most: number): Promise<Peer[]> {
  const all: Peer[] = [];
  for (const [how, see] of Object.entries(sights)) {
    const add = (name: string, choose: (asked: Pick<Document, "raw" | "masked">) => unknown) =>
      all.push({
        name: `${name}, ${how}`,
        choose: async (asked) => (await choose(asked)) as string | undefined,
      });
    add("naive Bayes (natural)", bayes(docs, see));
    if (most > 0) add(`logistic regression (natural, ${most} features)`, logistic(docs, see, most));
    add("nearest phrase by TF-IDF (natural)", nearest(docs, see));
    add(
      "neural classifier (nlp.js)",
      await library(docs, how === "raw" ? ({ raw }) => raw : (doc) => joined(see(doc))),
    );
  }
  return all;
}
