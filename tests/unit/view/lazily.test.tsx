// @vitest-environment jsdom
import { expect, it } from 'vitest';
import { lazily } from '../../../src/view/lazily';
import { stage } from './rendered';

const { root, show } = stage();

it('shows nothing until the part is there, then the part, which is fetched once', async () => {
  let asked = 0;
  const Part = lazily(async () => {
    asked += 1;
    return ({ n }: { n: number }) => <b>{n}</b>;
  });
  show(
    <>
      <Part n={1} />
      <Part n={2} />
    </>,
  );
  expect(root.textContent).toBe('');
  await Part.fetched();
  await new Promise((resolve) => setTimeout(resolve));
  expect(root.textContent).toBe('12');
  show(<Part n={3} />);
  expect(root.textContent).toBe('3');
  expect(asked).toBe(1);
});
