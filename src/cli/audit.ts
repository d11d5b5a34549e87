import { auditCommand } from './commands/audit';
import { runCommand } from './run-command';

await runCommand(auditCommand);
