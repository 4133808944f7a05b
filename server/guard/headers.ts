import { secureHeaders } from 'hono/secure-headers';

/** Headers that let our own bundled page run and nothing else: no foreign script, frame, font or request. */
export const headers = secureHeaders({
  contentSecurityPolicy: {
    defaultSrc: ["'none'"],
    scriptSrc: ["'self'"],
    styleSrc: ["'self'"],
    fontSrc: ["'self'"],
    imgSrc: ["'self'", 'data:'],
    connectSrc: ["'self'"],
    workerSrc: ["'self'"],
    manifestSrc: ["'self'"],
    formAction: ["'self'"],
    baseUri: ["'none'"],
    frameAncestors: ["'none'"],
  },
  crossOriginResourcePolicy: 'same-origin',
  crossOriginOpenerPolicy: 'same-origin',
  referrerPolicy: 'no-referrer',
  xFrameOptions: 'DENY',
  // Plain http on this machine: a promise of https would lock the coach out.
  strictTransportSecurity: false,
});
