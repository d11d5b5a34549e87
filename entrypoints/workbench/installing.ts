import type { InstallStep } from '../../src/session/install';
import { startThread } from '../shared/engine-thread';

/** An installation that goes on in a thread of its own. */
export interface Installing {
  /** Stops it at once; nothing of it remains. */
  cancel(): void;
}

/** Steps after which nothing more comes. */
const LAST: ReadonlySet<InstallStep['state']> = new Set(['installed', 'going-back', 'refused', 'trouble']);

/**
 * Checks files and installs them, all or none.
 * @param mayGoBack the user has said that earlier editions than those that were here are meant
 * @param tell told each step; the last one ends the thread
 */
export function installInThread(files: File[], mayGoBack: boolean, tell: (step: InstallStep) => void): Installing {
  const end = (step: InstallStep) => {
    thread.end();
    tell(step);
  };
  const thread = startThread(
    (message) => {
      if (message.type !== 'installing') return;
      const { step } = message;
      if (LAST.has(step.state)) end(step);
      else tell(step);
    },
    () => end({ state: 'trouble', trouble: 'memory' }),
  );
  thread.send({ type: 'install', files, installedAt: new Date().toISOString(), mayGoBack });
  return { cancel: () => thread.end() };
}
