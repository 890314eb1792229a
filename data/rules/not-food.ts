/** What smells or colors but is no food: no dose is given for it, whatever the bowl. */

/** Scents and colors that are sold for something else, by the word for it: "soap fragrance", "acrylic paint". */
export const notFood =
  /\b(?:(?:candle|soap|wax melt|diffuser|perfume|cosmetic|massage|bath bomb|aromatherapy|incense|potpourri)s? (?:making )?(?:scented |fragrance |essential )?(?:oils?|fragrances?|scents?|dyes?|colou?rs?|pigments?|micas?)|fragrance oils?|(?:acrylic|wall|craft|spray|poster|nail) (?:paints?|glitters?|polish|inks?|dyes?|colou?rs?)|(?:fabric|hair|clothes) (?:dyes?|colou?rs?))\b/;

/** Essential oils that are dangerous to swallow, even by the spoonful. From memory, of poison centers' warnings. */
export const poisonous =
  /\b(?:tea ?tree|wintergreen|eucalyptus|camphor|pennyroyal|sassafras|wormwood|thuja|rue)\b(?= (?:essential )?oil\b)/;

export const notFoodRule = "only what its label calls a food flavor, food color or food grade goes into food";

export const essentialCaution =
  "An essential oil sold for scent is no food: use only one whose label says food grade or flavoring, and keep to its own dose.";
