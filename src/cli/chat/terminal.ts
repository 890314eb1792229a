/**
 * Comes before ink is loaded: ink hides everything that changes when CI is set in the environment, and looks only
 * once, at its start. Whoever opens the chat sits before a terminal, so that doesn't hold here.
 */
process.env.CI = "false";
