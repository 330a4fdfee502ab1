/**
 * Header fields that answers carry, names and values in turn, ready to be written.
 */

/** Answers of the API: read by anyone, run by nobody. */
export const API_FIELDS: readonly string[] = [
  'Access-Control-Allow-Origin',
  '*',
  'Access-Control-Expose-Headers',
  'ETag, Link, Retry-After, Data-Version, X-Request-Id, Content-Disposition',
  'Cross-Origin-Resource-Policy',
  'cross-origin',
  'Referrer-Policy',
  'no-referrer',
  'X-Content-Type-Options',
  'nosniff',
];

/** What a browser may do with an answer that it shows by itself: a picture brings its own style. */
export const API_POLICY = "default-src 'none'; style-src 'unsafe-inline'; frame-ancestors *; sandbox";

/** Pages of the site: scripts, styles and pictures of its own, and sound made by them. */
const SITE_POLICY = [
  "default-src 'none'",
  "script-src 'self'",
  "style-src 'self' 'unsafe-inline'",
  "img-src 'self' data: blob:",
  "font-src 'self' data:",
  "connect-src 'self'",
  "media-src 'self' blob:",
  "worker-src 'self' blob:",
  "manifest-src 'self'",
  "form-action 'self'",
  "base-uri 'none'",
].join('; ');

const SITE_FIELDS: Readonly<Record<string, string>> = {
  'content-security-policy': `${SITE_POLICY}; frame-ancestors 'self'`,
  'cross-origin-opener-policy': 'same-origin',
  'permissions-policy': 'camera=(), geolocation=(), payment=(), usb=()',
  'referrer-policy': 'strict-origin-when-cross-origin',
  'x-content-type-options': 'nosniff',
};

/** The same for the pages that are made to stand in a frame of somebody else's page. */
const EMBED_FIELDS: Readonly<Record<string, string>> = {
  ...SITE_FIELDS,
  'content-security-policy': `${SITE_POLICY}; frame-ancestors *`,
};

/** What goes with a page of the site. */
export function siteFields(url: string): Readonly<Record<string, string>> {
  return /^\/(?:[a-z]{2}\/)?embed\//.test(url) ? EMBED_FIELDS : SITE_FIELDS;
}

/** What a browser may ask of the API before it asks (the Fetch standard, CORS-preflight request). */
export const PREFLIGHT_FIELDS: Readonly<Record<string, string>> = {
  'access-control-allow-methods': 'GET, HEAD, POST, OPTIONS',
  'access-control-allow-headers': 'Accept, Content-Type, If-None-Match, X-Request-Id',
  'access-control-max-age': '86400',
};
