import { generateKeyPairSync, randomBytes, sign } from 'node:crypto';

// A certificate for this machine's loopback address that nobody vouches for, made anew for each run, so that no key lies
// among the tests. In DER, as X.509 has it (RFC 5280, section 4.1); ECDSA with SHA-256 on P-256 (RFC 5758).

function tagged(tag: number, ...contents: Uint8Array[]): Buffer {
  const content = Buffer.concat(contents);
  const { length } = content;
  const long = length > 0xff ? [0x82, length >> 8, length & 0xff] : [0x81, length];
  return Buffer.concat([Buffer.from([tag, ...(length < 0x80 ? [length] : long)]), content]);
}

const sequence = (...contents: Uint8Array[]) => tagged(0x30, ...contents);
const set = (...contents: Uint8Array[]) => tagged(0x31, ...contents);
const octets = (...contents: Uint8Array[]) => tagged(0x04, ...contents);
const bits = (content: Uint8Array) => tagged(0x03, Buffer.from([0]), content);
/** An object identifier as its bytes. */
const oid = (hex: string) => tagged(0x06, Buffer.from(hex, 'hex'));

const COMMON_NAME = '550403';
const SUBJECT_ALT_NAME = '551d11';
const BASIC_CONSTRAINTS = '551d13';
const ECDSA_WITH_SHA256 = '2a8648ce3d040302';

/** UTCTime, "YYMMDDHHMMSSZ". */
function time(date: Date): Buffer {
  const digits = date.toISOString().replace(/\D/g, '');
  return tagged(0x17, Buffer.from(`${digits.slice(2, 14)}Z`));
}

/** A key and its certificate, both PEM, good for 127.0.0.1 and "localhost" from yesterday to the day after tomorrow. */
export function selfSigned(): { key: string; cert: string } {
  const { privateKey, publicKey } = generateKeyPairSync('ec', { namedCurve: 'P-256' });
  const algorithm = sequence(oid(ECDSA_WITH_SHA256));
  const name = sequence(set(sequence(oid(COMMON_NAME), tagged(0x0c, Buffer.from('localhost')))));
  const alternatives = sequence(tagged(0x82, Buffer.from('localhost')), tagged(0x87, Buffer.from([127, 0, 0, 1])));
  const extensions = sequence(
    sequence(oid(SUBJECT_ALT_NAME), octets(alternatives)),
    sequence(
      oid(BASIC_CONSTRAINTS),
      tagged(0x01, Buffer.from([0xff])),
      octets(sequence(tagged(0x01, Buffer.from([0xff])))),
    ),
  );
  // A positive number: its highest bit is nought.
  const serial = randomBytes(8);
  serial[0] = (serial.readUInt8(0) & 0x7f) | 0x40;
  const day = 86_400_000;
  const body = sequence(
    tagged(0xa0, tagged(0x02, Buffer.from([2]))),
    tagged(0x02, serial),
    algorithm,
    name,
    sequence(time(new Date(Date.now() - day)), time(new Date(Date.now() + 2 * day))),
    name,
    publicKey.export({ type: 'spki', format: 'der' }),
    tagged(0xa3, extensions),
  );
  const certificate = sequence(body, algorithm, bits(sign('sha256', body, privateKey)));
  const lines = certificate.toString('base64').match(/.{1,64}/g) ?? [];
  return {
    key: privateKey.export({ type: 'pkcs8', format: 'pem' }).toString(),
    cert: ['-----BEGIN CERTIFICATE-----', ...lines, '-----END CERTIFICATE-----', ''].join('\n'),
  };
}
