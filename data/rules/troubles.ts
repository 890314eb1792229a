/**
 * What goes wrong and what to change, a row a symptom: causes in the order in which they are worth trying.
 * Everything here is from memory: a baker's working knowledge without a source. Numbers that other rules hold
 * (rest 30-60 min, 150 °C, 12-18 min, 71 °C, 24-48 h) are used with their values there.
 */
import type { Basis, Figure } from "../../src/tools/contract/answer.ts";

export interface Cause {
  cause: string;
  /** How to tell that it was this one. */
  check: string;
  /** What to do differently, with its number where there is one. */
  change: string;
  figure?: Figure;
  /** The change is so many °C off the oven's heat: off the one that was told, or else off the book's. */
  cooler?: { by_c: number; rest: string };
}

export interface TroubleRow {
  /** The id of data/words/symptoms.ts; notes keep the same one. */
  id: string;
  /** How the answer opens: "No feet". */
  title: string;
  causes: readonly Cause[];
  /** What can still be done with what is in the bowl or on the tray. */
  now?: string;
  caution?: string;
}

export const troubleBasis: Basis = "from memory";

const range = (name: string, low: number, high: number, unit: string): Figure => ({ name, low, high, unit });
const value = (name: string, at: number, unit: string): Figure => ({ name, value: at, unit });

const rest = range("rest", 30, 60, "min");
/** The heat that the book bakes at, which is measured in the oven. */
export const bookOven_c = 150;
const oven = value("oven", bookOven_c, "°C");

/**
 * A cooler oven in words and in figures.
 * @param oven_c the heat that it is less than
 * @param rest what to do besides: ", one tray at a time"
 */
export const coolerOven = (by_c: number, rest: string, oven_c = bookOven_c) => ({
  change: `${by_c} °C less (${Math.round(oven_c - by_c)} °C)${rest}`,
  figure: value("oven", Math.round(oven_c - by_c), "°C"),
  cooler: { by_c, rest },
});
const bake = range("bake", 12, 18, "min");

