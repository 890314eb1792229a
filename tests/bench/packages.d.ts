declare module "@nlpjs/core" {
  export interface Nlp {
    settings: Record<string, unknown>;
    addLanguage(language: string): void;
    addDocument(language: string, text: string, label: string): void;
    train(): Promise<void>;
    process(language: string, text: string): Promise<{ intent: string; score: number }>;
  }
  export function containerBootstrap(): Promise<{ use(part: unknown): void; get(name: "nlp"): Nlp }>;
}

declare module "@nlpjs/nlp" {
  export const Nlp: unknown;
}

declare module "@nlpjs/lang-en" {
  export const LangEn: unknown;
}

declare module "natural/lib/natural/classifiers/bayes_classifier.js" {
  export default class Bayes {
    addDocument(features: string[], label: string): void;
    train(): void;
    classify(features: string[]): string;
  }
}

declare module "natural/lib/natural/tfidf/tfidf.js" {
  export default class TfIdf {
    setStopwords(words: string[]): void;
    addDocument(words: string[]): void;
    idf(word: string): number;
  }
}
