/** What smells or colors and has no dose: no food at all, dangerous, or none of the rows. Only words; the rules are in data/rules/not-food.ts. */

/** Scents and colors that are sold for something else, by the word for it: "soap fragrance", "acrylic paint". */
export const notFood =
  /\b(?:(?:candle|soap|wax melt|diffuser|perfume|cosmetic|massage|bath bomb|aromatherapy|incense|potpourri)s? (?:making )?(?:scented |fragrance |essential )?(?:oils?|fragrances?|scents?|dyes?|colou?rs?|pigments?|micas?)|fragrance oils?|(?:acrylic|wall|craft|spray|poster|nail) (?:paints?|glitters?|polish|inks?|dyes?|colou?rs?)|(?:fabric|hair|clothes) (?:dyes?|colou?rs?))\b/;

/** Essential oils that are dangerous to swallow, even by the spoonful. From memory, of what poison centers warn of. */
export const poisonous =
  /\b(?:tea ?tree|wintergreen|eucalyptus|camphor|pennyroyal|sassafras|wormwood|thuja|rue)\b(?= (?:essential )?oil\b)/;

/** What whitens shells or filling: no dose in the table, and not allowed everywhere. */
export const whitener =
  /\b(?:titanium (?:di)?oxide|ti ?o ?2|e ?171|(?:liquid |powder(?:ed)? |gel |food )*whiten(?:er|ers|ing)(?: (?:powder|liquid|gel|drops|agent))?)\b/;

/** What colors food and is neither gel nor powder color: each has its own strength, or only lies on top. One list for both. */
export const otherColorants = `air ?brush (?:colou?rs?|dyes?|inks?|paints?)|(?:lust(?:er|re)|petal|pearl|disco|shimmer|sparkle|highlighter) (?:dusts?|powders?)|(?:edible |food )?glitter|oil[ -]?based (?:food )?(?:colou?rs?|colou?ring|dyes?)|cocoa butter colou?rs?|(?:cocoa butter|candy) (?:colou?ring|dyes?)|(?:edible |food )(?:paints?|inks?|pens?|markers?)|(?:beet(?:root)?|spirulina|butterfly pea|turmeric|spinach|activated charcoal|charcoal) powders?`;

export const otherColorant = new RegExp(String.raw`\b(?:${otherColorants})\b`);