export const troubles: readonly TroubleRow[] = [
  {
    id: "no skin",
    title: "No skin",
    causes: [
      {
        cause: "the air is damp",
        check: "a wet day, or something boils beside the trays",
        change: "leave them up to 60 min in a drier room or before a fan, until a finger comes away dry",
        figure: rest,
      },
      {
        cause: "the batter was folded too far",
        check: "a ribbon vanished in under 10 s and the rounds grew",
        change: "stop when a ribbon sinks back in 10-15 s",
        figure: range("ribbon", 10, 15, "s"),
      },
      {
        cause: "too much gel color, or a liquid one",
        check: "the plain bowl dries and the colored one doesn't",
        change: "gel color at most 1.5 % of the batter",
        figure: range("gel color", 0.5, 1.5, "%"),
      },
    ],
    now: "Shells that stay tacky past 60 min won't get drier: bake one tray and see.",
  },
  {
    id: "no feet",
    title: "No feet",
    causes: [
      {
        cause: "the shells went in without a skin",
        check: "a fingertip drags on the top before baking",
        change: "rest 30-60 min, until a finger comes away dry; longer on a damp day",
        figure: rest,
      },
      {
        cause: "the oven was too cool",
        check: "a thermometer inside reads below 145 °C",
        change: "150 °C, and heat the oven 20 min before the first tray",
        figure: oven,
      },
      {
        cause: "the batter was folded too far",
        check: "it ran off the spatula and the rounds grew on the tray",
        change: "stop when a ribbon sinks back in 10-15 s",
        figure: range("ribbon", 10, 15, "s"),
      },
      {
        cause: "the meringue was too soft",
        check: "its peak bent over when the whisk came out",
        change: "whisk to peaks that stand straight before any dry mix goes in",
      },
    ],
    now: "Shells without feet still taste right: crumble them into a filling or a base.",
  },
  {
    id: "cracked tops",
    title: "Cracked tops",
    causes: [
      {
        cause: "no skin had formed",
        check: "a fingertip drags on the top before baking",
        change: "rest 30-60 min, until a finger comes away dry",
        figure: rest,
      },
      {
        cause: "the oven was too hot, or hottest from below",
        check: "an oven thermometer; cracks are worst on one side or on the lowest tray",
        ...coolerOven(10, ", one tray at a time in the middle"),
      },
      {
        cause: "air was left in the batter",
        check: "bubbles rise after piping",
        change: "knock the tray flat on the table 3-4 times and prick what rises",
        figure: range("knocks", 3, 4, "knocks"),
      },
      {
        cause: "the batter was folded too little",
        check: "piped tips stay up",
        change: "fold on until a ribbon sinks back in 10-15 s",
        figure: range("ribbon", 10, 15, "s"),
      },
    ],
  },
  {
    id: "hollow",
    title: "Hollow shells",
    causes: [
      {
        cause: "the oven was too hot: the top set before the inside rose to it",
        check: "an oven thermometer; above 155 °C is hot",
        ...coolerOven(10, " and 2 min longer"),
      },
      {
        cause: "they came out too soon and the inside fell",
        check: "the top moves on the foot when nudged",
        change: "bake on, a minute at a time up to 18 min, until nothing moves",
        figure: bake,
      },
      {
        cause: "the meringue was whipped too far",
        check: "it looked dry and broke into lumps",
        change: "stop at straight, shining peaks",
      },
      {
        cause: "the batter was folded too little: large bubbles stayed",
        check: "the ribbon stood for more than 15 s",
        change: "fold on until it sinks back in 10-15 s; knock the tray 3-4 times",
        figure: range("ribbon", 10, 15, "s"),
      },
    ],
    now: "Fill them and mature 24-48 h: filling softens the gap from below.",
  },
  {
    id: "lopsided feet",
    title: "Lopsided feet",
    causes: [
      {
        cause: "the fan or one side of the oven is stronger",
        check: "all of them lean the same way",
        change: "turn the tray round after 8 min; with a fan 20 °C less",
        figure: value("turn after", 8, "min"),
      },
      {
        cause: "they rested too long, so that the skin held on one side",
        check: "they had stood over 60 min",
        change: "rest 30 min, at most 60",
        figure: rest,
      },
      {
        cause: "piped at a slant",
        check: "they lean every way",
        change: "hold the bag upright, 1 cm above the mat, and stop pressing before lifting",
      },
      {
        cause: "the mat or tray is bent",
        check: "it rocks on a flat table",
        change: "a flat tray, the mat smoothed down",
      },
    ],
  },
  {
    id: "spread flat",
    title: "Shells that spread flat",
    causes: [
      {
        cause: "the batter was folded too far",
        check: "a ribbon vanished in under 10 s",
        change: "stop at 10-15 s; count the strokes and take 5 fewer",
        figure: range("ribbon", 10, 15, "s"),
      },
      {
        cause: "the meringue was too soft",
        check: "its peak bent over",
        change: "whisk to peaks that stand straight",
      },
      {
        cause: "too much liquid: wet color, or flavor in the batter",
        check: "drops were added late",
        change: "powder color at 0.3-1 % of the batter; flavor goes into the filling",
        figure: range("powder color", 0.3, 1, "%"),
      },
      {
        cause: "too little almond flour for the whites",
        check: "weigh: 130 g for 100 g of whites",
        change: "almond flour 130 g for 100 g of whites",
        figure: value("almond flour", 130, "g"),
      },
    ],
  },
  {
    id: "peaks that stay",
    title: "Peaks that stay on top",
    causes: [
      {
        cause: "the batter was folded too little",
        check: "a ribbon stands for more than 15 s",
        change: "5-10 strokes more, until it sinks back in 10-15 s",
        figure: range("ribbon", 10, 15, "s"),
      },
      {
        cause: "the dry mix was too much or too dry",
        check: "weigh: 260 g of dry mix for 100 g of whites",
        change: "almond flour and powdered sugar 130 g each for 100 g of whites",
        figure: value("almond flour", 130, "g"),
      },
      {
        cause: "the bag was pulled straight up",
        check: "each has one tail in the middle",
        change: "stop pressing, then flick the tip away sideways; knock the tray 3-4 times",
        figure: range("knocks", 3, 4, "knocks"),
      },
    ],
    now: "Wet a fingertip and press the peaks down before they dry.",
  },
  {
    id: "lumpy tops",
    title: "Lumpy or grainy tops",
    causes: [
      {
        cause: "the almond flour was coarse",
        check: "bits stay in the sieve",
        change: "sift twice; grind what stays with the powdered sugar, 10 s at a time",
        figure: value("grind", 10, "s"),
      },
      {
        cause: "the dry mix was not sifted",
        check: "lumps of powdered sugar in the batter",
        change: "weigh, mix and sift together before the meringue",
      },
      {
        cause: "the batter was folded too little",
        check: "a ribbon stands for more than 15 s",
        change: "fold on until it sinks back in 10-15 s",
        figure: range("ribbon", 10, 15, "s"),
      },
      {
        cause: "the sugar of the meringue had not dissolved",
        check: "it feels sandy between two fingers",
        change: "finer sugar, a spoonful at a time, and whisk until it feels smooth",
      },
    ],
  },
  {
    id: "wrinkled tops",
    title: "Wrinkled or oily tops",
    causes: [
      {
        cause: "the almond flour let its oil go",
        check: "it clumps in the hand, or was ground warm",
        change: "fresh, dry flour; grind it in 10 s bursts with the powdered sugar",
        figure: value("grind", 10, "s"),
      },
      {
        cause: "the batter was folded too far",
        check: "a ribbon vanished in under 10 s",
        change: "stop at 10-15 s",
        figure: range("ribbon", 10, 15, "s"),
      },
      {
        cause: "underbaked",
        check: "the tops sank as they cooled",
        change: "bake on, a minute at a time up to 18 min",
        figure: bake,
      },
      {
        cause: "too much color or something with fat in it",
        check: "worse in the darker bowl",
        change: "gel color at most 1.5 % of the batter; no oil, no flavoring with fat",
        figure: range("gel color", 0.5, 1.5, "%"),
      },
    ],
  },
  {
    id: "browned",
    title: "Browned shells",
    causes: [
      {
        cause: "the oven was too hot",
        check: "an oven thermometer; above 155 °C colors them",
        ...coolerOven(10, " and 2-3 min longer"),
      },
      {
        cause: "too near the heat",
        check: "only the top tray, or one side",
        change: "middle shelf; lay foil over them for the last 5 min",
        figure: value("cover for the last", 5, "min"),
      },
      {
        cause: "baked too long",
        check: "the feet are brown too",
        change: "2 min less; done when nothing moves",
        figure: bake,
      },
      {
        cause: "the fan at a conventional oven's heat",
        check: "the oven is set to fan",
        change: "20 °C less with the fan",
        figure: value("less with the fan", 20, "°C"),
      },
    ],
  },
  {
    id: "sticky bottoms",
    title: "Sticky bottoms",
    causes: [
      {
        cause: "underbaked",
        check: "the top moves on the foot when nudged",
        change: "bake on, a minute at a time up to 18 min, until nothing moves",
        figure: bake,
      },
      {
        cause: "lifted while warm",
        check: "they came off within 10 min",
        change: "cool 30 min on the tray",
        figure: value("cool", 30, "min"),
      },
      {
        cause: "too little heat from below",
        check: "the bottoms are pale and wet",
        change: "one shelf lower, or the tray on a hot sheet",
      },
      {
        cause: "a thick mat holds the heat back",
        check: "the same batter lets go on paper",
        change: "parchment, or 2 min longer on the mat",
        figure: value("longer", 2, "min"),
      },
    ],
    now: "Put the tray back for 2-3 min, or in the freezer for 10, then peel the mat from the shell.",
  },
  {
    id: "soft after maturing",
    title: "Too soft after maturing",
    causes: [
      {
        cause: "the filling is wet: purée, jam or cream gave its water to the shells",
        check: "the shell is darkest where it touches the filling",
        change: "reduce purée first, 5-10 % of a ganache; a ring of buttercream around a wet center",
        figure: range("purée", 5, 10, "%"),
      },
      {
        cause: "matured too long for this filling",
        check: "good on day 1, wet on day 3",
        change: "24 h, then try one; freeze the rest",
        figure: value("mature", 24, "h"),
      },
      {
        cause: "underbaked",
        check: "shells without filling are soft too",
        change: "2 min longer, up to 18",
        figure: bake,
      },
      {
        cause: "water settled on them",
        check: "boxed while warm, or opened straight from the cold",
        change: "box only when cool; let the closed box stand 30 min before opening",
        figure: value("stand", 30, "min"),
      },
    ],
  },
  {
    id: "dry after maturing",
    title: "Dry or hard after maturing",
    causes: [
      {
        cause: "not matured long enough",
        check: "under 24 h in the fridge",
        change: "24-48 h in a closed box in the fridge",
        figure: range("mature", 24, 48, "h"),
      },
      {
        cause: "baked too long or too hot",
        check: "the shells snap and the feet are colored",
        change: "2 min less, or 10 °C less",
        figure: bake,
      },
      {
        cause: "the filling is too dry or too little",
        check: "weigh: under 6 g in a 38 mm macaron",
        change: "6 g of filling in a 38 mm macaron, to the edge",
        figure: value("filling", 6.06, "g"),
      },
      { cause: "the box let air in", check: "they smell of the fridge", change: "an airtight box, no gaps" },
    ],
    now: "Brush the inside of the shells with a little milk or syrup and give them 24 h more.",
  },
  {
    id: "split ganache",
    title: "Split ganache",
    causes: [
      {
        cause: "too hot when it was stirred",
        check: "a thermometer reads above 40 °C",
        change: "bring it to 32-40 °C, then stir from the center",
        figure: range("temperature", 32, 40, "°C"),
      },
      {
        cause: "too little water for the fat",
        check: "more than 2 parts dark chocolate to 1 of cream",
        change: "stir in warm cream or milk, 2 % of its weight at a time, 10 % at most",
        figure: range("warm cream", 2, 10, "%"),
      },
      {
        cause: "stirred before it had melted, or too hard",
        check: "lumps, and oil around them",
        change: "let the cream stand on the chocolate 1-2 min, then stir slowly from the center outward",
        figure: range("wait", 1, 2, "min"),
      },
      {
        cause: "too cold when the butter went in",
        check: "it was under 32 °C",
        change: "butter at room temperature into ganache at 35-40 °C",
        figure: range("temperature", 35, 40, "°C"),
      },
    ],
    now: "Tell me what it weighs and I give the grams to stir in; past 10 % use it in something baked.",
  },
  {
    id: "loose ganache",
    title: "Loose ganache",
    causes: [
      {
        cause: "not set yet",
        check: "it is warmer than the room",
        change: "30-60 min in the fridge with film on the surface, stirred once",
        figure: range("set", 30, 60, "min"),
      },
      {
        cause: "too little chocolate for the cream",
        check: "to pipe: dark 1.25, milk 2, white 2.5 to 1 of cream",
        change: "melt more chocolate in; tell me both weights and I give the grams",
      },
      {
        cause: "a wet flavor or purée went in",
        check: "it was firm before",
        change: "keep wet flavors to 3-4 %, purée to 5-10 %",
        figure: range("flavor", 3, 4, "%"),
      },
    ],
  },
  {
    id: "stiff ganache",
    title: "Stiff ganache",
    causes: [
      {
        cause: "too cold",
        check: "it is straight from the fridge",
        change: "let it stand at room temperature 30 min, or warm it 5 s at a time",
        figure: value("stand", 30, "min"),
      },
      {
        cause: "too much chocolate for the cream",
        check: "to pipe: dark 1.25, milk 2, white 2.5 to 1 of cream",
        change: "stir warm cream in; tell me both weights and I give the grams",
      },
    ],
  },
  {
    id: "grainy ganache",
    title: "Grainy ganache",
    causes: [
      {
        cause: "chocolate that did not melt",
        check: "the grains are soft between two fingers",
        change: "warm to 40 °C over water and stir until smooth",
        figure: value("temperature", 40, "°C"),
      },
      {
        cause: "it is on the way to splitting",
        check: "it shines with oil",
        change: "bring it to 32-40 °C and stir in warm cream, 2 % of its weight at a time",
        figure: range("temperature", 32, 40, "°C"),
      },
      {
        cause: "sugar or cocoa butter has crystallised",
        check: "it was smooth and is sandy after days in the cold",
        change: "melt to 40 °C, blend, and set again at room temperature",
        figure: value("temperature", 40, "°C"),
      },
    ],
  },
  {
    id: "curdled buttercream",
    title: "Curdled buttercream",
    causes: [
      {
        cause: "the butter was colder than the meringue",
        check: "the bowl feels cool, lumps of butter show",
        change: "whisk on; warm the side of the bowl for 5-10 s at a time until it closes, near 21-23 °C",
        figure: range("temperature", 21, 23, "°C"),
      },
      {
        cause: "a wet flavor or purée went in too fast",
        check: "it was smooth before",
        change: "flavor at 3-5 %, purée reduced, a spoonful at a time",
        figure: range("flavor", 3, 5, "%"),
      },
      {
        cause: "the meringue was too warm when the butter went in",
        check: "it is loose and shining",
        change: "chill 10 min, then whisk again",
        figure: value("chill", 10, "min"),
      },
    ],
    now: "Keep whisking: most curdled buttercream closes again within 5 min.",
  },
  {
    id: "soupy buttercream",
    title: "Soupy buttercream",
    causes: [
      {
        cause: "the meringue or the butter was too warm",
        check: "the bowl is warmer than 25 °C",
        change: "chill the bowl 15-20 min, then whisk 3-5 min",
        figure: range("chill", 15, 20, "min"),
      },
      {
        cause: "the butter is not all in, or too little",
        check: "weigh: 250 g of butter for 100 g of whites",
        change: "butter 250 g for 100 g of whites, a piece at a time",
        figure: value("butter", 250, "g"),
      },
      {
        cause: "too much wet flavor",
        check: "it was firm before",
        change: "flavor at 3-5 %; whisk in soft butter to bring it back",
        figure: range("flavor", 3, 5, "%"),
      },
    ],
  },
  {
    id: "grainy buttercream",
    title: "Grainy buttercream",
    causes: [
      {
        cause: "the sugar had not dissolved in the whites",
        check: "rub a drop between two fingers before whisking",
        change: "heat to 71 °C (160 °F) while stirring, until nothing is felt",
        figure: value("temperature", 71, "°C"),
      },
      {
        cause: "sugar dried on the side of the bowl and fell in",
        check: "single hard grains",
        change: "wipe the side down with a wet brush",
      },
      {
        cause: "bits of cooked white",
        check: "soft, pale bits",
        change: "stir without a stop over the pot; pour through a sieve",
      },
    ],
    caution: "Whites are safe from 71 °C (160 °F) on, or pasteurised.",
  },
  {
    id: "too sweet",
    title: "Too sweet a filling",
    causes: [
      {
        cause: "no salt beside the sugar",
        check: "a few grains of salt on a spoon of it: is it better?",
        change: "salt, 0.2-0.5 % of the filling, the low end first",
        figure: range("salt", 0.2, 0.5, "%"),
      },
      {
        cause: "nothing sharp or bitter in it",
        check: "white or milk chocolate, vanilla, caramel",
        change: "a center of dark chocolate ganache, or a sharp freeze-dried fruit; ask me how much",
      },
    ],
    now: "sugar can't be taken out of a finished buttercream: more butter or plain ganache thins it out",
  },
  {
    id: "faded color",
    title: "Faded color",
    causes: [
      {
        cause: "too hot or too long in the oven",
        check: "the tops are browner than the batter was",
        ...coolerOven(10, ", foil over them for the last 5 min"),
      },
      {
        cause: "too little color",
        check: "the batter itself is pale",
        change: "powder 0.3-1 % or gel 0.5-1.5 % of the batter, a shade darker than wanted",
        figure: range("powder color", 0.3, 1, "%"),
      },
      {
        cause: "a plant color that heat or light takes",
        check: "pinks and purples went first",
        change: "a heat-proof powder color; keep the box in the dark",
      },
    ],
  },
  {
    id: "bleeding color",
    title: "Bleeding color",
    causes: [
      {
        cause: "the shells took up water",
        check: "worst where they touch the filling or each other",
        change: "box only when cool; let the closed box stand 30 min before opening",
        figure: value("stand", 30, "min"),
      },
      {
        cause: "too much color",
        check: "it comes off on a dry finger",
        change: "gel at most 1.5 %, powder at most 1 % of the batter",
        figure: range("gel color", 0.5, 1.5, "%"),
      },
      {
        cause: "a wet filling",
        check: "the filling has taken the color",
        change: "a ring of buttercream around a wet center",
      },
    ],
  },
  {
    id: "runny batter",
    title: "Runny batter",
    causes: [
      {
        cause: "folded too far",
        check: "a ribbon vanishes in under 10 s",
        change: "stop at 10-15 s; nothing brings it back, so pipe it small and note the strokes",
        figure: range("ribbon", 10, 15, "s"),
      },
      {
        cause: "the meringue was too soft",
        check: "its peak bent over",
        change: "whisk to peaks that stand straight",
      },
      {
        cause: "too many whites",
        check: "weigh: 100 g for 260 g of dry mix",
        change: "whites 100 g for 130 g of almond flour and 130 g of powdered sugar",
        figure: value("whites", 100, "g"),
      },
      {
        cause: "wet color or flavor in the batter",
        check: "drops were added late",
        change: "powder color at 0.3-1 %; flavor goes into the filling",
        figure: range("powder color", 0.3, 1, "%"),
      },
    ],
  },
  {
    id: "stiff batter",
    title: "Stiff batter",
    causes: [
      {
        cause: "folded too little",
        check: "it breaks off the spatula",
        change: "5 strokes at a time until a ribbon sinks back in 10-15 s",
        figure: range("ribbon", 10, 15, "s"),
      },
      {
        cause: "too few whites, or much dry mix",
        check: "weigh: 100 g for 260 g of dry mix",
        change: "whites 100 g for 130 g of almond flour and 130 g of powdered sugar",
        figure: value("whites", 100, "g"),
      },
      {
        cause: "the meringue was whipped too far",
        check: "it looked dry and broke into lumps",
        change: "stop at straight, shining peaks",
      },
    ],
  },
  {
    id: "meringue that will not peak",
    title: "Meringue that will not peak",
    causes: [
      {
        cause: "fat in the bowl: a speck of yolk or a greasy whisk",
        check: "it stays grey and thin after 5 min",
        change: "start again in a bowl wiped with vinegar; crack each egg over a cup",
      },
      {
        cause: "the sugar went in too soon or all at once",
        check: "it is shining and thick but soft",
        change: "start at foam, a spoonful every 20-30 s",
        figure: range("a spoonful every", 20, 30, "s"),
      },
      {
        cause: "too much sugar",
        check: "weigh: 100 g for 100 g of whites",
        change: "granulated sugar 100 g for 100 g of whites",
        figure: value("granulated sugar", 100, "g"),
      },
      {
        cause: "whites from a carton",
        check: "the label says pasteurised",
        change:
          "a pinch of cream of tartar and up to twice the time, or whites from the shell heated with the sugar to 71 °C (160 °F)",
        figure: value("temperature", 71, "°C"),
      },
    ],
    caution:
      "Whites that are not heated to 71 °C (160 °F) should be pasteurised ones; your local food authority says what holds for you.",
  },
];
