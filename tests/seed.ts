import fc from 'fast-check';

/**
 * What lands must not hang on luck, and a red run must be red again: the usual run draws the same examples each time.
 * The long one draws new ones at every start, and a law that breaks there prints the seed that broke it.
 */
if (!process.env.BEDPLATE_LONG) fc.configureGlobal({ ...fc.readConfigureGlobal(), seed: 20261130 });
