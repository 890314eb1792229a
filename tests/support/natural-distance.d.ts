declare module "natural/lib/natural/distance/levenshtein_distance.js" {
  const distance: {
    DamerauLevenshteinDistance(a: string, b: string, options?: { restricted?: boolean }): number;
  };
  export default distance;
}
