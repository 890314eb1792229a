/** Where macarons lie without a fridge: what is told of such a place counts as time out of the cold. */
export const warmPlaces =
  "table|tables|tabletop|counter|countertop|counters|worktop|buffet|sideboard|side|desk|stall|porch|patio|terrace|balcony|garden|lawn|sun|sunshine|heat|car|van|boot|trunk|bag|handbag|rucksack|backpack|office|kitchen|tent|marquee|market|fair|fete|picnic|party|wedding|reception|church|hall|windowsill|window sill|trolley|display|stand|platter|tower|bar|show";
