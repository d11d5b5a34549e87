import type { FromEngine, ToEngine } from '../../src/session/engine-messages';
import workerAddress from './engine.worker?worker&url';

/** The engine, running in a thread of its own. */
export interface EngineThread {
  send(message: ToEngine): void;
  /** Stops the thread at once, in the middle of whatever it does. */
  end(): void;
}

/**
 * Starts one thread with the engine. It begins by doing nothing: "packsChanged" makes it read the packs.
 * @param broken told where the thread itself fails, as when memory runs out
 */
export function startThread(tell: (message: FromEngine) => void, broken: () => void = () => {}): EngineThread {
  const worker = new Worker(ownScript(), { type: 'module' });
  worker.addEventListener('message', ({ data }: MessageEvent<FromEngine>) => tell(data));
  worker.addEventListener('error', broken);
  return { send: (message) => worker.postMessage(message), end: () => worker.terminate() };
}

interface Policy {
  createScriptURL(url: string): string;
}
interface TrustedTypes {
  createPolicy(name: string, rules: Policy): Policy;
}

/** Made once: our pages' policy of content allows each name a single time. */
let policy: Policy | undefined;

/** Our pages' policy lets no script be started from a text, save through this one door, which knows one address. */
function ownScript(): string {
  const { trustedTypes } = globalThis as { trustedTypes?: TrustedTypes };
  if (!trustedTypes) return workerAddress;
  policy ??= trustedTypes.createPolicy('engine', {
    createScriptURL(url: string) {
      if (url !== workerAddress) throw new TypeError('not a script of ours');
      return url;
    },
  });
  return policy.createScriptURL(workerAddress);
}
