/** The package has no types of its own; this much of it is used. */
declare module 'js-quantities' {
  export default function quantity(text: string): { to(unit: string): { scalar: number } };
}
