/** Words around a question that ask nothing: help answers them alone, and they are taken off a turn that asks more. */

/** Heard. */
export const nodWords: readonly string[] =
  "ok okay okey oki k kk right alright good fine nice cool noted understood gotcha".split(" ");

/** Well done. */
export const praiseWords: readonly string[] =
  "great lovely perfect brilliant super superb awesome amazing excellent wonderful fab fabulous fantastic ace sweet neat grand splendid".split(
    " ",
  );

export const thanksWords: readonly string[] = "thanks thx thnx ta cheers merci danke gracias".split(" ");
