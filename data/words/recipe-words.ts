/** Words of written recipes that say what a line is, where no amount does. */

/** Measures that no scale shows: what stands beside them is named as not weighed. */
export const unweighable =
  /\b(?:pinch(?:es)?|smidgens?|splash(?:es)?|squeezes?|knobs?|handfuls?|sprinkles?|sprinkling|touch|drops?|droplets?|dash(?:es)?|to taste|as needed|as required|as desired|if needed|for (?:dusting|rolling|sprinkling|greasing|decorat\w*|garnish\w*|the top|topping|brushing|coating|serving))\b/;

/** Things counted by the piece that no table weighs. */
export const byThePiece =
  /\b(?:beans?|pods?|leaf|leaves|sheets?|sprigs?|sachets?|packets?|tea ?bags?|slices?|capsules?)\b/;

/** A line that begins with one of these tells what to do; the ingredients have their own lines. */
export const methodVerbs = new Set(
  "add allow arrange bake beat blend boil bring carefully chill combine continue cook cool cover cut dissolve divide draw fill fit fold gently grind heat keep leave let line make mature melt mix pass pipe place pour preheat prepare process pulse put refrigerate remove repeat rest return roll scrape serve set sift simmer slowly soak sprinkle stir store strain tap then transfer turn use wait warm whip whisk".split(
    " ",
  ),
);

/** Titles of a recipe's parts, alone on their line. */
export const sections = new Set(
  "shells shell macarons macaron batter meringue filling fillings ganache buttercream syrup topping toppings decoration decorations ingredients method instructions directions steps notes recipe macaronage dry wet".split(
    " ",
  ),
);

/** Left out of an ingredient's own name where no table knows it. */
export const besideNames = new Set(
  "of the a an some about approx approximately around circa roughly ca my our each plus extra few good small big large tiny heaped level rounded scant generous medium optional more fresh or x approx".split(
    " ",
  ),
);

/** Beside "scale" and "double" they name no recipe of the baker's own: the house formula, or what was said before. */
export const houseWords: ReadonlySet<string> = new Set(
  `a an the my our your his her this that it its them they those these there here everything all of lot whole entire
  thing things stuff amount amounts weight weights quantity quantities ingredient ingredients recipe recipes formula
  formulas batch batches mix card sheet list house basic base standard usual normal regular original book books same full
  half shell shells macaron macarons mac macs batter macaronage coques egg eggs white whites large small big bigger smaller
  mini up down back out to for by with from on in at me us please now just only more less one ones another other first
  last second third previous rest french italian swiss default own above new old current mine ours classic plain simple
  today tonight tomorrow so many much and or but as well again too both each every any some enough size sized numbers
  measurements total version double triple single quarter times factor is are be come go do make made get got have has had
  number bowl tray trays box boxes almond flour sugar sugars powdered icing granulated caster grams gram dry wet part
  parts side bit i we you he she who what which when if then than until sure right left order orders filling fillings
  buttercream ganache cream butter piece pieces dozen pls plz instead rather thanks thank cheers though tho actually quick quickly exactly roughly about around nearly almost
  even really properly accordingly together alone time dbl portion portions strength party people guests friends kids`
    .split(/\s+/)
    .filter(Boolean),
);
