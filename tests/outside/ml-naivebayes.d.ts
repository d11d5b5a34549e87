/** The package has no types of its own; this much of it is used. */
declare module 'ml-naivebayes' {
  export class MultinomialNB {
    train(set: number[][], labels: number[]): void;
    predict(set: number[][]): number[];
    toJSON(): { name: string; priorProbability: unknown; conditionalProbability: unknown };
    static load(model: { name: string; priorProbability: number[][]; conditionalProbability: unknown }): MultinomialNB;
  }
}
