/** How one feels about a batch that went wrong: said with a fault it asks for help, though nothing is asked. */
export const upset =
  "(?:fuming|livid|gutted|furious|raging|heartbroken|devastated|distraught|despairing|cross|mad|angry|annoyed|upset|sad|crushed|disappointed|disheartened|frustrated|fed up|sick of it|at my wits end|at a loss|in tears|in bits|in despair|crying|sobbing|beside myself|so done|not happy|i give up|i could (?:cry|scream|weep)|hate (?:this|it|them)|what a waste|want to cry|wanna cry|losing my mind|losing it|had enough|broken hearted)";
