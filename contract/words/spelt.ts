/** A value as JSON, to be named in a sentence: no longer than a line, however long or deep it is. */
export function spelt(value: unknown): string {
  const text = JSON.stringify(shallow(value)) ?? String(value);
  return text.length > SPELLED ? `${text.slice(0, SPELLED - 3)}...` : text;
}

const SPELLED = 60;
const LEVELS = 3;

/** As much of a value as could be spelled: brackets nested without end would else use up the stack. */
function shallow(value: unknown, levels = LEVELS): unknown {
  if (typeof value === 'string') return value.slice(0, SPELLED);
  if (typeof value !== 'object' || value === null) return value;
  if (levels === 0) return '...';
  if (Array.isArray(value)) return value.slice(0, SPELLED).map((item) => shallow(item, levels - 1));
  const known = Object.entries(value).slice(0, SPELLED);
  return Object.fromEntries(known.map(([name, item]) => [name, shallow(item, levels - 1)]));
}
