import { LAYOUT } from '../../src/pack/compiled/layout';

/** Put in by the build. */
declare const PROGRAM_VERSION: string;

/**
 * Which engine this is, for what it makes of packs and keeps: another release may check packs more strictly or read them
 * otherwise, so that it makes them ready anew.
 */
export const ENGINE = `${PROGRAM_VERSION}/${LAYOUT}`;
