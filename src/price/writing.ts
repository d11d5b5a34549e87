import type { Knowledge } from '../pack/knowledge';
import { localText } from '../pack/local-text';
import type { Writing } from './observation-fields';

/** A model as it can be written, with the grades of its pack. */
export interface ModelNamed {
  ref: string;
  label: string;
  isType: boolean;
  names: string[];
  grades: { id: string; label: string }[];
}

/** Every model that can be named, for forms and tables. */
export function modelsNamed({ models, packs }: Knowledge): ModelNamed[] {
  const grades = new Map(
    packs.map((pack) => [pack.id, pack.grades.map(({ id, label }) => ({ id, label: localText(label, 'en') }))]),
  );
  return [...models.values()].map(({ ref, label, isType, pack, def }) => ({
    ...{ ref, label, isType, grades: grades.get(pack) ?? [] },
    names: def.names.flatMap((name) => (typeof name === 'string' ? [name] : name.weak ? [] : [name.text])),
  }));
}

/** Reads models and grades as they are written: by ref, label, name or id, whatever the case. */
export function writingOf(models: readonly ModelNamed[], today: string): Writing {
  const byWord = new Map<string, Set<string>>();
  const add = (word: string, ref: string): void => {
    const key = word.trim().toLowerCase();
    byWord.set(key, (byWord.get(key) ?? new Set()).add(ref));
  };
  for (const { ref, label, names } of models)
    for (const word of [ref, ref.split('/')[1]!, label, ...names]) add(word, ref);
  const gradesOf = new Map(models.map(({ ref, grades }) => [ref, grades]));
  return {
    modelOf(written) {
      const refs = byWord.get(written.trim().toLowerCase());
      return refs?.size === 1 ? [...refs][0]! : null;
    },
    gradeOf(written, model) {
      const word = written.trim().toLowerCase();
      const grade = gradesOf.get(model)?.find(({ id, label }) => id === word || label.toLowerCase() === word);
      return grade?.id ?? null;
    },
    today,
  };
}
