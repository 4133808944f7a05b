/** Nothing that the program reads is nested half as deep. */
const mostLevels = 64;
/** So many sets fit into one request as a season has, and no list that would fill the memory. */
export const mostValues = 250_000;

/**
 * Why a JSON text is not to be understood at all, as the end of a sentence about it; null where it may be. Told by its commas and
 * brackets alone, so that it costs neither memory nor stack; a text that is no JSON may pass.
 */
export function beyondBounds(text: string, most = mostValues, levels = mostLevels): string | null {
  let [values, level] = [1, 0];
  for (let at = 0; at < text.length; at += 1) {
    const code = text.charCodeAt(at);
    if (code === quote) {
      at = endOfString(text, at);
    } else if (code === comma) {
      values += 1;
    } else if (code === list || code === object) {
      values += 1;
      level += 1;
      if (level > levels) return `is nested more than ${levels} levels deep`;
    } else if (code === endOfList || code === endOfObject) {
      level -= 1;
    }
    if (values > most) return `holds more than ${most} values`;
  }
  return null;
}

const [quote, comma, backslash] = [0x22, 0x2c, 0x5c];
const [list, endOfList, object, endOfObject] = [0x5b, 0x5d, 0x7b, 0x7d];

/** Where the text in quotes that begins at a place ends; of one that is never closed, the end of all. */
function endOfString(text: string, from: number): number {
  for (let at = from + 1; at < text.length; at += 1) {
    const code = text.charCodeAt(at);
    if (code === quote) return at;
    if (code === backslash) at += 1;
  }
  return text.length;
}
