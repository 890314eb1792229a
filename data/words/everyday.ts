/** Words without their apostrophe, and words of talk that a list of frequent written English lacks. */
export const everyday: readonly string[] = `
whats hows wheres whens whos thats theres heres its ive im id ill youre youve youll theyre theyve weve were hes shes
dont doesnt didnt cant couldnt wont wouldnt shouldnt isnt arent wasnt werent havent hasnt hadnt aint lets gonna wanna
gotta gimme lemme bed dunno ping yeah yep nope nah okay ok pls plz thx thanks cheers ta hey hiya hello oops whoops oh ugh
hmm argh grr eek yay wow sis bro hubby please sorry reckon bit tad wee lil kinda sorta tons loads heaps lot lots all bought baked made
makes making piped pipe pipes pipin stirred tipped poured dumped chucked threw bung bunged shove popped plop scoop
kitchen fridge freezer countertop counter worktop pantry cupboard larder shelf scale scales oven fan convection mixer
whisk spatula bag nozzle nozzles tip tips parchment paper pan pot saucepan microwave thermometer probe sieve
sieved sifting recipe recipes formula formulas calendar plan planned schedule timeline order orders customer stall
market wedding birthday party cake cupcakes biscuit biscuits bread pastry patisserie tower runny stiff gloopy gluey
slid slopped sloshed trickled slides waterbath
splodge blob blobs dollop dollops smidge pinch pinches dash knob wobbly wrinkly chewy gooey fluffy glossy shiny matte
tasted tastes tasty yummy yum lovely gorgeous rubbish awful disaster perfect brilliant fantastic meh decent
alright good better best worse worst strong stronger strongest weak weaker weakest intense subtle overpowering bland
oclock dough kettle rung rang ring rings ringing theyd theyll spilt spilled spill spills leak leaks leaked leaking mould mold mouldy moldy slimy fuzzy rancid outage blackout ooze oozes oozing remind reminder alarm countdown snooze stopwatch timer timers minutes percent percentage ratio ratios proportion
humid damp rainy raining fees discount vat gst shipping postage
rescale upscale resize doubling tripling halving leftover leftovers spare spares
rename renamed remaining undo redo revert scrap cancel oopsie typo correction meant actually anyway also instead else
temperature temperatures minus negative plus times divided
amts amount amounts amt qty quantities quantity portion
ingredient ingredients allergen allergens label labels margin markup profit price pricing cost costs charge sell
sells selling sold packaging packets ribbon ribbons labour labor wages hourly euros quid
colour colours color colors coloured colored dye flavour flavours flavor flavors flavoured flavored flavouring
reheat reheated reheating rewarm rewarmed rewarming rebake rebaked rebaking microwave microwaved
stir stirring stirs whisking whisked sift temper tempering emulsify double boiler bain marie
sprinkles nonpareils carrots chia broth sweetener maltose wafers chilli isomalt
watery whipping simmer simmering scald lukewarm tepid thaw thawed defrosted frozen airtight tub tubs boxed
weigh weighs weighed weight weights gram grams meringue macaronage croquant craquelin feuilletine couverture
center centre rings ring core poem football joke weather news capital president song sing story
outs tare unflavored unflavoured
gluten lactose soy soya vegan allergic allergy toss unfilled shelf stable pasteurise pasteurize
unheated uncooked unpasteurised unpasteurized van cab
nutfree glutenfree dairyfree eggfree soyfree milkfree lactosefree sugarfree fatfree wheatfree peanutfree
dozen couple few several half third quarter thirds quarters whole entire
`
  .split(/\s+/)
  .filter(Boolean);

/** Small words that carry a question's sense, so that a slip in them is mended too. */
export const functionWords: readonly string[] = `
about above actually after again almost along already also another anything around because been before being
below between both could does doing done down each either enough even every everything exactly first from
going have having hello here instead into just know last leave left less like made make many maybe mean
might more most much must need needs never next nothing only other over please quite rather really right
same should since some something still such take tell than that their them then there these they thing think
this those though through together under until want wants well were what whatever when where which while
will with within without would your excellent difference different remember change amount
`
  .split(/\s+/)
  .filter(Boolean);

