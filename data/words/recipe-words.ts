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
