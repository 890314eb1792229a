/** Number words. A misspelt one is mended only from five letters on and only by one slip. */
export const smallNumbers: Readonly<Record<string, number>> = {
  zero: 0,
  nil: 0,
  one: 1,
  two: 2,
  three: 3,
  four: 4,
  five: 5,
  six: 6,
  seven: 7,
  eight: 8,
  nine: 9,
  ten: 10,
  eleven: 11,
  twelve: 12,
  thirteen: 13,
  fourteen: 14,
  fifteen: 15,
  sixteen: 16,
  seventeen: 17,
  eighteen: 18,
  nineteen: 19,
};

export const tens: Readonly<Record<string, number>> = {
  twenty: 20,
  thirty: 30,
  forty: 40,
  fourty: 40,
  fifty: 50,
  sixty: 60,
  seventy: 70,
  eighty: 80,
  ninety: 90,
};

export const magnitudes: Readonly<Record<string, number>> = { hundred: 100, thousand: 1000 };

/** Parts of one: "a third", "two thirds", "three quarters". */
export const partWords: Readonly<Record<string, number>> = {
  half: 2,
  halves: 2,
  haf: 2,
  hlaf: 2,
  third: 3,
  thirds: 3,
  quarter: 4,
  quarters: 4,
  qaurter: 4,
  qarter: 4,
  fourth: 4,
  fourths: 4,
  fifth: 5,
  fifths: 5,
  sixth: 6,
  sixths: 6,
  eighth: 8,
  eighths: 8,
  tenth: 10,
  tenths: 10,
};

/** Words for a number of things: "two dozen macarons". */
export const groupWords: Readonly<Record<string, number>> = { dozen: 12, dozens: 12, doz: 12, score: 20 };

/** Factors said as one word: "double it". */
export const factorWords: Readonly<Record<string, number>> = {
  double: 2,
  doubled: 2,
  doubling: 2,
  twice: 2,
  triple: 3,
  tripled: 3,
  treble: 3,
  thrice: 3,
  quadruple: 4,
  halve: 0.5,
  halved: 0.5,
  halving: 0.5,
  halv: 0.5,
};

export const ordinals: Readonly<Record<string, number>> = {
  first: 1,
  second: 2,
  third: 3,
  fourth: 4,
  fifth: 5,
  sixth: 6,
  seventh: 7,
  eighth: 8,
  ninth: 9,
  tenth: 10,
  eleventh: 11,
  twelfth: 12,
  thirteenth: 13,
  fourteenth: 14,
  fifteenth: 15,
  sixteenth: 16,
  seventeenth: 17,
  eighteenth: 18,
  nineteenth: 19,
  twentieth: 20,
  thirtieth: 30,
};

/** Unicode's ready-made fractions, spelt out before anything else: NFKC would glue "1½" into eleven halves. */
export const fractionSigns: Readonly<Record<string, string>> = {
  "¼": "1/4",
  "½": "1/2",
  "¾": "3/4",
  "⅐": "1/7",
  "⅑": "1/9",
  "⅒": "1/10",
  "⅓": "1/3",
  "⅔": "2/3",
  "⅕": "1/5",
  "⅖": "2/5",
  "⅗": "3/5",
  "⅘": "4/5",
  "⅙": "1/6",
  "⅚": "5/6",
  "⅛": "1/8",
  "⅜": "3/8",
  "⅝": "5/8",
  "⅞": "7/8",
};
