declare module "natural/lib/natural/distance/levenshtein_distance.js" {
  interface Options {
    restricted?: boolean;
  }
  const distance: {
    LevenshteinDistance(a: string, b: string, options?: Options): number;
    DamerauLevenshteinDistance(a: string, b: string, options?: Options): number;
  };
  export default distance;
}

declare module "natural/lib/natural/stemmers/porter_stemmer.js" {
  const stemmer: { stem(word: string): string };
  export default stemmer;
}

declare module "underscore/modules/extend.js" {
  const extend: (...objects: object[]) => object;
  export default extend;
}

declare module "underscore/modules/min.js" {
  const min: <T>(list: readonly T[], by?: (item: T) => number) => T;
  export default min;
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
