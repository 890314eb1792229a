/**
 * Whether a pattern may match, as far as what is kept of it tells. The built program, which keeps patterns apart until
 * one is needed, has its own; here each is at hand and is asked itself.
 * @param _at where the pattern is kept
 * @param _byWords as far as words tell, and not how it begins: what else is to be asked costs less
 */
export const mayMatch = (_at: number, _text: string, _byWords: boolean): boolean => true;
