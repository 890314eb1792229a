/** What is cooked and baked beside macarons: no fault of theirs has a rule here. "Cookies" may be macarons to a baker, so they aren't among them. */
export const otherDishes =
  "rice|risotto|pasta|spaghetti|noodles?|lasagn[ae]|gnocchi|dumplings?|sushi|couscous|porridge|oats|bread|loaf|loaves|baguettes?|sourdough|focaccia|brioche|croissants?|buns?|(?:bread |dinner |cinnamon )?rolls?|bagels?|naan|tortillas?|pizzas?|cakes?|cupcakes?|cheesecakes?|sponges?|muffins?|scones?|brownies?|blondies?|pancakes?|crepes?|waffles?|do(?:ugh)?nuts?|pies?|tarts?|quiches?|pastry|choux|eclairs?|souffles?|pavlovas?|puddings?|flans?|shortbread|gingerbread|granola|omelett?es?|fritters?|potato(?:es)?|soups?|stews?|curry|curries|gravy|hollandaise|bearnaise|mayonnaise|aioli|carbonara|(?:creme )?brulee|zabaglione|sabayon|steaks?|chicken|fish|pork|beef|lamb|sausages?|burgers?|tofu";

/** More that is baked, and that a number of may be asked for; faults of these nobody tells here. */
export const otherBakes =
  "profiteroles?|cream puffs?|vol au vents?|danish(?:es)?|flapjacks?|tray ?bakes?|turnovers?|crumbles?|cobblers?|trifles?|tiramisu|ice cream|gelato|sorbet|cake pops?|whoopie pies?|madeleines?|financiers?|biscotti|crackers?|pretzels?|stollen|panettone|babka|challah|ciabatta|pitas?|strudels?|streusel|lasagn[ae]s?|meatballs?|meatloaf|sandwich(?:es)?|salads?";

/** More that somebody asks how long it keeps. */
export const keptFoods =
  "butter|almond flour|ground almonds|flour|sugar|cream|salmon|tuna|cod|trout|haddock|mackerel|prawns?|shrimps?|crab|mussels|seafood|turkey|duck|mince|peas|sweetcorn|spinach|veg|vegetables?|chips|fries|wine|juice|soup stock|breast milk|avocados?|apples?|raspberries|blueberries|jams?|marmalade|chutney|hummus|pesto|mayo|mayonnaise|cheese|yogh?urt|milk|custard|starter|yeast|cooked chicken|ham|bacon|leftovers|rice pudding|biscuits?|cookies|fudge|truffles|piping bags?|bags?|meringue nests?|honey|nuts|fruit|berries|strawberries|bananas?";

/** A plain word where it stands for a thing, and a taste or a shape elsewhere: "too tart", "roll it out". */
export const riskyDishes: ReadonlySet<string> = new Set(
  "tart tarts roll rolls bun sponge sponges rice oats fish curry soup soups stew cracker crumble pudding pastry bread cobbler".split(
    " ",
  ),
);

/** "cookie dough", "biscuit mix": cookies and biscuits may be macarons to a baker, their dough is none. */
export const doughs = "cookies?|biscuits?|shortcrust|puff|filo|phyllo|strudel|choux";

/** What is made in the same kitchen and not eaten. */
export const otherGoods =
  "candles?|soaps?|wax melts?|bath bombs?|lip balms?|shampoos?|perfumes?|diffusers?|slime|play ?dough|salt dough|potpourri|body butters?|body scrubs?";

/** Behind a dish: a thing in the kitchen or on the table, and none of it is baked. "Cake stand", "bread flour". */
export const besideDishes: ReadonlySet<string> = new Set(
  "flour flours crumb crumbs stand stands box boxes tin tins board boards dome shop shops sale sales stall stalls table tables tray trays ring rings knife knives server slice slices bag bags brush cutter cutters tip tips stone paper cooker machine maker school case cases liner liners wrapper wrappers dish holder carrier topper toppers cloth spice spices extract emulsion competition oven bin drum".split(
    " ",
  ),
);
