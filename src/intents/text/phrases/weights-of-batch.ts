/**
 * "shells for 30 baked macarons, the weights": what is to be weighed out for so many, and not what they weigh once they
 * are baked.
 */
import type { Phrase } from "./phrase.ts";

const lead =
  "(?:(?:ok|okay|and|so|oh|now|also|please|can you|could you|give me|tell me|i need|i want|need|want|the|a|my),? )*";
const many = "(\\d+|a dozen|two dozen|three dozen|a hundred)";
const made = "(?:(?:baked|finished|filled|whole|complete|assembled) )";
const macarons = "(?:macarons?|macs|ones)";
const weights =
  "(?:(?:with|and|the|all|my|me|give|show|list|what are|whats|what's|individual|ingredient|recipe) )*(?:weights|ingredients|amounts|quantities|each weight|grams of each|weights of each|weight of each|weight of everything|what do i weigh(?: out)?)";
const end = "(?: (?:please|pls|too|for me|of everything|of each|of all))*[ .?!]*$";

export const weightsOfBatch = (): readonly Phrase[] => [
  {
    marks: [
      "shells for",
      "shells to make",
      "batter for",
      "batter to make",
      "mix for",
      "recipe for",
      "shell recipe",
    ],
    from: new RegExp(
      `^${lead}(?:shells?|batter|mix|shell mix|shell recipe|recipe) (?:for|to make) ${many} ${made}?${macarons},? ${weights}${end}`,
      "g",
    ),
    to: "the weights for $1 macarons",
  },
  {
    marks: ["baked", "finished", "assembled"],
    from: new RegExp(
      `^${lead}(?:weights|ingredients|amounts|quantities|what (?:do|should|must) i weigh(?: out)?) (?:for|to make|to get) ${many} ${made}${macarons}${end}`,
      "g",
    ),
    to: "the weights for $1 macarons",
  },
];
