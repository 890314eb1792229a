/** Who comes and eats: numbers of them are no numbers of macarons. */
export const people: ReadonlySet<string> = new Set(
  `guest guests people person persons visitor visitors lady ladies woman women man men family families boy boys girl girls kid kids child
  children grandchild grandchildren grandson grandsons granddaughter granddaughters grandkids son sons daughter
  daughters sis bro hubby sister sisters brother brothers aunt aunts uncle uncles cousin cousins niece nieces nephew nephews friend
  friends neighbour neighbours neighbor neighbors couple couples husband husbands wife wives mum mums dad dads baby
  babies twins colleague colleagues student students pupil pupils adult adults grownups bridesmaids teachers parents`
    .split(/\s+/)
    .filter(Boolean),
);
