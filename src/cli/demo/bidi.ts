import { expressionOf } from './evaluable';

/** A connection that speaks WebDriver BiDi, as puppeteer keeps one. */
export interface Connection {
  send(method: string, params: object): Promise<{ result: unknown }>;
  on(event: string, listener: (params: never) => void): void;
}

/** A value as BiDi sends it (https://www.w3.org/TR/webdriver-bidi/#type-script-RemoteValue), or the exception instead. */
interface Remote {
  type: string;
  value?: unknown;
}
type Evaluated = { type: 'success'; result: Remote } | { type: 'exception'; exceptionDetails: { text: string } };

/** Evaluates an expression or a function with arguments in a browsing context and answers its plain value. */
export async function evaluateIn(
  connection: Connection,
  context: string,
  what: string | ((...args: never[]) => unknown),
  args: readonly unknown[] = [],
): Promise<unknown> {
  const { result } = await connection.send('script.evaluate', {
    expression: expressionOf(what, args),
    target: { context },
    awaitPromise: true,
    userActivation: true,
  });
  const evaluated = result as Evaluated;
  if (evaluated.type === 'exception') throw new Error(evaluated.exceptionDetails.text);
  return plain(evaluated.result);
}

/** Numbers that JSON has no form for come as text. */
const NUMBERS: Record<string, number> = { NaN: NaN, Infinity: Infinity, '-Infinity': -Infinity, '-0': -0 };

/** A remote value as a plain one; what has none (a node, a function) is undefined. */
export function plain({ type, value }: Remote): unknown {
  switch (type) {
    case 'null':
      return null;
    case 'number':
      return typeof value === 'string' ? NUMBERS[value] : value;
    case 'string':
    case 'boolean':
      return value;
    case 'array':
      return (value as Remote[]).map(plain);
    case 'object':
      return Object.fromEntries((value as [string, Remote][]).map(([key, each]) => [key, plain(each)]));
    default:
      return undefined;
  }
}
