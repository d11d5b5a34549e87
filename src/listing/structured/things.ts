/** A value of structured data: a text, or another thing. */
export type Value = string | Thing;

/** A node of structured data, in whatever syntax it was written. Reading it never recurses. */
export interface Thing {
  /** Type names without their vocabulary: "Product". */
  types: string[];
  /** Its identifier or address, or null. */
  id: string | null;
  /** The values of a property, in order; [] where there are none. */
  get(property: string): Value[];
}

export const texts = (thing: Thing | undefined, property: string): string[] =>
  thing ? thing.get(property).filter((value): value is string => typeof value === 'string' && value.trim() !== '') : [];

export const things = (thing: Thing | undefined, property: string): Thing[] =>
  thing ? thing.get(property).filter((value): value is Thing => typeof value !== 'string') : [];

/** The first text of the first of these properties that has one. */
export const text = (thing: Thing | undefined, ...properties: string[]): string | undefined => {
  for (const property of properties) {
    const [first] = texts(thing, property);
    if (first !== undefined) return first;
  }
  return undefined;
};

/** "https://schema.org/Product" and "schema:Product" as "Product". */
export const shortName = (type: string): string => /[^/#:]*$/.exec(type.trim().replace(/[/#]+$/, ''))?.[0] ?? '';

/** The name of a type, which some begin with a small letter: "schema:product". */
export const typeName = (type: string): string => shortName(type).replace(/^[a-z]/, (letter) => letter.toUpperCase());

export const is = (thing: Thing, types: RegExp): boolean => thing.types.some((type) => types.test(type));
