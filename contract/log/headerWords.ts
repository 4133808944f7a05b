/** A unit that a header can name. */
export type HeaderUnit = 'kg' | 'lb' | 'm' | 'cm' | 'mm' | 'in' | 's' | 'min' | 'mps';

/**
 * A header's words without its unit, in small letters: `Weight (lbs)` is `weight` in `lb`, `start_height_m` `start height`
 * in `m`, `Kilos on bar` `on bar` in `kg`.
 */
export function headerWords(header: string): { words: string; unit: HeaderUnit | null } {
  const plain = header
    .normalize('NFKD')
    .replaceAll(/\p{M}/gu, '')
    .toLowerCase()
    .replaceAll(/\bm\s*\/\s*s\b/g, 'mps');
  const words = plain.match(/[\p{L}\p{N}]+/gu) ?? [];
  const unit = unitOf(words.at(-1) ?? '');
  if (unit === null) {
    const front = unitOf(words[0] ?? '');
    if (front === 'kg' || front === 'lb') return { words: words.slice(1).join(' '), unit: front };
    return { words: words.join(' '), unit };
  }
  const rest = words.slice(0, -1);
  // `Weight in kg`
  if (rest.at(-1) === 'in') rest.pop();
  return { words: rest.length === 0 ? unit : rest.join(' '), unit };
}

function unitOf(word: string): HeaderUnit | null {
  const found = Object.entries(spellings).find(([, words]) => words.includes(word));
  return found ? (found[0] as HeaderUnit) : null;
}

const spellings: Record<HeaderUnit, readonly string[]> = {
  kg: ['kg', 'kgs', 'kilo', 'kilos', 'kilograms', 'kilogramm'],
  lb: ['lb', 'lbs', 'pound', 'pounds', 'livres', 'libras'],
  m: ['m', 'metres', 'meters'],
  cm: ['cm'],
  mm: ['mm'],
  in: ['in', 'inch', 'inches'],
  s: ['s', 'sec', 'secs', 'seconds'],
  min: ['min', 'mins', 'minutes'],
  mps: ['mps'],
};
