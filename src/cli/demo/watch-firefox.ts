import type { Connection } from './bidi';
import type { InWindow } from './firefox-window';
import type { NetworkWatch } from './watch-network';
import type { SeenError } from './watch-targets';

export interface FirefoxWatch {
  /** What a browsing context shows, as far as its events have told. */
  urlOf(context: string): string;
  /** Tells that this context is a panel. */
  isPanel(context: string): void;
  /** What contexts have said of errors so far. */
  errors: SeenError[];
}

interface Located {
  context: string;
  url: string;
}
interface Logged {
  level: string;
  text: string | null;
  source: { context?: string };
}
interface Requested {
  context: string | null;
  navigation: string | null;
  request: { url: string };
}

/** Records what tabs and panels show, say and ask for. */
export function watchContexts(connection: Connection, begins: string, network: NetworkWatch | null): FirefoxWatch {
  const urls = new Map<string, string>();
  const panels = new Set<string>();
  const errors: SeenError[] = [];
  const located = ({ context, url }: Located) => urls.set(context, url);
  const names = ['contextCreated', 'navigationStarted', 'navigationCommitted', 'historyUpdated', 'fragmentNavigated'];
  for (const name of [...names, 'domContentLoaded', 'load']) connection.on(`browsingContext.${name}`, located);
  const urlOf = (context: string) => urls.get(context) ?? '';
  const whereOf = (context: string | null | undefined) => {
    if (!context) return null;
    if (panels.has(context)) return 'panel';
    return urlOf(context).startsWith(begins) ? 'extension-page' : 'page';
  };

  connection.on('log.entryAdded', ({ level, text, source }: Logged) => {
    if (level === 'error') errors.push({ where: whereOf(source.context) ?? 'worker', text: text ?? '' });
  });
  connection.on('network.beforeRequestSent', ({ context, navigation, request }: Requested) => {
    const where = navigation ? 'page' : whereOf(context);
    if (where) network?.claim(request.url, where);
  });
  return { urlOf, isPanel: (context) => panels.add(context), errors };
}

/** As the browser's own window has it; nothing of this is public interface. */
declare const Services: { console: { getMessageArray(): unknown[] } };

/**
 * What the browser's own console has of the extension's files: the background page is no tab, and what a policy refuses
 * is told there alone.
 */
export async function consoleErrors(inWindow: InWindow, begins: string): Promise<SeenError[]> {
  const lines = (await inWindow(
    (start: string) =>
      Services.console
        .getMessageArray()
        .map((each) => each as { errorMessage?: string; sourceName?: string; flags?: number; category?: string })
        // Bit 1 of the flags is a warning, which is no error.
        .filter(
          ({ errorMessage, sourceName, flags }) =>
            errorMessage && sourceName?.startsWith(start) && !(Number(flags) & 1),
        )
        .map(({ errorMessage, sourceName, category }) => `${category}: ${errorMessage} (${sourceName})`),
    [begins],
  )) as string[];
  return lines.map((text) => ({ where: 'worker', text }));
}
