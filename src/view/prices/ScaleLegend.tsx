import type { ComponentChildren } from 'preact';
import type { PriceSeen } from '../../audit/types';
import { priceScaleTexts as texts } from '../../text/catalogue/price-scale';
import { BracketShape, SeenShape, ThisShape } from './marks';

interface Props {
  marks: readonly PriceSeen[];
  withThis: boolean;
  beyond: boolean;
}

/** What each shape on the scale means: only those that stand there. */
export function ScaleLegend({ marks, withThis, beyond }: Props) {
  const kinds = (['asked', 'paid'] as const).filter((kind) => marks.some((one) => one.kind === kind));
  return (
    <figcaption class="soft">
      {withThis && (
        <Meaning word={texts.this}>
          <ThisShape />
        </Meaning>
      )}
      {kinds.map((kind) => (
        <Meaning key={kind} word={texts[kind]}>
          <SeenShape kind={kind} />
        </Meaning>
      ))}
      <Meaning word={texts.usual}>
        <g transform="translate(-4 0) scale(.6)">
          <BracketShape opens />
        </g>
        <g transform="translate(4 0) scale(.6)">
          <BracketShape opens={false} />
        </g>
      </Meaning>
      {marks.some(({ counted }) => counted < 0.9) && <span>{texts.paler}</span>}
      {beyond && <span>{texts.beyond}</span>}
    </figcaption>
  );
}

function Meaning({ word, children }: { word: string; children: ComponentChildren }) {
  return (
    <span class="scale-meaning">
      <svg width="18" height="18" viewBox="-9 -9 18 18" aria-hidden="true">
        {children}
      </svg>{' '}
      {word}
    </span>
  );
}
