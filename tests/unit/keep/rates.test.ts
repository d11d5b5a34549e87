import 'fake-indexeddb/auto';
import { describe, expect, it } from 'vitest';
import { openKeep } from '../../../src/keep/open';
import { putRate, readRates, removeRate } from '../../../src/keep/rates';
import { keptRate, rateOfKept } from '../../../src/session/kept-rates';

const RATE = { from: 'EUR', to: 'GBP', rate: 0.86, date: '2026-03' };
const AT = '2026-11-25T10:00:00.000Z';

describe('exchange rates that the user has typed in', () => {
  it('come back as they were kept, the newest first, and go', async () => {
    const opened = await openKeep(`rates-${Math.random()}`);
    if (!opened.ok) throw new Error(opened.trouble);
    const db = opened.value;
    const [older, newer] = [keptRate(RATE, 'a', AT), keptRate({ ...RATE, date: '2026-06-02', rate: 0.9 }, 'b', AT)];
    for (const rate of [older, newer]) expect(await putRate(db, rate)).toMatchObject({ ok: true });
    const read = await readRates(db);
    expect(read).toEqual({ ok: true, value: [newer, older] });
    expect(read.ok && rateOfKept(read.value[1]!)).toEqual(RATE);
    await removeRate(db, 'b');
    expect(await readRates(db)).toEqual({ ok: true, value: [older] });
    db.close();
  });
});
