import type { FromEngine, ToEngine } from '../../src/session/engine-messages';
import type { Wanted } from '../../src/session/events';
import type { ReadReading } from '../../src/session/reading';
import workerAddress from './engine.worker?worker&url';

export interface Engine {
  /** Asks for an audit; one that is already asked for is not asked for again. */
  audit(wanted: Wanted, reading: ReadReading): void;
  packsChanged(): void;
}

/** Starts the engine in a thread of its own. */
export function startEngine(emit: (event: FromEngine) => void): Engine {
  const worker = new Worker(ownScript(workerAddress), { type: 'module' });
  worker.addEventListener('message', ({ data }: MessageEvent<FromEngine>) => emit(data));
  const send = (message: ToEngine) => worker.postMessage(message);
  let last = '';
  return {
    audit(wanted, { harvest, asOf }) {
      const asked = JSON.stringify(wanted);
      if (asked === last) return;
      last = asked;
      send({ type: 'audit', wanted, harvest, asOf });
    },
    packsChanged: () => send({ type: 'packsChanged' }),
  };
}

interface TrustedTypes {
  createPolicy(name: string, rules: { createScriptURL(url: string): string }): { createScriptURL(url: string): string };
}

/** Our pages' policy lets no script be started from a text, save through this one door, which knows one address. */
function ownScript(address: string): string {
  const { trustedTypes } = globalThis as { trustedTypes?: TrustedTypes };
  if (!trustedTypes) return address;
  const rules = {
    createScriptURL(url: string) {
      if (url !== workerAddress) throw new TypeError('not a script of ours');
      return url;
    },
  };
  return trustedTypes.createPolicy('engine', rules).createScriptURL(address);
}
