/**
 * Request ids: the client's own where it sent a harmless one, else one of this process.
 */
import { randomBytes } from 'node:crypto';

const HARMLESS = /^[\w.:-]{1,64}$/;

const PREFIX = randomBytes(5).toString('hex');
let count = 0;

/** The id of a request. */
export function requestId(given: string | readonly string[] | undefined): string {
  if (typeof given === 'string' && HARMLESS.test(given)) return given;
  count += 1;
  return `${PREFIX}-${count.toString(36)}`;
}
