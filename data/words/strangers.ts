/** Words of matters that this isn't for. One of them and no sure sign of the trade beside it: the question is declined. */
export const strangers: ReadonlySet<string> = new Set(
  `weather forecast rain sunny poem song lyrics joke jokes riddle story novel book film films movie movies series tv
  football soccer rugby cricket tennis basketball match league team score election president minister government
  politics war news bus buses train trains flight flights plane airport hotel hotels taxi car cars bike traffic road
  map directions dog dogs dogs cat cats puppy kitten vet vaccine pet pets hair haircut dentist doctor nurse hospital
  medicine appointment email emails mail phone call text message facebook internet website wifi password computer
  laptop printer code python javascript bitcoin crypto stock stocks shares bank loan mortgage taxes tax insurance
  husband wife boyfriend girlfriend love dating horoscope zodiac star planet moon space rocket homework essay maths
  exam history geography capital country language translate translation spanish french german italian latin
  lasagne lasagna pizza burger steak chicken beef pork lamb fish curry soup salad sandwich bread sourdough pasta
  potato potatoes rice noodles omelette pancake waffle brownie brownies cheesecakes muffin muffins scone scones
  lawn garden plumber washing machine dishwasher vacuum cleaning paint fence camping holiday holidays vacation beach
  seaside mountain gym workout yoga running diet calories calorie meaning life god prayer church`
    .split(/\s+/)
    .filter(Boolean),
);
