import type { Entries, PackParts } from '../parts';
import type { Pack } from '../schema/index';
import { tabulate } from '../serials/run-table';
import { namesOf } from './names';
import { phrasesOf } from './phrases';

/** A pack made ready to be asked, by itself. Only for packs that `parsePack` gave. */
export function partsOf(pack: Pack): PackParts {
  const { $schema: _, about, families = [], models = [], types = [], serials, ...rest } = pack;
  return {
    ...{ about, rest, families: entries(families), models: entries([...models, ...types]), brands: models.length },
    ...{ phrases: phrasesOf(pack), names: namesOf(pack), runs: serials ? tabulate(serials) : null },
  };
}

function entries<T extends { id: string }>(list: readonly T[]): Entries<T> {
  const ids = list.map(({ id }) => id);
  return { ids: { length: ids.length, at: (place) => ids[place]!, all: () => ids }, at: (place) => list[place]! };
}
