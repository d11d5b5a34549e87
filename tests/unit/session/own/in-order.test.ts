import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import type { Pack } from '../../../../src/pack/schema/index';
import { openLayered } from '../../../../src/session/open-layered';
import { issueWith } from '../../../../src/session/own/in-order';
import type { Change } from '../../../../src/sharing/propose/changes';

const demo = JSON.parse(readFileSync('fixtures/packs/grindlewade-circle.json', 'utf8')) as Pack;
const { first, last, scheme, year } = demo.serials!.runs;
const run = { do: 'change', part: 'serials.runs', entry: `${scheme[0]}|${first[0]}|${last[0]}` } as const;
const was = year![0]!;
const corrected = (now: number): Change => ({ ...run, field: ['year'], was, now });

it('one correction that leaves no pack in order would silence all of them, and is told before', () => {
  const label: Change = { do: 'change', part: 'models', entry: demo.models![0]!.id, field: ['label'], now: 'Another' };
  const named = { ...label, was: demo.models![0]!.label } as Change;
  const labelOf = (changes: readonly Change[]) => {
    const { models } = openLayered(JSON.stringify(demo), { changes: changes as never }).parts!;
    return models.at(models.ids.all().indexOf(label.entry)).label;
  };
  expect(labelOf([named])).toBe('Another');
  expect(labelOf([named, corrected(77_777)])).not.toBe('Another');
  expect(issueWith(demo, [named], corrected(77_777))).toMatchObject({ path: expect.stringContaining('year') });
  expect(issueWith(demo, [named], corrected(was + 1))).toBeNull();
});

it('a correction in the place of one of the same field is tried without that', () => {
  const saw = { ...corrected(was + 2), was: was + 1 } as Change;
  expect(issueWith(demo, [corrected(was + 1)], saw)).toBeNull();
  expect(issueWith(demo, [corrected(was + 1)], { ...saw, now: 77_777 } as Change)).not.toBeNull();
});
