/** A CPU profile as the devtools protocol gives it (Profiler.Profile), as far as it is used here. */
export interface CpuProfile {
  nodes: {
    id: number;
    callFrame: { functionName: string; lineNumber: number; columnNumber: number };
    children?: number[];
  }[];
  samples: number[];
  /** Microseconds since the sample before. */
  timeDeltas: number[];
}

export interface Profile {
  /** Share of the time by the part of the reader in which it was spent, most first. */
  parts: [part: string, share: number][];
  /** Share of the time by function, without what it calls, most first. */
  functions: [name: string, share: number][];
  /** The same with what it calls. */
  wholes: [name: string, share: number][];
}

/** Parts by the file that a function stands in; what is shared counts for the part that calls it. */
const PARTS: [part: string, files: RegExp][] = [
  ['structured data', /visit\/(?:items|rdfa|state|addresses|pictures)\.ts$/],
  ['text extraction', /visit\/(?:lines|lining|line|text)[\w-]*\.ts$/],
  ['cutting to size', /visit\/(?:trim|json-size)\.ts$/],
  ['walk', /visit\//],
  ['the rest of collect', /listing\/collect[\w-]*\.ts$/],
  ['readability', /Readability/],
  ['settle: sections of the page', /listing\/page\/|sources\/page\.ts$/],
  ['settle: structured data', /listing\/(?:sources|structured)\//],
  ['settle: deciding', /listing\/(?:decide\/|settle|candidates)/],
];
const STYLE = /^(?:checkVisibility|getComputedStyle|getPropertyValue)$/;
/** Used all over: they belong to whoever calls them. */
const SHARED = /visit\/(?:sight|names|layout)[\w-]*\.ts$|listing\/(?:tidy|types)\.ts$|src\/(?:text|quantity)\//;

/** Where a function stands before the bundler came, by its place in the script; "" where nobody knows. */
export type FileOf = (line: number, column: number) => string;

/**
 * Where the time of a profile went. Only what runs below a function of the measured script counts.
 */
export function told(profile: CpuProfile, fileAt: FileOf): Profile {
  const parent = new Map<number, number>();
  const byId = new Map(profile.nodes.map((node) => [node.id, node]));
  for (const { id, children = [] } of profile.nodes) for (const child of children) parent.set(child, id);

  const files = new Map<number, string>();
  const fileOf = (id: number): string => {
    const { lineNumber, columnNumber } = byId.get(id)!.callFrame;
    let file = files.get(id);
    if (file === undefined) {
      // `new Function` sets two lines of its own before the script.
      file = lineNumber >= 2 ? fileAt(lineNumber - 2, columnNumber) : '';
      files.set(id, file);
    }
    return file;
  };
  const known = new Map<number, string | null>();
  const partOf = (id: number): string | null => {
    const before = known.get(id);
    if (before !== undefined) return before;
    const { functionName } = byId.get(id)!.callFrame;
    const its = fileOf(id);
    const own = SHARED.test(its) ? undefined : PARTS.find(([, files]) => files.test(its))?.[0];
    const above = parent.get(id);
    const around = above === undefined ? null : partOf(above);
    const part = STYLE.test(functionName) && around ? 'computed style' : (own ?? around);
    known.set(id, part);
    return part;
  };

  const nameless = (id: number): string => byId.get(id)!.callFrame.functionName || '(nameless)';
  /** Null for what the browser does itself. */
  const nameOf = (id: number): string | null => {
    const its = fileOf(id);
    return its === '' ? null : `${nameless(id)} (${its.replace(/(?:\.\.\/)*src\/(?:listing\/)?/, '')})`;
  };
  const parts = new Map<string, number>();
  const functions = new Map<string, number>();
  const wholes = new Map<string, number>();
  let whole = 0;
  const add = (to: Map<string, number>, key: string, time: number) => to.set(key, (to.get(key) ?? 0) + time);
  for (const [index, id] of profile.samples.entries()) {
    const part = partOf(id);
    if (part === null) continue;
    const time = profile.timeDeltas[index + 1] ?? 0;
    whole += time;
    add(parts, part, time);
    add(functions, nameOf(id) ?? `${nameless(id)} (in ${nameOf(parent.get(id) ?? id) ?? part})`, time);
    const above = new Set<string>();
    for (let at: number | undefined = id; at !== undefined; at = parent.get(at)) above.add(nameOf(at) ?? '');
    for (const name of above) if (name !== '') add(wholes, name, time);
  }
  const shares = (of: Map<string, number>): [string, number][] =>
    [...of].map(([key, time]): [string, number] => [key, time / whole]).sort((a, b) => b[1] - a[1]);
  return { parts: shares(parts), functions: shares(functions), wholes: shares(wholes) };
}