/** Slips in words too short for edit distance. */
export const shortSlips: Readonly<Record<string, string>> = {
  n: "and",
  kk: "ok",
  mkay: "ok",
  okie: "ok",
  ad: "add",
  pwdr: "powder",
  thik: "thick",
  thck: "thick",
  stif: "stiff",
  pwdrs: "powders",
  mayb: "maybe",
  // near ten
  teeny: "tiny",
  teensy: "tiny",
  zerod: "zeroed",
  withe: "white",
  yestrday: "yesterday",
  yestrdays: "yesterdays",
  nite: "night",
  tonite: "tonight",
  overnite: "overnight",
  ovrnite: "overnight",
  tho: "though",
  wihte: "white",
  fiv: "five",
  eigt: "eight",
  nin: "nine",
  thre: "three",
  dbl: "double",
  stiks: "sticks",
  stix: "sticks",

  moring: "morning",
  shoping: "shopping",
  meny: "many",
  tht: "that",
  wot: "what",
  wats: "whats",
  wut: "what",
  cuz: "because",
  coz: "because",
  em: "them",
  ur: "your",
  ya: "you",
  yr: "your",
  wich: "which",
  thers: "theres",
  filin: "filling",
  plz: "pls",
  sry: "sorry",
  srry: "sorry",
  soz: "sorry",
  teh: "the",
  hwo: "how",
  waht: "what",
  wat: "what",
  mcuh: "much",
  ahve: "have",
  thru: "through",
  u: "you",
  r: "are",
  hav: "have",
  wuld: "would",
  shud: "should",
  cud: "could",
  dat: "that",
  gonig: "going",
  mych: "much",
  muhc: "much",
  fr: "for",
  abt: "about",
  incl: "including",
  shw: "show",
  frm: "from",
  bt: "but",
  lst: "last",
  cnt: "cant",
  agn: "again",
  drk: "dark",
  drkchoc: "dark chocolate",
  darkchoc: "dark chocolate",
  milkchoc: "milk chocolate",
  whitechoc: "white chocolate",
  cn: "can",
  ag: "oh",
  hvy: "heavy",
  wth: "with",
  nxt: "next",
  gd: "good",
  rn: "now",
  tripl: "triple",
  theyr: "theyre",
  dnt: "dont",
  jst: "just",
  mk: "make",
  insted: "instead",
  remaing: "remaining",
  mst: "must",
  shld: "should",
  cld: "could",
  wld: "would",
  bcs: "because",
  pt: "put",
  gt: "got",
  sm: "some",
  evn: "even",
  // two words as one
  howmany: "how many",
  howmuch: "how much",
  howlong: "how long",
  hwmuch: "how much",
  hwmch: "how much",
  howmch: "how much",
  hwmany: "how many",
  hwmny: "how many",
  howmny: "how many",
  hwlong: "how long",
  hwlng: "how long",
  howlng: "how long",
  whatelse: "what else",
  whtelse: "what else",
  whatdo: "what do",
  inthe: "in the",
  ofthe: "of the",
  forthe: "for the",
  onthe: "on the",
  tothe: "to the",
  withthe: "with the",
  andthe: "and the",
  isthe: "is the",
  ineed: "i need",
  ihave: "i have",
  doi: "do i",
  cani: "can i",
};

/** Words of two letters that stand as they are, those behind a number ("the 22nd") among them. */
export const twoLetters: readonly string[] = `
ah ai am an as at aw be by cc do eh er eu ex go ha he hi hm id if in is it la le lo ma me mm mr ms my no oh ok on or ow
pa pm re rd nd st th so ta tv uh uk um un up us vs we wt
`
  .split(/\s+/)
  .filter(Boolean);
