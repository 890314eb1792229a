/**
 * How the steps of the bake are done. A step without a number of the trade does without one.
 * `words` are cue patterns (src/tools/lib/cue.ts) that name the step; the calculator puts "how long", "how hot" and
 * "how do I" before them.
 */
import type { Basis, Figure } from "../../src/tools/contract/answer.ts";
import { fanLower, shellOven } from "./heat.ts";

export interface MethodRow {
  id: string;
  words: readonly string[];
  /** Words that mean it where no other step is named. */
  loose?: readonly string[];
  /** Patterns that ask about it all by themselves. */
  asks?: readonly string[];
  /** The answer in one line, numbers first. */
  headline: string;
  figures?: readonly Figure[];
  steps: readonly string[];
  basis: Basis;
  source?: string;
  cautions?: readonly string[];
}

const temperature_c = { name: "whites and sugar", value: 71, unit: "°C" };
const safety = "Your local food authority's rules come first, above all where you sell.";

export const methodRows: readonly MethodRow[] = [
  {
    id: "whites heated",
    words: [
      "{ingredient=whites} (?:\\S+ )?(?:and|with|&) .. {ingredient=sugar|granulated_sugar}",
      "{ingredient=sugar|granulated_sugar} (?:and|with|&) .. {ingredient=whites}",
      "heat .. {ingredient=whites|egg}",
      "{ingredient=whites} .. (?:heated|cooked|safe|double boiler|bain marie|water bath|over (?:the|a) (?:pot|pan|steam))",
      "swiss (?:\\S*<[^>]*)?meringue\\S*",
      "swiss_meringue\\S*",
    ],
    headline: "71 °C (160 °F): heat whites and sugar over simmering water, stirring all the time",
    figures: [temperature_c, { name: "whites and sugar", value: 160, unit: "°F" }],
    steps: [
      "whites and sugar in a clean bowl over simmering water, not touching it",
      "stir all the time to 71 °C (160 °F), measured with a probe",
      "off the heat, whip until stiff and cool",
    ],
    basis: "published",
    source: "USDA FSIS, egg safety",
    cautions: ["Whites that are not heated: use pasteurised ones (FDA Food Code 3-302.13).", safety],
  },
  {
    id: "dry mix",
    words: [
      "(?:dry|almond|sifted|flour|powder|{ingredient=almond_flour}) (?:mix|mixture|stuff|ingredients|ones|powders)",
      "(?:dries|drys)",
      "{ingredient=almond_flour} .. (?:{base=meringue}|{ingredient=whites})",
    ],
    asks: [
      "(?:dry|almond) (?:mix|mixture|ingredients|stuff) .. (?:{base=meringue}|{ingredient=whites})",
      "(?:dry|almond) (?:mix|mixture|ingredients|stuff) .. mixer",
      "mixer .. (?:dry|almond) (?:mix|mixture|ingredients|stuff)",
      "{step=macaronage} .. mixer",
      "mixer .. {step=macaronage}",
      "(?:all at once|how many additions|in one go|in two goes|in stages|bit by bit) .. {base=meringue}",
    ],
    headline:
      "2 additions, hand mixer on its lowest speed: about 5 s after the first, 7-10 s after the second",
    figures: [
      { name: "additions", value: 2, unit: "additions" },
      { name: "after the first", value: 5, unit: "s" },
      { name: "after the second", low: 7, high: 10, unit: "s" },
    ],
    steps: [
      "meringue stiff, dry mix sifted",
      "first half in, lowest speed, about 5 s",
      "second half in, lowest speed, 7-10 s",
      "finish by hand until it flows off the spatula as a slow ribbon",
    ],
    basis: "common practice",
  },
  {
    id: "macaronage",
    words: [
      "{step=macaronage}",
      "macaronage",
      "macaronner",
      "(?:fold|folding|folded|mix|mixing|stir) .. {base=batter}",
      "{base=batter} .. (?:ready|ribbon|right|done|enough)",
      "lava",
      "ribbon stage",
    ],
    asks: [
      "{base=batter} (?:is |looks )?(?:ready|done|right|folded enough)",
      "{base=batter} (?:is|runs|flows|looks) (?:like )?(?:lava|ribbon|a ribbon|thick|honey)\\S* .. (?:ready|done|ok|okay|right|enough|stop)",
      "{step=macaronage} .. (?:done|ready|enough|right|stop|far|know)",
      "(?:done|ready|enough|stop|far|know) .. {step=macaronage}",
      "(?:explain|whats|what is) (?:a |the )?(?:macaronage|{step=macaronage})",
    ],
    headline: "Fold until the batter flows off the spatula as a slow ribbon that sinks back into itself",
    steps: [
      "dry mix into the stiff meringue in two additions",
      "press the batter against the bowl and fold it back over",
      "stop when it flows as a slow ribbon and its edge sinks in again; too far can't be mended",
    ],
    basis: "from memory",
  },
  {
    id: "sifting",
    words: ["sift", "sifting", "sieve", "sieving", "{manner=sifted}"],
    headline:
      "Sift almond flour and powdered sugar together before they go in; what stays in the sieve is weighed again and replaced",
    steps: [
      "weigh almond flour and powdered sugar",
      "sift them together",
      "throw out coarse bits and make up their weight",
    ],
    basis: "from memory",
  },
  {
    id: "italian meringue",
    words: [
      "italian .. {base=meringue}",
      "italian_meringue\\S*",
      "{base=meringue} .*italian",
      "italian meringue",
    ],
    headline:
      "Italian meringue: sugar syrup to 118 °C (244 °F), poured in a thin stream onto whites whipped to soft peaks",
    figures: [
      { name: "syrup", value: 118, unit: "°C" },
      { name: "syrup", value: 244, unit: "°F" },
    ],
    steps: [
      "sugar and water to the boil, without stirring",
      "whites to soft peaks while it heats",
      "syrup at 118 °C (244 °F), measured with a probe, in a thin stream beside the whisk",
      "whip until cool, stiff and glossy",
    ],
    basis: "common practice",
    cautions: [
      "The syrup alone need not bring all of the whites to 71 °C (160 °F): measure it, or use pasteurised whites (FDA Food Code 3-302.13).",
      "Boiling syrup burns worse than water.",
      safety,
    ],
  },
  {
    id: "meringue",
    words: [
      "{base=meringue}",
      "(?:whip|whipping|whisk|whisking|beat|beating) .. {ingredient=whites}",
      "stiff peaks",
      "{ingredient=whites} .. (?:whip|whipping|whisk|beat)",
    ],
    asks: [
      "(?:whisked|whipped|beaten|whipping|whisking|beating) .. (?:stiff|ready|done|enough|far)",
      "(?:stiff|ready|done) enough .. (?:whisk|whip|beat)\\S*",
      "{base=meringue} .. how (?:stiff|firm|far)\\S*",
      "how (?:stiff|firm)\\S* .. (?:{ingredient=whites}|peaks?) (?:be|whipped|whisked|beaten|stand)",
    ],
    headline: "Whip whites to a foam, add the granulated sugar bit by bit, on until stiff glossy peaks stand",
    steps: [
      "bowl and whisk free of fat",
      "whites to a soft foam",
      "granulated sugar in by the spoonful",
      "whip until the peaks stand stiff and glossy",
    ],
    basis: "from memory",
    cautions: [
      "A raw-white meringue: use pasteurised whites where it isn't baked through (FDA Food Code 3-302.13).",
    ],
  },
  {
    id: "age whites",
    words: [
      "(?:age|aging|ageing|aged) (?:\\S+ )?{ingredient=whites}",
      "{ingredient=whites} .. (?:age|aged|aging|ageing)",
    ],
    asks: ["(?:do|must|should|need|have|why|is it) .. (?:age|aging|ageing) (?:\\S+ )?{ingredient=whites}"],
    headline:
      "Aging isn't needed: fresh whites, weighed, whip as stiff; some bakers age them a day, covered in the fridge",
    steps: [
      "separate the eggs, weigh the whites",
      "if you age them: covered, in the fridge, a day",
      "bring them to room temperature before they are whipped",
    ],
    basis: "common practice",
    cautions: [
      "Raw whites keep 2-4 days in the fridge (FoodSafety.gov, Cold Food Storage Chart), never on the counter; your local food authority's rules come first.",
    ],
  },
  {
    id: "piping",
    words: [
      "{use=piping} .. (?:{count=shells}|{count=macarons}|{base=batter}|them)",
      "(?:pipe|piping) (?:them|circles|rounds|evenly|out)",
      "(?:bang|tap|rap|slam) .. {count=trays}",
      "(?:gap|space|distance|room) (?:between|around)",
      "(?:apart|spacing)",
    ],
    asks: ["how (?:far|much) (?:apart|space|room) .. (?:{use=piping}|pipe|{count})", "how far apart"],
    headline: "38 mm circles with 20 mm between them, bag held upright; then tap the tray",
    figures: [
      { name: "diameter", value: 38, unit: "mm" },
      { name: "gap", value: 20, unit: "mm" },
    ],
    steps: [
      "bag upright, tip close to the mat",
      "press, stop, flick away sideways",
      "20 mm between shells, 10 mm to the edge",
      "tap the tray firmly and prick the bubbles",
    ],
    basis: "from memory",
  },
  {
    id: "rest",
    words: [
      "{step=rest}",
      "(?:leave|left) .. (?:out|dry|sit|stand)",
      "(?:sit|stand|dry|wait) .. (?:before|until|till) .. (?:{step=bake}|bake|oven|go in|they)",
      "(?:skin|tacky)",
    ],
    asks: [
      "(?:do|must|should|need|have) .. {step=rest}",
      "(?:sticky|tacky|wet)\\S* (?:\\S+ )?after (?:resting |drying |a |another )*(?:[2-9]\\d_min|an_hour|half_an_hour|\\d_h)\\S*<time>",
    ],
    headline: "30 min (30-60), until the tops no longer stick to a finger; none with the no-rest method",
    figures: [{ name: "rest", value: 30, low: 30, high: 60, unit: "min" }],
    steps: [
      "leave the piped shells open in a dry room",
      "ready when a finger comes away clean",
      "with the no-rest method they go straight in",
    ],
    basis: "common practice",
  },
  {
    id: "bake",
    words: [
      "{step=bake}",
      "bake",
      "baking",
      "(?:when|how soon) .. (?:take|pull|get|come|comes) .. out of the oven",
      "(?:are|is|theyre|when) .. (?:baked|done) (?:through|enough|inside)",
    ],
    loose: ["oven", "{count=shells}", "{count=macarons}"],
    asks: [
      "(?:how do i|how can i|how will i|how do you) (?:know|tell) .. (?:{step=bake}|done|baked|cooked)",
      "(?:oven|baking|bake) (?:temp|temperature|heat|setting|time)",
      "(?:temp|temperature) .. oven",
      "(?:{step=bake}|bake|oven) (?:them |it |these |the shells |shells )?(?:at|on|to) (?:{temperature}|{number}) or (?:{temperature}|{number})",
      "(?:can|could|should|may|do) (?:i|we|you) .. (?:{step=bake}|bake|put) .. {count=trays} .. (?:at once|at a time|at the same time|together|in one go)",
    ],
    headline: `${shellOven.celsius} °C (${shellOven.fahrenheit} °F) for ${shellOven.minutes} min (${shellOven.low}-${shellOven.high})`,
    figures: [
      { name: "oven", value: shellOven.celsius, unit: "°C" },
      { name: "oven", value: shellOven.fahrenheit, unit: "°F" },
      { name: "bake", value: shellOven.minutes, low: shellOven.low, high: shellOven.high, unit: "min" },
    ],
    steps: [
      `conventional oven at ${shellOven.celsius} °C (${shellOven.fahrenheit} °F); ${fanLower.text}`,
      "one tray at a time, in the middle",
      `${shellOven.minutes} min at ${shellOven.diameter_mm} mm; small ones nearer ${shellOven.low}, big ones nearer ${shellOven.high}`,
      "done when the top doesn't wobble on its feet",
    ],
    basis: "common practice",
  },
  {
    id: "cool",
    words: ["{step=cool}", "(?:lift|peel|take|remove) .. (?:off|from) .. {count=trays}"],
    headline: "30 min on the tray, before they are lifted off and filled",
    figures: [{ name: "cool", value: 30, unit: "min" }],
    steps: ["leave the shells on their tray, off the heat", "lift them when they are cold"],
    basis: "common practice",
  },
  {
    id: "butter into ganache",
    words: [
      "{ingredient=butter|salted_butter} .. {base=ganache}",
      "{base=ganache} .. {ingredient=butter|salted_butter}",
      "(?:temper|tempering) .. {ingredient=butter|salted_butter}",
    ],
    asks: [
      "(?:when|how|where) .. {ingredient=butter|salted_butter} .. (?:go|goes|get|into|in|added|stirred) .. {base=ganache}",
    ],
    headline: "Stir soft butter into the ganache once it is warm, not hot: 32-40 °C, a bit at a time",
    figures: [{ name: "ganache", low: 32, high: 40, unit: "°C" }],
    steps: [
      "butter soft, at room temperature",
      "ganache emulsified and cooled to 32-40 °C",
      "butter in a bit at a time, stirring from the center outward",
      "smooth before the next bit goes in",
    ],
    basis: "from memory",
    cautions: ["Kept cold: a ganache is perishable. Your local food authority's rules come first."],
  },
  {
    id: "ganache sets",
    words: [
      "{step=ganache_sets}",
      "{base=ganache} .. (?:set|sets|setting|firm|fridge|cool|thicken|{step=chill}|{step=cool}|{step=rest})",
      "(?:before|until|till) .. (?:pipe|{use=piping}) .. {base=ganache}",
      "(?:set|chill|cool|firm up) .. {base=ganache}",
    ],
    asks: [
      "how long .. {step=ganache_sets}",
      "how long .. {base=ganache} (?:to |need to |have to |take to |should )?(?:set|sets|setting|firm up)",
      "how long .. {base=ganache} .. (?:set|sets|setting|harden|firm|{step=chill}|{step=cool})",
      "how long .. {base=ganache} need",
      "how long .. (?:set|firm up|thicken) .. (?:before|until|till) .. (?:{use=piping}|piped|pipe)",
    ],
    headline:
      "30-60 min in the fridge, or a few hours at room temperature, film on the surface; pipe before it is fully hard",
    figures: [{ name: "ganache sets", value: 45, low: 30, high: 60, unit: "min" }],
    steps: [
      "film straight onto the surface",
      "30-60 min in the fridge, or a few hours at room temperature",
      "pipe before it is fully hard",
    ],
    basis: "common practice",
    cautions: ["Cold holding is 5 °C (41 °F) or below; your local food authority's rules come first."],
  },
  {
    id: "ganache",
    words: [
      "{base=ganache}",
      "(?:hot|simmering|boiling|warm|{ingredient=cream}) .. {ingredient=cream|chocolate|dark_chocolate|milk_chocolate|white_chocolate} .. (?:{ingredient}|{chocolate}|stir|over|onto|on|wait)",
      "{ingredient=cream} .. (?:over|on|onto|into|to) .. {ingredient}",
      "wait before .. stir\\S*",
      "(?:wait|stir|stirring) .. {ingredient=cream}",
      "{ingredient=cream} .. (?:boil|simmer|hot)",
    ],
    loose: ["{ingredient=cream}"],
    asks: [
      "how long .. wait .. (?:stir\\S*|{ingredient=cream})",
      "{ingredient=cream} .. {ingredient=chocolate} .. wait .. stir\\S*",
    ],
    headline: "Simmering cream over chopped chocolate, wait 1-2 min, then stir from the center outward",
    figures: [
      { name: "wait", low: 1, high: 2, unit: "min" },
      { name: "ganache sets", value: 45, low: 30, high: 60, unit: "min" },
    ],
    steps: [
      "chop the chocolate",
      "bring the cream to a simmer and pour it over",
      "wait 1-2 min",
      "stir from the center outward until it shines",
      "set 30-60 min in the fridge, or a few hours at room temperature, film on the surface",
      "pipe before it is fully hard",
    ],
    basis: "common practice",
    cautions: ["Kept cold: a ganache is perishable. Your local food authority's rules come first."],
  },
  {
    id: "buttercream",
    words: ["{base=buttercream}"],
    headline: "Whites and sugar to 71 °C (160 °F) while stirring, whip stiff and cool, then butter in pieces",
    figures: [temperature_c, { name: "whites and sugar", value: 160, unit: "°F" }],
    steps: [
      "whites and sugar over simmering water, stirring, to 71 °C (160 °F)",
      "whip until stiff and no warmer than the room",
      "soft butter in piece by piece, until it is smooth",
      "flavor last",
    ],
    basis: "common practice",
    source: "71 °C: USDA FSIS, egg safety",
    cautions: ["Whites that are not heated: use pasteurised ones (FDA Food Code 3-302.13).", safety],
  },
  {
    id: "mature",
    words: [
      "{step=mature}",
      "mature",
      "(?:before|until|till) .. (?:serve|serving|sell|selling|eat|eating|ready to eat)",
      "(?:{count=macarons}|they|them) .. (?:soften|taste best|come together)",
    ],
    asks: [
      "how long (?:before|until|till) .. (?:eat|serve|serving|sell|selling)",
      "(?:when|how soon) (?:can|could|may) (?:i|we|they|you) (?:eat|serve|try|taste)",
    ],
    headline: "24-48 h in the fridge, boxed airtight",
    figures: [{ name: "mature", low: 1440, high: 2880, unit: "min" }],
    steps: ["fill, close, box airtight", "24-48 h in the fridge", "out 30 min before they are eaten"],
    basis: "common practice",
    cautions: [
      "Out of the fridge 2 h in all, 1 h above 32 °C (USDA FSIS); your local food authority's rules come first.",
    ],
  },
  {
    id: "freeze",
    words: ["freeze", "freezing", "frozen", "freezer"],
    asks: ["how (?:do|should|shall|can|to|would) (?:i |you |we )?(?:freeze|refreeze)"],
    headline: "Freeze them airtight at −18 °C; best within 2 months, thawed in the closed box in the fridge",
    figures: [{ name: "freezer", value: -18, unit: "°C" }],
    steps: [
      "shells cold or macarons matured",
      "in one layer, airtight box, −18 °C",
      "best within 2 months",
      "thaw in the closed box in the fridge",
    ],
    basis: "from memory",
    cautions: ["Your local food authority's rules come first."],
  },
  {
    id: "selling rules",
    words: ["(?:licen[cs]es?|permits?)", "(?:legal|legally|permitted) to sell"],
    asks: [
      "(?:licen[cs]es?|permits?|permission) .. (?:sell|selling|sale|market|home|kitchen|bake|baking)",
      "(?:sell|selling|sale|market|stall) .. (?:licen[cs]es?|permits?|permission|legal|legally|registered|inspected)",
      "(?:is|are) (?:it|we|they|this) (?:legal|allowed|permitted) .. (?:sell|selling)",
      "(?:legal|legally) (?:to )?sell",
      "(?:what|which) (?:licen[cs]es?|permits?)",
      "(?:do|would|must|should) (?:i|we) (?:need|have|get) (?:a |any |some )?(?:licen[cs]es?|permits?)",
      "(?:can|may|could) (?:i|we) (?:sell|legally sell) .. (?:market|fair|stall|school|online|bazaar|friends|neighbo\\S+|without)",
    ],
    headline:
      "Whether and what you may sell from home is for your local food authority to say: ask there before the first sale",
    steps: [
      "ask which foods a home kitchen may sell: some rules leave out what has to be kept cold, as fillings with cream, butter or egg have",
      "ask whether you register, take a course or are visited first",
      "ask what a label has to say where you sell",
    ],
    basis: "common practice",
    cautions: ["Rules differ from place to place; your local food authority has the last word."],
  },
  {
    id: "thaw",
    words: ["{step=thaw}", "thaw", "defrost"],
    headline:
      "Thaw them in the closed box in the fridge, so that water settles on the box and not on the shells",
    steps: [
      "from the freezer into the fridge, box closed",
      "open it only when they are no longer colder than the fridge",
      "then to room temperature, 30 min",
    ],
    basis: "from memory",
    cautions: [
      "Out of the fridge 2 h in all, 1 h above 32 °C (USDA FSIS); your local food authority's rules come first.",
    ],
  },
  {
    id: "color",
    words: ["{dose=gel_color|powder_color|color}", "(?:color|colour|coloring|colouring)"],
    headline: "Gel or powder color goes into the stiff meringue, before the dry mix; no liquid",
    steps: ["meringue stiff", "color in, whip a moment more", "then the dry mix"],
    basis: "from memory",
  },
  {
    id: "whole bake",
    words: ["{count=macarons} (?:from scratch|step by step)", "the whole (?:thing|process|bake)"],
    asks: [
      "(?:how (?:do|would|can) (?:i|you|we) (?:make|bake)|how to (?:make|bake)|steps (?:for|of|in)|(?:what|which) order .. (?:make|do)) (?:\\S+ )?{count=macarons}",
      "(?:what|which) (?:is the )?order (?:of|are|do) .. (?:steps|things|it)",
    ],
    headline:
      "Weigh and sift, meringue, macaronage, pipe, rest 30 min, bake 15 min at 150 °C (300 °F), cool 30 min, fill, mature 24-48 h",
    figures: [
      { name: "rest", value: 30, unit: "min" },
      { name: "oven", value: shellOven.celsius, unit: "°C" },
      { name: "bake", value: shellOven.minutes, unit: "min" },
      { name: "cool", value: 30, unit: "min" },
      { name: "mature", low: 1440, high: 2880, unit: "min" },
    ],
    steps: [
      "weigh almond flour and powdered sugar, sift them",
      "meringue of whites and granulated sugar",
      "dry mix in, in two additions; fold to a slow ribbon",
      "pipe 38 mm circles",
      "rest 30 min",
      "bake 15 min at 150 °C (300 °F)",
      "cool 30 min",
      "pipe the filling, close",
      "mature 24-48 h in the fridge",
    ],
    basis: "common practice",
    cautions: ["Keep filled macarons cold; your local food authority's rules come first."],
  },
];
