/** What the user gave can't be used. The message is the one line that the user reads. */
export class BadInput extends Error {}
