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

/** What whitens shells or filling: no dose in the table, and not allowed everywhere. */
export const whitener =
  /\b(?:titanium (?:di)?oxide|ti ?o ?2|e ?171|(?:liquid |powder(?:ed)? |gel |food )*whiten(?:er|ers|ing)(?: (?:powder|liquid|gel|drops|agent))?)\b/;

export const whitenerRule =
  "titanium dioxide, which most of them hold, is no longer allowed as a food additive in the European Union (Regulation (EU) 2022/63)";

/** What colors food and is neither gel nor powder color: each has its own strength, or only lies on top. */
export const otherColorant =
  /\b(?:air ?brush (?:colou?rs?|dyes?|inks?|paints?)|(?:lust(?:er|re)|petal|pearl|disco|shimmer|sparkle|highlighter) (?:dusts?|powders?)|(?:edible |food )?glitter|oil[ -]?based (?:food )?(?:colou?rs?|colou?ring|dyes?)|cocoa butter colou?rs?|(?:cocoa butter|candy) (?:colou?ring|dyes?)|(?:edible |food )(?:paints?|inks?|pens?|markers?)|(?:beet(?:root)?|spirulina|butterfly pea|turmeric|spinach|activated charcoal|charcoal) powders?)\b/;
