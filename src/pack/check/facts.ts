import { packTexts as texts } from '../../text/catalogue/pack';
import { factList } from '../facts';
import { whatIs } from '../issues';
import type { Attribute } from '../schema/attributes';
import type { Pack } from '../schema/index';
import type { Facts, FactValue, When } from '../schema/models';
import type { Scheme } from '../schema/serials';
import { formText, numberInTable } from '../serial-form';
import { shown } from '../shown';
import type { Lookup } from './lookup';
import { checkRange, checkSpan } from './order';

/** Facts name attributes and give values that these can have; their conditions can be met. */
export class FactCheck {
  readonly #lookup: Lookup;
  readonly #schemes: Map<string, Scheme>;

  constructor(pack: Pack, lookup: Lookup) {
    this.#lookup = lookup;
    this.#schemes = new Map(pack.serials?.schemes.map((scheme) => [scheme.id, scheme]));
  }

  facts(path: string, facts: Facts | undefined): void {
    for (const [ref, fact] of Object.entries(facts ?? {})) {
      const at = `${path}.${ref}`;
      this.#lookup.ref(at, ref, 'attributes');
      for (const one of factList(fact)) {
        this.value(at, ref, one.is);
        this.when(`${at}.when`, one.when);
        this.#lookup.source(at, one.source);
      }
    }
  }

  value(path: string, ref: string, is: FactValue): void {
    const attribute = this.#lookup.attribute(ref);
    const wrong = attribute && this.#unfit(is, attribute);
    if (wrong) this.#lookup.add(path, whatIs(wrong.value), wrong.expected);
    else if (typeof is === 'object' && !Array.isArray(is)) checkRange(path, is, this.#lookup);
  }

  when(path: string, when: When | undefined): void {
    checkSpan(`${path}.made`, when?.made, this.#lookup);
    when?.serials?.forEach(({ scheme: id, first, last }, i) => {
      const at = `${path}.serials[${i}]`;
      this.#lookup.ref(`${at}.scheme`, id, 'schemes');
      const scheme = this.#schemes.get(id);
      if (scheme) this.#run(at, scheme, first, last);
    });
  }

  #run(path: string, scheme: Scheme, first: string, last: string): void {
    const ends = { first: numberInTable(scheme, first), last: numberInTable(scheme, last) };
    for (const end of ['first', 'last'] as const)
      if (ends[end] === null)
        this.#lookup.add(
          `${path}.${end}`,
          whatIs(end === 'first' ? first : last),
          texts.expected.schemeForm(formText(scheme)),
        );
    if (ends.first !== null && ends.last !== null && ends.first > ends.last)
      this.#lookup.add(path, texts.what.order(shown(first), shown(last)), texts.expected.ordered);
  }

  /** The value that the attribute can't have, with what it expects; null where it can. */
  #unfit(is: FactValue, attribute: Attribute): { value: unknown; expected: string } | null {
    switch (attribute.kind) {
      case 'choice': {
        const values = this.#lookup.valuesOf(attribute);
        const wrong = (Array.isArray(is) ? is : [is]).find((one) => typeof one !== 'string' || !values.has(one));
        return wrong === undefined ? null : { value: wrong, expected: texts.expected.valueOf(attribute.id) };
      }
      case 'yes-no':
        return typeof is === 'boolean' ? null : { value: is, expected: texts.expected.yesNoOf(attribute.id) };
      case 'measure': {
        const measured = typeof is === 'number' || (typeof is === 'object' && !Array.isArray(is));
        return measured ? null : { value: is, expected: texts.expected.measureOf(attribute.id) };
      }
    }
  }
}
