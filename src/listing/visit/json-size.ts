import type { Box, Line } from '../types';

// How many bytes a value takes as JSON, with the comma after it. Of lines and boxes it is added up without writing them
// out: a page has thousands.

const encoder = new TextEncoder();

export function bytesOf(value: unknown): number {
  const text = JSON.stringify(value);
  return (ASCII.test(text) ? text.length : encoder.encode(text).length) + 1;
}

const ASCII = /^[\u0000-\u007f]*$/;

/** \b, \t, \n, \f and \r. */
const SHORT_ESCAPES = [8, 9, 10, 12, 13];
/** Printed as they stand, one byte each. */
const PLAIN = /^[ !#-[\]-~]*$/;

function bytesOfText(text: string): number {
  if (PLAIN.test(text)) return text.length + 2;
  let bytes = 2;
  for (let at = 0; at < text.length; at++) {
    const code = text.charCodeAt(at);
    if (code < 0x20) bytes += SHORT_ESCAPES.includes(code) ? 2 : 6;
    else if (code < 0x80) bytes += code === 0x22 || code === 0x5c ? 2 : 1;
    else if (code < 0x800) bytes += 2;
    else if (code < 0xd800 || code > 0xdfff) bytes += 3;
    else if (isPair(text, at)) {
      bytes += 4;
      at++;
    }
    // Half a pair is written as an escape.
    else bytes += 6;
  }
  return bytes;
}

const isPair = (text: string, at: number): boolean =>
  text.charCodeAt(at) < 0xdc00 && (text.charCodeAt(at + 1) & 0xfc00) === 0xdc00;

/** Of an integer. */
function digitsOf(number: number): number {
  let digits = number < 0 ? 2 : 1;
  for (let rest = Math.abs(number); rest >= 10; rest /= 10) digits++;
  return digits;
}

export function bytesOfLine({ text, box, runs }: Line): number {
  let bytes = '{"text":,"box":},'.length + bytesOfText(text) + digitsOf(box);
  if (!runs) return bytes;
  bytes += ',"runs":[]'.length + Math.max(0, runs.length - 1);
  for (const { at, flags, hint } of runs) {
    bytes += '{"at":,"flags":}'.length + digitsOf(at) + digitsOf(flags);
    if (hint !== undefined) bytes += ',"hint":'.length + bytesOfText(hint);
  }
  return bytes;
}

export function bytesOfBox({ tag, parent, from, to, hint, level }: Box): number {
  return (
    '{"tag":,"parent":,"from":,"to":,"hint":},'.length +
    bytesOfText(tag) +
    digitsOf(parent) +
    digitsOf(from) +
    digitsOf(to) +
    bytesOfText(hint) +
    (level === undefined ? 0 : ',"level":'.length + digitsOf(level))
  );
}
