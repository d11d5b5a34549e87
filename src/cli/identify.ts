import { identifyCommand } from './commands/identify';
import { runCommand } from './run-command';
import { withSealedPacks } from './sealed-packs';

await runCommand(withSealedPacks(identifyCommand));
