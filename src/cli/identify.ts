import { identifyCommand } from './commands/identify';
import { runCommand } from './run-command';

await runCommand(identifyCommand);
