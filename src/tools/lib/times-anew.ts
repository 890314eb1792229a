/** "and treble it?", behind "double it": so many times what there was before either, and no six times. */
const supposes =
  /^(?:(?:and|or|so|ok|but|well|then|hm|,) )*(?:(?:what|how) (?:about|if)|if|and|or|and if)\b(?!.*\b(?:again|that|those|of (?:it|them)|once more|on top)\b).*\b(?:it|this|them)\b|^(?:(?:and|or|so|ok|but|well|,) )*(?:(?:what|how) about|and|or) [a-z]+ing (?:it|this|them)\b/;

/** Another factor that is only supposed. The same one said again, and a half, go on from what the last one made. */
export const timesAnew = (text: string, factor: number, before: number | undefined): boolean =>
  before !== undefined && factor > 1 && factor !== before && supposes.test(text);
