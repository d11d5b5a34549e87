import { priceCommand } from './commands/price';
import { runCommand } from './run-command';
import { withSealedPacks } from './sealed-packs';

await runCommand(withSealedPacks(priceCommand));
