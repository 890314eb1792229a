/**
 * What a mix that was parted stands in, or what such a part is called: "one tub", "per jar", "the other dish". Patterns
 * over the text or the mask are made with them, so that all of them hear the same ones.
 */
export const vessel = "(?:bowl|tub|pot|jar|dish|portion|part|box|bag|container|ramekin|basin)";

/** Several of them; "tubs" may stand in a mask with what it is. */
export const vessels =
  "(?:bowls|tubs|pots|jars|dishes|portions|parts|boxes|bags|containers|ramekins|basins|batches)";
