import { describe, expect, it } from 'vitest';
import { hasSomething } from '../../../src/session/screen';
import { sampleAudit, sampleFinding, sampleScreen } from '../view/sample';

const withFindings = (...changes: Parameters<typeof sampleFinding>[0][]) =>
  sampleScreen(sampleAudit({ findings: changes.map((change) => sampleFinding(change)) }));

describe('whether there is something to read behind the button', () => {
  it('is anything that doesn’t hold, isn’t shown, or is to be minded of this advert', () => {
    for (const standing of ['disproved', 'unproved', 'caution'] as const)
      expect(hasSomething(withFindings({ standing }))).toBe(true);
    expect(hasSomething(withFindings({ standing: 'caution', check: 'caution' }))).toBe(true);
  });

  it('is neither what agrees nor what is to be minded of every advert alike', () => {
    expect(hasSomething(withFindings())).toBe(false);
    expect(hasSomething(withFindings({ standing: 'agrees' }))).toBe(false);
    expect(hasSomething(withFindings({ standing: 'caution', check: 'caution', said: [] }))).toBe(false);
    expect(hasSomething({ screen: 'waiting' })).toBe(false);
  });
});
