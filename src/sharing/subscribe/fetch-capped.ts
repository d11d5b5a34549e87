/**
 * Why nothing came: unreachable (no network, no such host, a bad certificate, or the browser doesn't let us); moved (the
 * host sends elsewhere); missing; busy (it asks for patience); refused (any other status); too-large; stalled; not-text.
 */
export type FetchProblem =
  | 'unreachable'
  | 'moved'
  | 'missing'
  | 'busy'
  | 'refused'
  | 'too-large'
  | 'stalled'
  | 'not-text';

export type Fetched = { ok: true; text: string; bytes: number } | { ok: false; problem: FetchProblem };

export interface FetchOptions {
  /** In place of the browser's own, for tests. */
  fetch?: typeof globalThis.fetch;
  /** Milliseconds without a single byte after which it is given up. */
  patience?: number;
  /** Told how many bytes, decoded, have come so far. */
  progress?: (bytes: number) => void;
}

const PATIENCE = 30_000;

/**
 * Nothing of who asks goes along: no cookies, no referrer, and nothing that was remembered from the last time, as the
 * validators of a cache are, by which a host could know its visitors again. A redirect is not followed: who gave leave
 * for one host gave it for no other.
 */
const PRIVATELY: RequestInit = {
  method: 'GET',
  credentials: 'omit',
  referrerPolicy: 'no-referrer',
  cache: 'no-store',
  redirect: 'manual',
};

/**
 * Fetches a text of at most so many bytes, as they are after any compression of the way: a small answer that unpacks to
 * a huge one is cut off where it grows too large. Never throws.
 */
export async function fetchCapped(address: string, most: number, options: FetchOptions = {}): Promise<Fetched> {
  const { fetch = globalThis.fetch, patience = PATIENCE, progress = () => {} } = options;
  const giveUp = new AbortController();
  let stalled = false;
  let timer: ReturnType<typeof setTimeout> | undefined;
  const heard = () => {
    clearTimeout(timer);
    timer = setTimeout(() => {
      stalled = true;
      giveUp.abort();
    }, patience);
  };
  heard();
  try {
    const response = await fetch(address, { ...PRIVATELY, signal: giveUp.signal });
    const problem = problemOf(response);
    if (problem) return { ok: false, problem };
    return await read(response, most, (bytes) => {
      heard();
      progress(bytes);
    });
  } catch {
    return { ok: false, problem: stalled ? 'stalled' : 'unreachable' };
  } finally {
    clearTimeout(timer);
    // What is still on its way is not wanted any more.
    giveUp.abort();
  }
}

function problemOf({ ok, status, type }: Response): FetchProblem | null {
  if (type === 'opaqueredirect' || (status >= 300 && status < 400)) return 'moved';
  if (status === 404 || status === 410) return 'missing';
  if (status === 429 || status === 503) return 'busy';
  return ok ? null : 'refused';
}

async function read(response: Response, most: number, told: (bytes: number) => void): Promise<Fetched> {
  const decoder = new TextDecoder('utf-8', { fatal: true, ignoreBOM: true });
  const decode = (piece?: Uint8Array) => {
    try {
      return piece ? decoder.decode(piece, { stream: true }) : decoder.decode();
    } catch {
      return null;
    }
  };
  const parts: string[] = [];
  let bytes = 0;
  const reader = response.body?.getReader();
  for (let piece = await reader?.read(); piece && !piece.done; piece = await reader?.read()) {
    bytes += piece.value.byteLength;
    if (bytes > most) return { ok: false, problem: 'too-large' };
    const part = decode(piece.value);
    if (part === null) return { ok: false, problem: 'not-text' };
    parts.push(part);
    told(bytes);
  }
  const last = decode();
  return last === null ? { ok: false, problem: 'not-text' } : { ok: true, text: parts.join('') + last, bytes };
}
