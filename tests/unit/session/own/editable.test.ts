import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import type { Pack } from '../../../../src/pack/schema/index';
import { ownTold } from '../../../../src/session/own/editable';
import type { Change } from '../../../../src/sharing/propose/changes';

const demo = JSON.parse(readFileSync('fixtures/packs/grindlewade-circle.json', 'utf8')) as Pack;
const model = demo.models![0]!;

describe('what can be changed of a pack', () => {
  it('is found by a name, and a run by a number in it', () => {
    const { found } = ownTold(demo, 'h', [], model.label);
    expect(found[0]).toMatchObject({ part: 'models', entry: model.id, name: model.label });
    expect(found[0]?.fields.map(({ field }) => field.join('.'))).toContain('facts.weight');
    expect(found[0]?.fields.map(({ field }) => field.join('.'))).not.toContain('id');
    const written = ownTold(demo, 'h', [], 'KD 439114').found;
    expect(written.map(({ entry }) => entry)).toEqual(['brindfold-post-war|KD433001|KD441000']);
    const { first, last } = demo.serials!.runs;
    const middle = String(Math.floor((Number(first[0]) + Number(last[0])) / 2));
    const runs = ownTold(demo, 'h', [], middle).found.filter(({ part }) => part === 'serials.runs');
    expect(runs.map(({ name }) => name)).toContain(`${first[0]} to ${last[0]}`);
  });

  it('stays the entry that was chosen where it is called otherwise by now, in this window or another one', () => {
    const [, other] = demo.models!;
    const change = { do: 'change', part: 'models', entry: model.id, field: ['label'], was: model.label, now: 'New' };
    const chosen = { part: 'models', entry: model.id };
    const told = ownTold(demo, 'h', [change as Change], model.label, chosen);
    expect(told.found.map(({ entry }) => entry)).not.toContain(model.id);
    expect(told.chosen).toMatchObject({ ...chosen, name: 'New' });
    expect(ownTold(demo, 'h', [], '', { ...chosen, entry: other!.id }).chosen).toMatchObject({ entry: other!.id });
    expect(ownTold(demo, 'h', [], '', { ...chosen, entry: 'gone' }).chosen).toBeNull();
  });

  it('is nothing where nothing is sought', () => {
    expect(ownTold(demo, 'h', [], '')).toMatchObject({ found: [], more: 0, changes: [], clashing: 0 });
  });
});
