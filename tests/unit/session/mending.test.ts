import { expect, it, vi } from 'vitest';
import { DamagedError } from '../../../src/pack/compiled/pages';
import { mending } from '../../../src/session/mending';

/** Damaged packs can't be asked. */
const ask = (packs: string) => {
  if (packs === 'damaged') throw new DamagedError();
  return `answer from ${packs}`;
};

it('leaves sound packs alone', async () => {
  const mend = vi.fn();
  expect(await mending('sound', mend, ask)).toEqual({ ok: true, value: 'answer from sound' });
  expect(mend).not.toHaveBeenCalled();
});

it('asks once more where packs were damaged, at once or later on', async () => {
  const mend = async () => ({ ok: true, value: 'mended' }) as const;
  expect(await mending('damaged', mend, ask)).toEqual({ ok: true, value: 'answer from mended' });
  const later = async (packs: string) => ask(await packs);
  expect(await mending('damaged', mend, later)).toEqual({ ok: true, value: 'answer from mended' });
});

it('tells why they can’t be mended', async () => {
  const mend = async () => ({ ok: false, trouble: 'denied' }) as const;
  expect(await mending('damaged', mend, ask)).toEqual({ ok: false, trouble: 'denied' });
});

it('passes on whatever else goes wrong, and damage after mending', async () => {
  const wrong = () => {
    throw new RangeError('other');
  };
  await expect(mending('sound', vi.fn(), wrong)).rejects.toThrow(RangeError);
  await expect(mending('damaged', async () => ({ ok: true, value: 'damaged' }), ask)).rejects.toThrow(DamagedError);
});
