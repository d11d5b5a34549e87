// The one door to the engine for the command line, tests and benchmarks; the only file that re-exports.
export { audit } from './audit/audit';
export { explain } from './audit/explain/explain';
export { collect } from './listing/collect';
export { readListing } from './listing/read';
export { settle } from './listing/settle';
export { compile } from './pack/compile';
export { parsePack } from './pack/parse';
export { readMoney } from './quantity/money';
