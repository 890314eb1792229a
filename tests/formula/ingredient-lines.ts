/**
 * Ingredient lines in many ways of writing, each with its reading worked by hand, not by the parser.
 * Cups and spoons: USDA SR28, file WEIGHT (the row is named where it is used). Eggs by number: large, 33 g a white
 * (NDB 01124), 50 g an egg (01123), 17 g a yolk (01125). 1 oz = 28.349523125 g, 1 lb = 453.59237 g (NIST SP 811).
 */
export interface Worked {
  say: string;
  is: "weighed" | "unweighed" | "heading" | "unread";
  name?: string;
  /** What the recipe counts with; of a range the middle. */
  grams?: number;
  low_g?: number;
  high_g?: number;
  /** Two amounts that don't agree: it is said. */
  doubt?: true;
}

const w = (say: string, name: string, grams: number, more: Partial<Worked> = {}): Worked => ({
  say,
  is: "weighed",
  name,
  grams,
  ...more,
});
const range = (say: string, name: string, low_g: number, high_g: number): Worked =>
  w(say, name, (low_g + high_g) / 2, { low_g, high_g });
const none = (say: string, name: string): Worked => ({ say, is: "unweighed", name });
const heading = (say: string): Worked => ({ say, is: "heading" });
const unread = (say: string): Worked => ({ say, is: "unread" });

const oz = 28.349523125;
const lb = 453.59237;

