/** One value, all the ways to say it, and what is no number though it looks like one. */
import { describe, expect, it } from "vitest";
import { wholeNumber } from "./reading.ts";

const said: Readonly<Record<string, readonly string[]>> = {
  "0": ["0", "zero", "0.0"],
  "0.125": ["1/8", "⅛", "0.125", "0,125", "one eighth", "an eighth"],
  "0.25": ["1/4", "¼", ".25", "a quarter", "one quarter", "quarter", "one fourth", "a fourth"],
  "0.333333333333": ["1/3", "⅓", "a third", "one third"],
  "0.5": ["1/2", "½", "half", "a half", "0.5", "0,5", ".5", "one half", "zero point five"],
  "0.666666666667": ["2/3", "⅔", "two thirds"],
  "0.75": ["3/4", "¾", "three quarters", "0.75", "0,75", "three fourths"],
  "1.25": ["1 1/4", "1¼", "1 ¼", "one and a quarter", "1 and a quarter", "1.25", "1,25"],
  "1.5": [
    "1½",
    "1 ½",
    "1 1/2",
    "1 and 1/2",
    "one and a half",
    "one and half",
    "1 and a half",
    "1.5",
    "1,5",
    "one point five",
    "3/2",
  ],
  "2.75": ["2¾", "2 3/4", "two and three quarters", "2 and three quarters"],
  "3.8": ["3.8", "3,8", "three point eight"],
  "6": ["6", "six", "half a dozen", "half dozen", "a half dozen"],
  "12": ["12", "twelve", "a dozen", "dozen", "1 dozen", "one dozen"],
  "13": ["13", "thirteen"],
  "24": ["24", "twenty four", "twenty-four", "twentyfour", "two dozen", "2 dozen", "a couple dozen"],
  "30": ["30", "thirty"],
  "40": ["40", "forty", "fourty"],
  "85": ["85", "eighty five", "eighty-five"],
  "100": ["100", "a hundred", "one hundred", "hundred"],
  "120": ["120", "a hundred and twenty", "one hundred twenty", "one twenty", "one hundred and twenty"],
  "150": ["150", "a hundred and fifty", "one fifty", "hundred and fifty"],
  "215": ["215", "two fifteen", "two hundred and fifteen", "two hundred fifteen"],
  "230": ["230", "two thirty", "two hundred thirty", "two hundred and thirty", "230.0"],
  "325": [
    "325",
    "three twenty five",
    "three hundred twenty-five",
    "three hundred and twenty five",
    "three twenty-five",
  ],
  "1000": ["1000", "1,000", "a thousand", "one thousand", "ten hundred"],
  "1200": ["1200", "1,200", "twelve hundred", "one thousand two hundred", "a thousand two hundred"],
  "2500": ["2500", "2,500", "two and a half thousand", "two thousand five hundred", "2.5 thousand"],
  "18": [
    "18",
    "eighteen",
    "one and a half dozen",
    "1 1/2 dozen",
    "1½ dozen",
    "a dozen and a half",
    "1.5 dozen",
  ],
  "10000": ["10000", "10,000", "10 000", "10'000", "ten thousand"],
  "1250000": ["1,250,000", "1.250.000", "1'250'000"],
  "-18": ["-18", "minus 18", "minus eighteen", "negative 18", "−18"],
  "-50": ["-50", "minus 50", "minus fifty"],
};

describe.each(Object.entries(said))("%s", (value, ways) => {
  it.each(ways)('is said as "%s"', (way) => {
    expect(wholeNumber(way)).toBe(Number(value));
  });
});

describe("no number", () => {
  it.each([
    "for",
    "to",
    "too",
    "won",
    "ate",
    "tend",
    "often",
    "none",
    "tenth of",
    "a",
    "an",
    "and",
    "quarterly",
    "dozing",
    "sixpence",
    "seventyish",
    "weight",
    "eights",
    "halve",
    "few dozen",
    "5.5.5",
    "14.3.2026",
    "once",
    "-",
    "/",
    "%",
    "",
  ])('"%s"', (word) => {
    expect(wholeNumber(word)).toBeUndefined();
  });

  it("divides by nothing never", () => {
    expect(wholeNumber("1/0")).toBeUndefined();
  });

  it("takes no decimal for part of a fraction", () => {
    expect(wholeNumber("1.5/2")).toBeUndefined();
  });

  it("keeps the thirteen apart from the thirty, the fifteen from the fifty", () => {
    for (const [one, other] of [
      ["thirteen", "thirty"],
      ["fifteen", "fifty"],
      ["sixteen", "sixty"],
      ["ninteen", "ninety"],
    ])
      expect(wholeNumber(one ?? "")).not.toBe(wholeNumber(other ?? ""));
  });
});
