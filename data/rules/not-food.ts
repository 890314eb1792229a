/** What smells or colors but gets no dose: why, and who has the last word. Its words are in data/words/not-food.ts. */
import type { Rule } from "../../src/tools/contract/answer.ts";

export const notFoodRules = {
  food: {
    text: "only what its label calls a food flavor, food color or food grade goes into food",
    basis: "common practice",
  },
  essential: {
    text: "An essential oil sold for scent is no food: use only one whose label says food grade or flavoring, and keep to its own dose.",
    basis: "common practice",
  },
  whitener: {
    text: "titanium dioxide, which most of them hold, is no longer allowed as a food additive in the European Union (Regulation (EU) 2022/63)",
    basis: "published",
    source: "Regulation (EU) 2022/63",
  },
} as const satisfies Record<string, Rule>;
