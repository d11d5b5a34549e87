import { auditCommand } from './commands/audit';
import { runCommand } from './run-command';
import { withSealedPacks } from './sealed-packs';

await runCommand(withSealedPacks(auditCommand));
