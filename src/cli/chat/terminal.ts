/**
 * Comes before ink is loaded: ink hides everything that changes when CI is set in the environment, its color
 * library drops all color then, and both look only once, at their start. Whoever opens the chat sits before a
 * terminal, so that doesn't hold here.
 */
delete process.env.CI;
delete process.env.CONTINUOUS_INTEGRATION;
