import { canonicalJson } from './canonicalJson.ts';

/** Two 32-bit FNV-1a hashes of the JSON with its keys in order, one of them read backwards, in hexadecimal. */
export function fingerprint(value: unknown): string {
  const text = canonicalJson(value);
  let forwards = 0x811c9dc5;
  let backwards = 0x811c9dc5;
  for (let i = 0; i < text.length; i++) {
    forwards = Math.imul(forwards ^ text.charCodeAt(i), 0x01000193);
    backwards = Math.imul(backwards ^ text.charCodeAt(text.length - 1 - i), 0x01000193);
  }
  return [forwards, backwards].map((hash) => (hash >>> 0).toString(16).padStart(8, '0')).join('');
}
