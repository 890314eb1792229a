/** "scale that to 500 g", right behind a mix: it is that mix that is brought to another weight. */
export const resizing: [points: number, ...signs: string[]] = [
  12,
  "^(?:(?:so|ok|and|now|please|then|can you) )*(?:scale|resize|bring|take|cut|make) (?:it|that|this) (?:up |down |out )?(?:to|into) {weight}(?: (?:in all|in total|altogether|please|then|instead))*(?: [?])?$",
];
