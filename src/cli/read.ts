import { readCommand } from './commands/read';
import { runCommand } from './run-command';

await runCommand(readCommand);
