/**
 * The line, counted from 1, on which the value at a path of a JSON text begins; where the path leads nowhere, that of the
 * last value on the way. The text has been parsed before, so it is JSON.
 */
export function jsonLine(text: string, path: readonly PropertyKey[]): number {
  let at = afterSpace(text, 0);
  for (const step of path) {
    const inside = stepInto(text, at, step);
    if (inside === null) break;
    at = inside;
  }
  return lineAt(text, at);
}

/** The line of a place in a text, counted from 1. */
export function lineAt(text: string, at: number): number {
  let line = 1;
  for (let end = text.indexOf('\n'); end >= 0 && end < at; end = text.indexOf('\n', end + 1)) line += 1;
  return line;
}

/** Where the member of the object, or the item of the list, at a place begins; null: it has none of that name. */
function stepInto(text: string, from: number, step: PropertyKey): number | null {
  const [opened] = text[from] ?? '';
  if (opened !== '{' && opened !== '[') return null;
  let at = afterSpace(text, from + 1);
  for (let index = 0; text[at] !== '}' && text[at] !== ']'; index += 1) {
    let name: PropertyKey = index;
    if (opened === '{') {
      const end = afterString(text, at);
      name = JSON.parse(text.slice(at, end)) as string;
      at = afterSpace(text, afterSpace(text, end) + 1);
    }
    if (name === step) return at;
    at = afterSpace(text, afterValue(text, at));
    if (text[at] === ',') at = afterSpace(text, at + 1);
  }
  return null;
}

function afterSpace(text: string, from: number): number {
  let at = from;
  while (at < text.length && ' \n\r\t'.includes(text[at]!)) at += 1;
  return at;
}

function afterString(text: string, from: number): number {
  let at = from + 1;
  while (text[at] !== '"') at += text[at] === '\\' ? 2 : 1;
  return at + 1;
}

function afterValue(text: string, from: number): number {
  let at = from;
  let depth = 0;
  do {
    const char = text[at]!;
    if (char === '"') {
      at = afterString(text, at);
      continue;
    }
    if (char === '{' || char === '[') depth += 1;
    else if (char === '}' || char === ']') {
      if (depth === 0) return at;
      depth -= 1;
    } else if (depth === 0 && (char === ',' || ' \n\r\t'.includes(char))) return at;
    at += 1;
  } while (depth > 0 || (at < text.length && isPlain(text[from]!)));
  return at;
}

/** A number, true, false or null, which has no closing mark. */
function isPlain(first: string): boolean {
  return !'{["'.includes(first);
}
