// @vitest-environment jsdom
import { act } from 'preact/test-utils';
import { expect, it } from 'vitest';
import { goAndSeeTexts as texts } from '../../../src/text/catalogue/go-and-see';
import { GoAndSee } from '../../../src/view/panel/GoAndSee';
import { stage } from './rendered';
import { sampleListing } from './sample';

const { root, show, part } = stage();
const ABOUT = 'https://market.example/1';

it('makes a sheet of the advert that is shown, and says so where it could not be kept', async () => {
  const asked: unknown[] = [];
  let kept = true;
  const makeSheet = async (...given: unknown[]) => {
    asked.push(given);
    return kept;
  };
  show(<GoAndSee about={ABOUT} listing={sampleListing} makeSheet={makeSheet} />);
  await act(async () => part('make-sheet')?.click());
  expect(asked).toEqual([[ABOUT, sampleListing]]);
  expect(root.textContent).not.toContain(texts.failed);
  kept = false;
  await act(async () => part('make-sheet')?.click());
  expect(root.textContent).toContain(texts.failed);
});

it('makes none in a private window, and says why', () => {
  show(<GoAndSee about={ABOUT} listing={sampleListing} makeSheet={null} />);
  expect(part('make-sheet')).toBeNull();
  expect(root.textContent).toContain(texts.private);
});
