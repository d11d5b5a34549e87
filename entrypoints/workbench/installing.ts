import type { InstallStep } from '../../src/session/install';
import { startThread } from '../shared/engine-thread';

/** An installation that goes on in a thread of its own. */
export interface Installing {
  /** Stops it at once; nothing of it remains. */
  cancel(): void;
}

/** Checks files and installs them, all or none. @param tell told each step; the last one ends the thread. */
export function installInThread(files: File[], tell: (step: InstallStep) => void): Installing {
  const end = (step: InstallStep) => {
    thread.end();
    tell(step);
  };
  const thread = startThread(
    (message) => {
      if (message.type !== 'installing') return;
      const { step } = message;
      if (step.state === 'installed' || step.state === 'refused' || step.state === 'trouble') end(step);
      else tell(step);
    },
    () => end({ state: 'trouble', trouble: 'memory' }),
  );
  thread.send({ type: 'install', files, installedAt: new Date().toISOString() });
  return { cancel: () => thread.end() };
}
