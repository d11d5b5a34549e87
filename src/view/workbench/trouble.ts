import type { Trouble } from '../../keep/trouble';

/**
 * What keeps the workbench from doing something. memory: it ran out during a check; gone: what was shown is no longer
 * kept; broken: a mistake of ours.
 */
export type BenchTrouble = Trouble | 'memory' | 'gone' | 'broken';
