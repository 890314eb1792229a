/** The one factory of mathjs that is used: its exported parser, which its own types leave out. */
declare module "mathjs/number" {
  export const createParse: (scope: Record<string, unknown>) => (expression: string) => unknown;
}
