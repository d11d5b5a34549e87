import { priceCommand } from './commands/price';
import { runCommand } from './run-command';

await runCommand(priceCommand);
