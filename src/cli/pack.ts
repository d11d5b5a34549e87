import { packCommand } from './commands/pack';
import { runCommand } from './run-command';

await runCommand(packCommand);
