/**
 * What may stand before a food on a list and says nothing of what it is made of: its state, its cut, where it is from.
 * Any other word there may name an allergen, and is told as not known.
 */
export const plainQualifiers: ReadonlySet<string> = new Set(
  `a an the of some my our your his her their this that these those about approx approximately around roughly ca circa
  nearly almost just only exactly good nice best great quality proper real pure plain extra very really super more less
  other another same fresh freshly soft softened melted molten cold cool cooled chilled warm warmed hot room temperature
  unsalted salted lightly slightly semi sweet sweetened unsweetened bitter bittersweet sour tart ripe raw dry dried roasted
  toasted blanched peeled skinned shelled pitted unshelled baked cooked boiled whipped beaten sifted sieved strained
  chopped finely coarsely roughly ground crushed grated ground sliced flaked slivered diced cubed cut broken whole halved
  fine coarse thick thin smooth crunchy creamy liquid runny firm large big small medium mini little tiny organic bio
  natural homemade home made own bought shop store local free range free-range fairtrade premium finest standard regular
  normal ordinary basic simple usual high low full half reduced fat percent heavy light dark white black brown green red
  blue pink yellow orange purple golden blond blonde aged old new left leftover leftovers remaining spare separated room
  french irish belgian swiss danish german english british american italian sicilian spanish greek turkish iranian
  european japanese mexican madagascan tahitian california californian brand
  grams gram worth bit bits pieces piece chunks chips drops sticks stick cube cubes block blocks powder powdered freeze
  frozen defrosted thawed reduced concentrated strong mild tinned canned jarred bottled squeezed granulated caster icing
  fluffy and or with x pasteurised pasteurized carton large weighed total each single double instant clear edible food`
    .split(/\s+/)
    .filter(Boolean),
);
