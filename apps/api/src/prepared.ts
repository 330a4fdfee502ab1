/**
 * Answers ready to be sent: body, validator and header fields, packed copies of the body beside it.
 */
import { createHash } from 'node:crypto';
import { promisify } from 'node:util';
import { brotliCompress, constants, gzip } from 'node:zlib';
import limitTo from 'p-limit';
import type { Coding } from './negotiation.ts';

/**
 * A body in one coding, and the header fields that go with it, names and values in turn. A text is a string of
 * its bytes, a character each (latin1): it is written in one piece with the header fields.
 */
export interface Packed {
  readonly body: Buffer | string;
  readonly fields: readonly string[];
}

/** An answer that can be sent at once. */
export interface Prepared {
  readonly status: number;
  /** What `304 Not Modified` carries. */
  readonly kept: readonly string[];
  readonly etag: string;
  readonly identity: Packed;
  /** Whether the body is worth packing. */
  readonly isPackable: boolean;
  /** Made when first wanted. */
  br?: Packed;
  gzip?: Packed;
}

/** What an answer is made of. */
export interface Raw {
  readonly status: number;
  readonly type: string;
  readonly body: string | Uint8Array;
  readonly cacheControl: string;
  /** Other header fields, names and values in turn. */
  readonly fields: readonly string[];
}

/** Shorter bodies fit in one packet as they are. */
const SHORTEST_PACKED = 1200;

/** A packer takes a quarter of a megabyte for itself, and more of them at once than threads gain nothing. */
const packing = limitTo(2);

/** Room for longer texts is not kept. */
const MOST_KEPT_ROOM = 1 << 20;

const packBrotli = promisify(brotliCompress);
const packGzip = promisify(gzip);

/** Prepares an answer; its validator is the digest of its body. */
export function prepare({ status, type, body, cacheControl, fields }: Raw): Prepared {
  const bytes = inBytes(body);
  const etag = createHash('sha1')
    .update(bytes as string, 'latin1')
    .digest('base64url')
    .slice(0, 20);
  const isPackable = bytes.length >= SHORTEST_PACKED;
  const shared = ['Cache-Control', cacheControl, ...fields];
  const own = ['Content-Type', type, ...shared];
  return {
    status,
    etag,
    kept: shared,
    isPackable,
    identity: packed(bytes, etag, own, undefined),
  };
}

/** An answer in a coding, packed now if it never was. Packing goes on beside what else is done. */
export async function pack(prepared: Prepared, coding: Exclude<Coding, 'identity'>): Promise<Packed> {
  const known = prepared[coding];
  if (known) return known;
  const { body, fields } = prepared.identity;
  const bytes = await packing(() =>
    typeof body === 'string' ? packText(body, coding) : packBytes(body, coding),
  );
  const made = packed(ofOwn(bytes), `${prepared.etag}-${coding}`, withoutLength(fields), coding);
  prepared[coding] = made;
  return made;
}

/** How many bytes an answer takes, its packed copies included. */
export function sizeOf({ identity, br, gzip: zipped }: Prepared): number {
  return identity.body.length + (br?.body.length ?? 0) + (zipped?.body.length ?? 0) + OVERHEAD_BYTES;
}

/** Header fields and objects around a body, about. */
const OVERHEAD_BYTES = 1500;

/** Whether a client has what there is: `If-None-Match` in any coding of it (RFC 9110, section 13.1.2). */
export function isUnchanged(ifNoneMatch: string, etag: string): boolean {
  if (ifNoneMatch.trim() === '*') return true;
  return ifNoneMatch.split(',').some((item) => {
    const tag = item.trim().replace(/^W\//, '');
    return tag === `"${etag}"` || tag === `"${etag}-br"` || tag === `"${etag}-gzip"`;
  });
}

/** The bytes of a body. */
export function bytesOf({ body }: Packed): Buffer {
  return typeof body === 'string' ? Buffer.from(body, 'latin1') : body;
}

/** Where texts are written as bytes, for as many as are at once; used again. */
const desks: Buffer[] = [];

/** A desk with room for so many bytes: what is made for one answer alone would lie about until the garbage is collected. */
function takeDesk(length: number): Buffer {
  const free = desks.pop();
  return free && free.length >= length ? free : Buffer.allocUnsafeSlow(roomFor(length));
}

function leaveDesk(desk: Buffer): void {
  if (desk.length <= MOST_KEPT_ROOM) desks.push(desk);
}

async function packText(text: string, coding: Exclude<Coding, 'identity'>): Promise<Buffer> {
  const desk = takeDesk(text.length);
  desk.write(text, 'latin1');
  try {
    return await packBytes(desk.subarray(0, text.length), coding);
  } finally {
    leaveDesk(desk);
  }
}

function packBytes(bytes: Buffer, coding: Exclude<Coding, 'identity'>): Promise<Buffer> {
  // Our texts shrink to less than a fourth, so that one piece of memory of that size holds most of them.
  const chunkSize = Math.max(1024, Math.ceil(bytes.length / 4));
  if (coding === 'gzip') return packGzip(bytes, { chunkSize, level: 6 });
  const params = { [constants.BROTLI_PARAM_QUALITY]: 5, [constants.BROTLI_PARAM_SIZE_HINT]: bytes.length };
  return packBrotli(bytes, { chunkSize, params });
}

/** Room in powers of two, so that it does for others, too. */
function roomFor(length: number): number {
  return 2 ** Math.ceil(Math.log2(Math.max(length, 1 << 14)));
}

/** Text as its bytes in UTF-8, a character each; other bytes as they are. */
function inBytes(body: string | Uint8Array): Buffer | string {
  if (typeof body !== 'string') return Buffer.from(body.buffer, body.byteOffset, body.byteLength);
  const length = Buffer.byteLength(body);
  if (length === body.length) return body;
  const desk = takeDesk(length);
  desk.write(body);
  const text = desk.toString('latin1', 0, length);
  leaveDesk(desk);
  return text;
}

/** A copy that holds on to nothing else: a packer's output is cut from a far larger piece of memory. */
function ofOwn(bytes: Buffer): Buffer {
  const copy = Buffer.allocUnsafeSlow(bytes.length);
  bytes.copy(copy);
  return copy;
}

function packed(
  body: Buffer | string,
  etag: string,
  fields: readonly string[],
  coding: string | undefined,
): Packed {
  return {
    body,
    fields: [
      ...fields.filter((_, at) => fields[at - (at % 2)] !== 'ETag'),
      'ETag',
      `"${etag}"`,
      ...(coding === undefined ? [] : ['Content-Encoding', coding]),
      'Content-Length',
      String(body.length),
    ],
  };
}

function withoutLength(fields: readonly string[]): readonly string[] {
  return fields.filter((_, at) => fields[at - (at % 2)] !== 'Content-Length');
}
