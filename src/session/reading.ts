import * as z from 'zod/mini';
import type { Harvest } from '../listing/types';
import { HarvestShape } from './harvest-shape';

// Zod would probe for code generation, which our pages' content security policy reports as a violation.
z.config({ jitless: true });

/** Why a tab may not be read. */
export const Refusal = z.enum(['browser-page', 'file', 'document', 'blocked']);
export type Refusal = z.infer<typeof Refusal>;

/** Why a tab that may be read gave nothing. */
export const Failure = z.enum(['reader', 'storage']);
export type Failure = z.infer<typeof Failure>;

const whole = z.int().check(z.gte(0));
const head = {
  window: whole,
  tab: whole,
  /** Grows with every press of the button on this tab: a late answer to an earlier press is told by it. */
  number: whole,
  /** The day of the press, ISO 8601: the day that the audit judges by. */
  asOf: z.string().check(z.regex(/^\d{4}-\d{2}-\d{2}$/)),
};
/** The document that was read and the address it had then: a page can change one without the other. */
const visit = {
  document: z.string().check(z.minLength(1), z.maxLength(100)),
  address: z.string().check(z.maxLength(4_000)),
};

/** What became of one press of the button on one tab; this is what stands in the browser's session storage. */
export const Reading = z.discriminatedUnion('state', [
  z.object({ ...head, state: z.literal('reading') }),
  z.object({ ...head, state: z.literal('read'), ...visit, harvest: HarvestShape }),
  z.object({ ...head, state: z.literal('refused'), reason: Refusal }),
  z.object({ ...head, state: z.literal('left') }),
  z.object({ ...head, state: z.literal('failed'), reason: Failure }),
]);
export type Reading = z.infer<typeof Reading>;
export type ReadReading = Extract<Reading, { state: 'read' }>;

/** A stored value as a reading, or null where it is none: storage is checked like anything that comes from outside. */
export function readingFrom(value: unknown): Reading | null {
  const read = Reading.safeParse(value);
  return read.success ? read.data : null;
}

/** What the reader answered as a harvest, or null. */
export function harvestFrom(value: unknown): Harvest | null {
  const read = HarvestShape.safeParse(value);
  return read.success ? read.data : null;
}
