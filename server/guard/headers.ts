import { createMiddleware } from 'hono/factory';

/** What our own bundled page may do: no foreign script, frame, font or request. */
const policy = [
  "default-src 'none'",
  "script-src 'self'",
  "style-src 'self'",
  "font-src 'self'",
  "img-src 'self' data:",
  "connect-src 'self'",
  "worker-src 'self'",
  "manifest-src 'self'",
  "form-action 'self'",
  "base-uri 'none'",
  "frame-ancestors 'none'",
].join('; ');

/** Plain http on this machine: a promise of https (Strict-Transport-Security) would lock the coach out. */
const named: readonly (readonly [string, string])[] = [
  ['Content-Security-Policy', policy],
  ['Cross-Origin-Resource-Policy', 'same-origin'],
  ['Cross-Origin-Opener-Policy', 'same-origin'],
  ['Origin-Agent-Cluster', '?1'],
  ['Referrer-Policy', 'no-referrer'],
  ['X-Content-Type-Options', 'nosniff'],
  ['X-DNS-Prefetch-Control', 'off'],
  ['X-Download-Options', 'noopen'],
  ['X-Frame-Options', 'DENY'],
  ['X-Permitted-Cross-Domain-Policies', 'none'],
  ['X-XSS-Protection', '0'],
];

/** Headers that keep foreign pages out. They are named before anything answers: an answer that is there would be built once more. */
export const headers = createMiddleware((c, next) => {
  for (const [name, value] of named) c.header(name, value);
  return next();
});
