declare module "natural/lib/natural/stemmers/porter_stemmer.js" {
  const stemmer: { stem(word: string): string };
  export default stemmer;
}

declare module "natural/lib/natural/classifiers/logistic_regression_classifier.js" {
  export default class Logistic {
    addDocument(features: string[], label: string): void;
    train(): void;
    classify(features: string[]): string;
    features: Record<string, number>;
    classifier: { classifications: string[]; theta: { elements: number[] }[] };
  }
}
