import { expect, test } from 'vitest';
import { signPrescription } from './signPrescription.ts';

const signed = (document: unknown) =>
  signPrescription({ id: 'p', dayId: 'd', number: 1, solvedAt: '2026-11-25T06:12:00Z', document });

test('a fingerprint is the head of the SHA-256 that any other program finds for the plan with its keys in order', () => {
  // GNU coreutils' sha256sum of {"bands":[{"a":1,"b":2}],"barKg":60}, without a line's end.
  expect(signed({ barKg: 60, bands: [{ b: 2, a: 1 }] }).fingerprint).toBe('2c4190');
});

test('it is the same however the plan was stored, and another as soon as a lifter or a figure changes place', () => {
  const { fingerprint } = signed({ a: [1, 2], b: { c: 3, d: null } });
  expect(signed({ b: { d: null, c: 3 }, a: [1, 2] }).fingerprint).toBe(fingerprint);
  expect(signed({ a: [2, 1], b: { c: 3, d: null } }).fingerprint).not.toBe(fingerprint);
  expect(signed({ a: [1, 2], b: { c: 3.000001, d: null } }).fingerprint).not.toBe(fingerprint);
});
