import type { Knowledge, PackKnown } from '../knowledge';
import type { PackParts } from '../parts';
import type { Citation } from '../schema/about';

/** One pack as it is known: small parts are read when they are asked for. */
export class Scope implements PackKnown {
  readonly id: string;
  readonly about: PackKnown['about'];
  #citations: Map<string, string> | null = null;

  constructor(
    readonly parts: PackParts,
    readonly knowledge: Knowledge,
    readonly sealedBy: string | null,
  ) {
    this.id = parts.about.id;
    this.about = parts.about;
  }

  get citations(): Map<string, string> {
    this.#citations ??= new Map(
      Object.entries(this.about.sources ?? {}).map(([id, cited]) => [id, citationText(cited)]),
    );
    return this.#citations;
  }

  get cautions(): PackKnown['cautions'] {
    return this.parts.rest.cautions ?? [];
  }

  get wording(): PackKnown['wording'] {
    return this.parts.rest.wording ?? [];
  }

  get photographs(): PackKnown['photographs'] {
    return this.parts.rest.photographs ?? [];
  }

  get terms(): PackKnown['terms'] {
    return this.parts.rest.terms ?? [];
  }

  get rates(): PackKnown['rates'] {
    return this.parts.rest.prices?.rates ?? [];
  }

  get factors(): PackKnown['factors'] {
    return this.parts.rest.prices?.factors ?? [];
  }

  get index(): PackKnown['index'] {
    return this.parts.rest.prices?.index ?? [];
  }

  get wages(): PackKnown['wages'] {
    return this.parts.rest.prices?.wages ?? [];
  }

  /** Its own grades, then those of the packs that it extends, from near to far. */
  get grades(): PackKnown['grades'] {
    const grades: PackKnown['grades'] = [];
    for (const { parts } of this.#line())
      for (const grade of parts.rest.prices?.grades ?? [])
        if (!grades.some(({ id }) => id === grade.id)) grades.push(grade);
    return grades;
  }

  /** A reference in full: packId/entryId. */
  ref(ref: string, among: { has(ref: string): boolean }): string {
    if (ref.includes('/')) return ref;
    const own = `${this.id}/${ref}`;
    const base = this.about.extends;
    // Whether it is there is asked of a pack that extends another one alone: the answer takes all ids of a pack.
    return base !== undefined && !among.has(own) && among.has(`${base}/${ref}`) ? `${base}/${ref}` : own;
  }

  citation(id: string | null | undefined): string | null {
    const { sources } = this.about;
    return id && sources && Object.hasOwn(sources, id) ? citationText(sources[id]!) : null;
  }

  /** This pack, the one that it extends, the one that that extends: each once, whatever they say in a circle. */
  #line(): Set<Scope> {
    const line = new Set<Scope>();
    for (let pack: Scope | undefined = this; pack && !line.has(pack); ) {
      line.add(pack);
      const base: string | undefined = pack.about.extends;
      pack = this.knowledge.packs.find((one): one is Scope => one instanceof Scope && one.id === base);
    }
    return line;
  }
}

function citationText(cited: Citation): string {
  return typeof cited === 'string' ? cited : cited.text;
}
