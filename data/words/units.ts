/**
 * Every unit that is understood, one row each: the words that mean it and what it comes to.
 * The same row generates what is recognised and what is converted, so the two can't drift.
 * `per` is how many of the kind's base unit one of it is: g, ml, mm, min.
 * Spellings match exactly or not at all: "kg" and "mg" are one slip apart. Misspellings stand here as words.
 */
export interface UnitRow {
  unit: string;
  dim: "weight" | "volume" | "length" | "time" | "temperature" | "percent" | "money";
  per: number;
  words: readonly string[];
  /** Words that also mean something else: they count only straight after a number, with no letter case to help. */
  risky?: readonly string[];
  source: string;
}

const NIST_811 = "NIST SP 811, B.8";
const NIST_44 = "NIST Handbook 44, appendix C";

export const units: readonly UnitRow[] = [
  {
    unit: "g",
    dim: "weight",
    per: 1,
    words: ["g", "gr", "gm", "gms", "grm", "grms", "gs", "gram", "grams", "gramm", "gramms", "gramme", "grammes", "garms", "grma", "gams", "graams"],
    source: "SI",
  },
  { unit: "mg", dim: "weight", per: 0.001, words: ["mg", "milligram", "milligrams", "milligramme", "milligrammes"], source: "SI" },
  { unit: "kg", dim: "weight", per: 1000, words: ["kg", "kgs", "kilo", "kilos", "kilogram", "kilograms", "kilogramme", "kilogrammes"], source: "SI" },
  { unit: "oz", dim: "weight", per: 28.349523125, words: ["oz", "ozs", "ounce", "ounces", "onces", "ounzes", "ouces"], source: NIST_811 },
  { unit: "lb", dim: "weight", per: 453.59237, words: ["lb", "lbs", "pound", "pounds", "pund", "punds"], source: NIST_811 },
  {
    unit: "ml",
    dim: "volume",
    per: 1,
    words: ["ml", "mls", "cc", "milliliter", "milliliters", "millilitre", "millilitres", "mil", "mils"],
    source: "SI",
  },
  { unit: "cl", dim: "volume", per: 10, words: ["cl", "centiliter", "centiliters", "centilitre", "centilitres"], source: "SI" },
  { unit: "dl", dim: "volume", per: 100, words: ["dl", "deciliter", "deciliters", "decilitre", "decilitres"], source: "SI" },
  { unit: "l", dim: "volume", per: 1000, words: ["l", "liter", "liters", "litre", "litres"], source: "SI" },
  {
    unit: "tsp",
    dim: "volume",
    per: 4.92892159375,
    words: ["tsp", "tsps", "teaspoon", "teaspoons", "teaspoonful", "teaspoonfuls", "teaspon", "teaspons", "teasoon", "teasoons", "teapoon", "teapoons", "tea spoon", "tea spoons"],
    source: NIST_44,
  },
  {
    unit: "tbsp",
    dim: "volume",
    per: 14.78676478125,
    words: ["tbsp", "tbsps", "tbs", "tbl", "tblsp", "tablespoon", "tablespoons", "tablespoonful", "tablespoonfuls", "tablespon", "tablespons", "tablespooon", "tablespooons", "tablepoon", "tablepoons", "table spoon", "table spoons"],
    source: NIST_44,
  },
  { unit: "fl oz", dim: "volume", per: 29.5735295625, words: ["fl oz", "floz", "fl ozs", "fl. oz", "fluid ounce", "fluid ounces", "fluid oz", "fl ounce", "fl ounces"], source: NIST_44 },
  { unit: "cup", dim: "volume", per: 236.5882365, words: ["cup", "cups", "cupful", "cupfuls", "cps"], risky: ["c"], source: NIST_44 },
  { unit: "stick", dim: "volume", per: 118.29411825, words: ["stick", "sticks"], source: "half a US cup, as butter is sold; common practice" },
  { unit: "pint", dim: "volume", per: 473.176473, words: ["pint", "pints"], source: NIST_44 },
  { unit: "quart", dim: "volume", per: 946.352946, words: ["quart", "quarts", "qt", "qts"], source: NIST_44 },
  { unit: "gallon", dim: "volume", per: 3785.411784, words: ["gallon", "gallons", "gal"], source: NIST_44 },
  { unit: "mm", dim: "length", per: 1, words: ["mm", "mms", "millimeter", "millimeters", "millimetre", "millimetres", "milimeter", "milimeters", "milimetres"], source: "SI" },
  { unit: "cm", dim: "length", per: 10, words: ["cm", "cms", "centimeter", "centimeters", "centimetre", "centimetres", "centimetr", "sentimeters", "centimeteres"], source: "SI" },
  { unit: "in", dim: "length", per: 25.4, words: ["inch", "inches", "inchs", "ins", "inche"], risky: ["in", '"'], source: NIST_811 },
  { unit: "s", dim: "time", per: 1 / 60, words: ["sec", "secs", "second", "seconds", "secounds", "secs."], risky: ["s"], source: "SI" },
  {
    unit: "min",
    dim: "time",
    per: 1,
    words: ["min", "mins", "minute", "minutes", "minuts", "minut", "mintues", "minits", "minuets", "miutes", "minues", "minuites", "mnts", "minutse", "mints.", "minuten", "minnutes", "mintes"],
    risky: ["m"],
    source: "SI",
  },
  { unit: "h", dim: "time", per: 60, words: ["h", "hr", "hrs", "hour", "hours", "huors", "hors", "houre", "hourse", "houres", "huor"], source: "SI" },
  { unit: "d", dim: "time", per: 1440, words: ["day", "days", "dayes"], risky: ["d"], source: "SI" },
  { unit: "week", dim: "time", per: 10080, words: ["week", "weeks", "wk", "wks"], source: "SI" },
  { unit: "month", dim: "time", per: 43829.1, words: ["month", "months", "mths"], source: "mean Gregorian month" },
  {
    unit: "°C",
    dim: "temperature",
    per: 1,
    words: ["°c", "° c", "degrees c", "degree c", "deg c", "celsius", "celcius", "celsuis", "celcuis", "centigrade", "degrees celsius", "degrees celcius", "degrees centigrade", "degc"],
    risky: ["c"],
    source: "SI",
  },
  {
    unit: "°F",
    dim: "temperature",
    per: 1,
    words: ["°f", "° f", "degrees f", "degree f", "deg f", "fahrenheit", "farenheit", "farenheight", "fahrenheight", "farenhite", "fahrenhiet", "ferenheit", "farhenheit", "fahr", "degrees fahrenheit", "degrees farenheit", "degf"],
    risky: ["f"],
    source: NIST_811,
  },
  { unit: "°", dim: "temperature", per: 1, words: ["°", "º", "degrees", "degree", "deg", "degs"], source: "scale not said" },
  {
    unit: "%",
    dim: "percent",
    per: 1,
    words: ["%", "percent", "per cent", "percents", "pct", "prcent", "pecent", "procent", "perecnt", "percnt", "precent"],
    source: "arithmetic",
  },
  { unit: "USD", dim: "money", per: 1, words: ["$", "usd", "dollar", "dollars", "bucks", "us$"], source: "ISO 4217" },
  { unit: "USD cent", dim: "money", per: 0.01, words: ["cents"], risky: ["¢"], source: "ISO 4217" },
  { unit: "EUR", dim: "money", per: 1, words: ["€", "eur", "euro", "euros"], source: "ISO 4217" },
  { unit: "GBP", dim: "money", per: 1, words: ["£", "gbp", "quid", "pounds sterling"], source: "ISO 4217" },
  { unit: "CAD", dim: "money", per: 1, words: ["cad", "canadian dollars"], source: "ISO 4217" },
  { unit: "AUD", dim: "money", per: 1, words: ["aud", "australian dollars"], source: "ISO 4217" },
  { unit: "CHF", dim: "money", per: 1, words: ["chf", "francs", "swiss francs"], source: "ISO 4217" },
];
