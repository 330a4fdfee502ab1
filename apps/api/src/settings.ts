/**
 * Settings of the server, from the environment.
 */

/** How much memory answers are kept in where nothing else is said. */
const USUAL_KEPT_MEGABYTES = 6;
const MEGABYTE = 1024 * 1024;
export const USUAL_KEPT_BYTES = USUAL_KEPT_MEGABYTES * MEGABYTE;

/** What the environment says. */
export interface Settings {
  readonly host: string;
  readonly port: number;
  /** Where clients find it: what samples in the reference are written for. */
  readonly origin: string;
  /** From which level on is logged, one JSON object a line; `silent` for nothing. */
  readonly logLevel: string;
  /** What one client may ask in a minute; 0 for anything. */
  readonly requestsPerMinute: number;
  readonly redisUrl: string | undefined;
  readonly trustedProxies: number;
  readonly mostKeptBytes: number;
  /** How many processes share the port. */
  readonly workers: number;
  /** How long the server says that it is not ready before it takes no more. */
  readonly stopDelayMs: number;
}

const LOG_LEVELS = ['trace', 'debug', 'info', 'warn', 'error', 'fatal', 'silent'] as const;

/**
 * Reads the settings.
 * @returns the settings, or what is wrong with them in one sentence
 */
export function readSettings(env: Readonly<Record<string, string | undefined>>): Settings | string {
  const wrong: string[] = [];
  const whole = (name: string, usual: number, to: number): number => {
    const text = env[name] ?? '';
    if (text === '') return usual;
    if (/^\d{1,9}$/.test(text) && Number(text) <= to) return Number(text);
    wrong.push(`${name} is "${text}"; expected a whole number from 0 to ${to}.`);
    return usual;
  };
  const logLevel = env['LOG_LEVEL'] || 'warn';
  if (!LOG_LEVELS.some((level) => level === logLevel)) {
    wrong.push(`LOG_LEVEL is "${logLevel}"; expected one of ${LOG_LEVELS.join(', ')}.`);
  }
  const redisUrl = env['REDIS_URL'] || undefined;
  if (redisUrl !== undefined && !/^(redis|valkey)s?:\/\/./.test(redisUrl)) {
    wrong.push(`REDIS_URL is "${redisUrl}"; expected an address such as redis://127.0.0.1:6379.`);
  }
  const port = whole('PORT', 8080, 65_535);
  const origin = env['SITE_ORIGIN'] || `http://127.0.0.1:${port}`;
  if (!/^https?:\/\/[^\s/?#'"]+$/.test(origin)) {
    wrong.push(`SITE_ORIGIN is "${origin}"; expected an origin such as https://example.org.`);
  }
  const settings: Settings = {
    host: env['HOST'] || '127.0.0.1',
    port,
    origin,
    logLevel,
    requestsPerMinute: whole('REQUESTS_PER_MINUTE', 6000, 100_000_000),
    redisUrl: redisUrl?.replace(/^valkey/, 'redis'),
    trustedProxies: whole('TRUSTED_PROXIES', 0, 10),
    mostKeptBytes: whole('KEPT_MEGABYTES', USUAL_KEPT_MEGABYTES, 1024) * MEGABYTE,
    workers: Math.max(1, whole('WORKERS', 1, 64)),
    stopDelayMs: whole('STOP_DELAY_MS', 0, 60_000),
  };
  return wrong[0] ?? settings;
}
