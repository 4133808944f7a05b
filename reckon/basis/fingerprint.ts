/** Two 32-bit FNV-1a hashes of the JSON with its keys in order, one of them read backwards, in hexadecimal. */
export function fingerprint(value: unknown): string {
  const text = JSON.stringify(value, (_, part: unknown) =>
    typeof part === 'object' && part !== null && !Array.isArray(part)
      ? Object.fromEntries(Object.entries(part).sort(([a], [b]) => (a < b ? -1 : 1)))
      : part,
  );
  let forwards = 0x811c9dc5;
  let backwards = 0x811c9dc5;
  for (let i = 0; i < text.length; i++) {
    forwards = Math.imul(forwards ^ text.charCodeAt(i), 0x01000193);
    backwards = Math.imul(backwards ^ text.charCodeAt(text.length - 1 - i), 0x01000193);
  }
  return [forwards, backwards].map((hash) => (hash >>> 0).toString(16).padStart(8, '0')).join('');
}
