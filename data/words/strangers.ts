/** Words of matters that this isn't for. One of them and no sure sign of the trade beside it: the question is declined. */
export const strangers: ReadonlySet<string> = new Set(
  `weather forecast rain sunny windy rainy foggy frosty drizzly biking cycling jogging commute commuting poem song lyrics joke jokes riddle story novel  film films movie movies  tv telly tyre tyres
  flyer flyers leaflet leaflets poster posters brochure banner dragon unicorn tattoo welsh irish gaelic mandarin football soccer cricket tennis basketball  league team score election president minister government
  politics war news bus buses train trains flight flights  airport hotel hotels taxi car cars bike bicycle traffic 
   directions dog   cat cats puppy kitten vet vaccine pet pets hair haircut dentist doctor nurse hospital
  medicine appointment email emails mail     internet online website wifi password computer
  laptop printer  python javascript crypto bank     loan mortgage taxes tax insurance
  love dating horoscope zodiac  planet moon  rocket homework essay
  exam  geography capital  language translate translation     
  lasagne lasagna pizza burger steak chicken beef pork lamb  curry soup salad sandwich bread sourdough pasta
  potato potatoes  noodles omelette  waffle brownie brownies  muffin muffins scone scones
  lawn  plumber washing machine dishwasher vacuum phone smartphone   fence camping holiday holidays vacation beach
  seaside mountain gym workout yoga  diet calories calorie meaning life  prayer church
  hallway bedroom bathroom shoe shoes sock socks shirt shirts skirt trousers jumper scarf sofa curtains carpet wallpaper lipstick ferry hamster budgie
  hardware library bookshop pharmacy pharmacist florist museum cinema theatre theater stadium lottery footy rugby`
    .split(/\s+/)
    .filter(Boolean),
);
