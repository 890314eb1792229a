/** Words without their apostrophe, and words of talk that a list of frequent written English lacks. */
export const everyday: readonly string[] = `
whats hows wheres whens whos thats theres heres its ive im id ill youre youve youll theyre theyve weve were hes shes
dont doesnt didnt cant couldnt wont wouldnt shouldnt isnt arent wasnt werent havent hasnt hadnt aint lets gonna wanna
gotta gimme lemme dunno ping yeah yep nope nah okay ok pls plz thx thanks cheers ta hey hiya hello oops whoops oh ugh
hmm argh eek yay wow please sorry reckon bit tad wee lil kinda sorta tons loads heaps lot lots all bought baked made
makes making piped pipe pipes pipin stirred tipped poured dumped chucked threw bung bunged shove popped plop scoop
kitchen fridge freezer countertop counter worktop pantry cupboard larder shelf scale scales oven fan convection mixer
whisk spatula bag nozzle nozzles tip tips parchment paper pan pot saucepan microwave thermometer probe sieve
sieved sifting recipe recipes formula formulas calendar plan planned schedule timeline order orders customer stall
market wedding birthday party cake cupcakes biscuit biscuits bread pastry patisserie tower runny stiff gloopy gluey
splodge blob blobs dollop dollops smidge pinch pinches dash knob wobbly wrinkly chewy gooey fluffy glossy shiny matte
tasted tastes tasty yummy yum lovely gorgeous rubbish awful disaster perfect brilliant fantastic meh decent
alright good better best worse worst strong stronger strongest weak weaker weakest intense subtle overpowering bland
remind reminder alarm countdown snooze stopwatch timer timers minutes percent percentage ratio ratios proportion
rescale upscale resize doubling tripling halving leftover leftovers spare spares
undo redo revert scrap cancel oopsie typo correction meant actually anyway also instead else
ingredient ingredients allergen allergens label labels margin markup profit price pricing cost costs charge sell
sells selling sold packaging packets ribbon ribbons labour labor wages hourly euros quid
colour colours color colors coloured colored dye flavour flavours flavor flavors flavoured flavored flavouring
watery whipping simmer simmering scald lukewarm tepid thaw thawed defrosted frozen airtight tub tubs boxed
weigh weighs weighed weight weights gram grams meringue macaronage croquant craquelin feuilletine couverture
center centre rings ring core poem football joke weather news bitcoin capital president song sing story
dozen couple few several half third quarter thirds quarters whole entire
`
  .split(/\s+/)
  .filter(Boolean);
