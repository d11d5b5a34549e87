import type { Knowledge, PackKnown } from '../knowledge';
import type { Citation } from '../schema/about';
import type { Pack } from '../schema/index';

/** How one pack's references and source ids are read. */
export class Scope {
  readonly id: string;
  readonly known: PackKnown;

  constructor(
    readonly pack: Pack,
    knowledge: Knowledge,
    sealedBy: string | null,
  ) {
    this.id = pack.about.id;
    this.known = {
      id: this.id,
      about: pack.about,
      citations: new Map(Object.entries(pack.about.sources ?? {}).map(([id, cited]) => [id, citationText(cited)])),
      cautions: pack.cautions ?? [],
      wording: pack.wording ?? [],
      photographs: pack.photographs ?? [],
      terms: pack.terms ?? [],
      grades: pack.prices?.grades ?? [],
      rates: pack.prices?.rates ?? [],
      sealedBy,
    };
    knowledge.packs.push(this.known);
  }

  /** A reference in full: packId/entryId. */
  ref(ref: string, among: { has(ref: string): boolean }): string {
    if (ref.includes('/')) return ref;
    const own = `${this.id}/${ref}`;
    const base = this.pack.about.extends;
    return !among.has(own) && base !== undefined && among.has(`${base}/${ref}`) ? `${base}/${ref}` : own;
  }

  citation(id: string | null | undefined): string | null {
    return id ? (this.known.citations.get(id) ?? null) : null;
  }
}

function citationText(cited: Citation): string {
  return typeof cited === 'string' ? cited : cited.text;
}
