import { expect, it } from 'vitest';
import { sourceOf } from '../../../src/audit/source-of';
import { demo } from './support/demo';

const cited = demo.packs.find(({ citations }) => citations.size > 0)!;
const [id, citation] = [...cited.citations][0]!;

it('is the pack’s own citation of it', () => expect(sourceOf(demo, cited.id, id)).toBe(citation));

it.each([
  ['an entry that gives none', cited.id, undefined],
  ['a source that the pack doesn’t know', cited.id, 'no-such-source'],
  ['a pack that isn’t there', 'no-such-pack', id],
])('%s has none', (_, pack, source) => expect(sourceOf(demo, pack, source)).toBeNull());