export const lines: readonly Worked[] = [
  // amount first
  w("105 g egg whites", "whites", 105),
  w("130g almond flour", "almond flour", 130),
  w("130 grams of almond flour", "almond flour", 130),
  w("1 kg powdered sugar", "powdered sugar", 1000),
  w("0.5 kg butter", "butter", 500),
  w("500 mg citric acid", "citric acid", 0.5),
  w("95 gr. granulated sugar", "granulated sugar", 95),
  w("130 almond", "almond flour", 130),
  w("125 powdered sugar", "powdered sugar", 125),
  w("a kilo of icing sugar", "powdered sugar", 1000),
  w("half a kilo of sugar", "sugar", 500),
  w("two hundred grams of cream", "cream", 200),

  // amount last
  w("egg whites 105 g", "whites", 105),
  w("almond flour: 130 g", "almond flour", 130),
  w("almond flour - 130 g", "almond flour", 130),
  w("Almond flour ........ 130 g", "almond flour", 130),
  w("powdered sugar, 130 g", "powdered sugar", 130),
  w("Butter = 250g", "butter", 250),
  w("whites 105", "whites", 105),
  w("granulated sugar\t95 g", "granulated sugar", 95),
  w("cream (heavy) 160 g", "cream", 160),
  w("| sugar | 95 g |", "sugar", 95),

  // ranges: low and high are kept, the middle counts
  range("90-100 g granulated sugar", "granulated sugar", 90, 100),
  range("90 to 100 g sugar", "sugar", 90, 100),
  range("90–100g sugar", "sugar", 90, 100),
  range("between 3 and 5 g salt", "salt", 3, 5),
  range("sugar 90-100 g", "sugar", 90, 100),
  range("1.5-2 g cream of tartar", "cream of tartar", 1.5, 2),
  range("200 g - 250 g butter", "butter", 200, 250),
  range("1-2 tsp vanilla extract", "vanilla extract", 4.2, 8.4), // 02050 tsp 4.2
  range("3-4 egg whites", "whites", 99, 132),
  range("2 or 3 egg yolks", "egg yolk", 34, 51),

  // fractions
  w("½ tsp salt", "salt", 3), // 02047 tsp 6
  w("1/4 tsp cream of tartar", "cream of tartar", 0.75), // 18373 tsp 3
  w("1 1/2 cups powdered sugar", "powdered sugar", 180), // 19336 cup unsifted 120
  w("1½ cups sifted powdered sugar", "powdered sugar", 150), // 19336 cup sifted 100
  w("¾ cup granulated sugar", "granulated sugar", 150), // 19335 cup 200
  w("1/2 lb butter", "butter", lb / 2),
  w("2 1/4 oz white chocolate", "white chocolate", 2.25 * oz),
  w("1/2 stick unsalted butter", "butter", 56.5), // 01145 stick 113
  w("one and a half cups of almond flour", "almond flour", 142.5), // 12061 cup ground 95
  w("half a cup of cream", "cream", 119), // 01053 cup fluid 238

  // two units: grams win, the pair is checked
  w("4 oz / 113 g cream", "cream", 113), // 4 oz = 113.4
  w("113 g / 4 oz cream", "cream", 113),
  w("4 oz (113 g) dark chocolate", "dark chocolate", 113),
  w("dark chocolate, 113 g (4 oz)", "dark chocolate", 113),
  w("1 cup (120 g) powdered sugar", "powdered sugar", 120),
  w("1 cup / 200 g granulated sugar", "granulated sugar", 200),
  w("8 oz (227g) butter, softened", "butter", 227), // 226.8
  w("1 lb 2 oz (510 g) sugar", "sugar", 510), // 510.3
  w("3 egg whites (about 100 g)", "whites", 100), // 99
  w("105 g egg whites (about 3)", "whites", 105), // 3 are 99
  w("4 oz / 150 g cream", "cream", 150, { doubt: true }), // 113.4
  w("1 cup (300 g) powdered sugar", "powdered sugar", 300, { doubt: true }), // 120
  w("5 egg whites (100 g)", "whites", 100, { doubt: true }), // 165
  w("100 g = 3 1/2 oz milk chocolate", "milk chocolate", 100), // 99.2
  w("1 tbsp (15 ml) lemon juice", "lemon juice", 15.25), // 09152 cup 244 / 16

  // notes and brackets
  w("105 g egg whites (room temperature)", "whites", 105),
  w("105 g egg whites, aged overnight", "whites", 105),
  w("130 g almond flour, sifted", "almond flour", 130),
  w("130 g almond flour, finely ground and sifted twice", "almond flour", 130),
  w("250 g unsalted butter, softened, cubed", "butter", 250),
  w("200 g dark chocolate (60 %), chopped", "dark chocolate", 200),
  w("200 g dark chocolate, 70% cocoa", "dark chocolate", 200),
  w("100 g cream [cold]", "cream", 100),
  w("100 g sugar - for the syrup", "sugar", 100),
  w("60 g butter, at 20 °C", "butter", 60),
  w("130 g almond flour*", "almond flour", 130),
  w("about 95 g sugar", "sugar", 95),
  w("approx. 95 g sugar", "sugar", 95),
  w("~95 g sugar", "sugar", 95),
  w("90 g + 10 g sugar", "sugar", 100),
  w("2 g salt (optional)", "salt", 2),
  w("150 g sugar, plus extra for dusting", "sugar", 150),

  // counts
  w("3 egg whites", "whites", 99),
  w("3 large egg whites", "whites", 99),
  w("three whites", "whites", 99),
  w("2 eggs", "egg", 100),
  w("1 egg yolk", "egg yolk", 17),
  w("whites of 3 eggs", "whites", 99),
  w("egg whites x 3", "whites", 99),
  w("3 x egg white", "whites", 99),
  w("4 eggs, whites only", "whites", 132),
  w("egg whites from 4 large eggs", "whites", 132),

  // spoons and cups by the portion table
  w("1 tsp vanilla extract", "vanilla extract", 4.2),
  w("2 tbsp honey", "honey", 42), // 19296 tbsp 21
  w("1 cup almond flour", "almond flour", 95),
  w("2 Tbsp. cocoa powder", "cocoa powder", 10.8), // 19165 tbsp 5.4
  w("1 teaspoon baking soda", "baking soda", 4.6), // 18372 tsp 4.6
  w("1 cup packed brown sugar", "brown sugar", 220), // 19334 cup packed
  w("2 sticks butter", "butter", 226), // 01145 stick 113
  w("1 C granulated sugar", "granulated sugar", 200),
  w("4 fl oz heavy cream", "cream", 119.2), // 01053 fl oz 29.8
  w("1 level teaspoon instant coffee", "instant coffee", 1), // 14214 tsp 1

  // not weighed, and named so
  none("a pinch of salt", "salt"),
  none("pinch salt", "salt"),
  none("salt to taste", "salt"),
  none("2 drops gel food coloring", "gel food coloring"),
  none("powdered sugar, for dusting", "powdered sugar"),
  none("1 vanilla bean", "vanilla bean"),
  none("zest of 1 lemon", "lemon zest"),
  none("a few drops of lemon juice", "lemon juice"),
  none("a splash of rum", "rum"),
  none("food coloring as needed", "food coloring"),
  w("a pinch (1 g) of salt", "salt", 1),

  // decimal commas
  w("187,5 g crème", "cream", 187.5),
  w("0,5 kg Zucker", "sugar", 500),
  w("Eiweiss 105,5 g", "whites", 105.5),
  w("1,000 g powdered sugar", "powdered sugar", 1000),

  // bullets, numbering
  w("- 105 g egg whites", "whites", 105),
  w("• 130 g almond flour", "almond flour", 130),
  w("* 130 g powdered sugar", "powdered sugar", 130),
  w("1. 95 g granulated sugar", "granulated sugar", 95),
  w("2) 250 g butter", "butter", 250),
  w("[ ] 160 g cream", "cream", 160),
  w("☐ 4 g salt", "salt", 4),
  w("– 1.5 g cream of tartar", "cream of tartar", 1.5),

  // headings
  heading("For the shells:"),
  heading("Shells:"),
  heading("FILLING"),
  heading("## Ganache"),
  heading("For the buttercream"),
  heading("Ingredients (makes 24):"),

  // the name backwards, as on a shopping list
  w("sugar, powdered, 130 g", "powdered sugar", 130),
  w("Butter, unsalted 250 g", "butter", 250),
  w("chocolate, dark: 200 g", "dark chocolate", 200),

  // an ingredient that no table knows keeps its weight and its name
  w("8 g glimmer dust", "glimmer dust", 8),
  w("Glimmer dust 8 g", "glimmer dust", 8),
  w("10 g freeze-dried raspberry powder", "freeze dried raspberry powder", 10),

  // not understood, and named
  unread("almond flour"),
  unread("bake at 150 °C for 15 min"),
  unread("Whip the whites with the sugar to stiff peaks."),
  unread("see the other page"),
  unread("-50 g sugar"),
  unread("0 g sugar"),
  unread("3 butter"),
  unread("1 cup glimmer dust"),
  unread("serves 24"),
  unread("#!?"),
];
