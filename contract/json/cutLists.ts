/** A text in pieces, read from its beginning each time they are gone through; a text alone would be letters. */
export type TextPieces = Iterable<string> & object;

/** A part of a JSON text: an item of a list, or a value that is no list that is gone through. */
export interface Cut {
  /** The names that lead to the value, or to the list of the item. */
  path: readonly string[];
  /** The item's place in its list; null: no item. */
  index: number | null;
  /** The part itself; of an object or list that is gone through, an empty one. */
  text: string;
  /** The line on which it begins, counted from 1. */
  line: number;
}

/** Why a text cannot be cut: what `message` says of it, on that line. */
export class Uncut extends Error {
  readonly line: number;
  constructor(message: string, line: number) {
    super(message);
    this.line = line;
  }
}

/**
 * The parts of a JSON text that comes in pieces, in its order: of the document and of every object in it that `opens` names, each
 * value; where that is a list, each of its items. No more than one part is held at a time. What is within a part is not understood,
 * only that its brackets are as many as they should be. Throws `Uncut`.
 */
export function* cutLists(
  pieces: TextPieces,
  opens: (path: readonly string[]) => boolean,
): Generator<Cut, void> {
  const ahead = new Ahead(pieces);
  yield* value([]);
  if (!ahead.isAtEnd()) throw ahead.unreadable();

  function* value(path: readonly string[]): Generator<Cut, void> {
    ahead.passSpace();
    const { line } = ahead;
    if (ahead.is('{') && opens(path)) {
      yield { path, index: null, text: '{}', line };
      yield* members(path);
    } else if (ahead.is('[') && path.length > 0) {
      yield { path, index: null, text: '[]', line };
      yield* items(path);
    } else yield { path, index: null, text: ahead.takeValue(), line };
  }

  function* members(path: readonly string[]): Generator<Cut, void> {
    ahead.take('{');
    if (ahead.tookIf('}')) return;
    do {
      const name = ahead.takeName();
      ahead.take(':');
      yield* value([...path, name]);
    } while (ahead.tookIf(','));
    ahead.take('}');
  }

  function* items(path: readonly string[]): Generator<Cut, void> {
    ahead.take('[');
    if (ahead.tookIf(']')) return;
    let index = 0;
    do {
      ahead.passSpace();
      const { line } = ahead;
      yield { path, index, text: ahead.takeValue(), line };
      index += 1;
    } while (ahead.tookIf(','));
    ahead.take(']');
  }
}

/** The part of a text in pieces that is looked at, from a place on that only goes forward. */
class Ahead {
  readonly #pieces: Iterator<string>;
  #text = '';
  #at = 0;
  #line = 1;
  /** Where the line ends that was counted last; beyond all where that is not seen yet. */
  #lineEndAt = Number.POSITIVE_INFINITY;

  constructor(pieces: Iterable<string>) {
    this.#pieces = pieces[Symbol.iterator]();
  }

  /** That of the place, counted from 1. */
  get line(): number {
    this.#countLines();
    return this.#line;
  }

  passSpace(): void {
    do while (isSpace(this.#text.charCodeAt(this.#at))) this.#at += 1;
    while (this.#at >= this.#text.length && this.#more());
  }

  /** Whether this mark is next. */
  is(mark: string): boolean {
    return this.#text[this.#at] === mark;
  }

  /** Takes this mark, where it comes next after white space. */
  tookIf(mark: string): boolean {
    this.passSpace();
    const isNext = this.is(mark);
    if (isNext) this.#at += 1;
    return isNext;
  }

  take(mark: string): void {
    if (!this.tookIf(mark)) throw this.unreadable();
  }

  takeName(): string {
    this.passSpace();
    if (!this.is('"')) throw this.unreadable();
    const written = this.takeValue();
    try {
      return JSON.parse(written) as string;
    } catch {
      throw this.unreadable();
    }
  }

  /** The whole value that is next, as it is written. */
  takeValue(): string {
    const end = this.#valueEnd();
    if (end === this.#at) throw this.unreadable();
    const text = this.#text.slice(this.#at, end);
    this.#at = end;
    return text;
  }

  isAtEnd(): boolean {
    this.passSpace();
    return this.#at >= this.#text.length;
  }

  unreadable(): Uncut {
    return new Uncut(`is not valid JSON at line ${this.line}`, this.line);
  }

  /** Where the value that begins at the place ends. */
  #valueEnd(): number {
    let at = this.#at;
    let level = 0;
    for (;;) {
      if (at >= this.#text.length) {
        const before = this.#at;
        if (this.#more()) {
          at -= before;
          continue;
        }
        // A number, true, false or null ends with the text, anything else is cut off.
        if (level > 0) throw this.#cutOff();
        return at;
      }
      const code = this.#text.charCodeAt(at);
      if (code === quote) {
        at = this.#stringEnd(at);
        if (level === 0) return at;
        continue;
      }
      if (code === list || code === object) {
        level += 1;
        if (level > mostLevels) throw new Uncut(`is nested more than ${mostLevels} levels deep`, this.line);
      } else if (code === endOfList || code === endOfObject) {
        if (level === 0) return at;
        level -= 1;
        if (level === 0) return at + 1;
      } else if (level === 0 && (code === comma || isSpace(code))) return at;
      at += 1;
    }
  }

  /** Where the text in quotes that begins at a place ends. */
  #stringEnd(from: number): number {
    for (let at = from + 1; ; at += 1) {
      while (at >= this.#text.length) {
        const before = this.#at;
        if (!this.#more()) throw this.#cutOff();
        at -= before;
      }
      const code = this.#text.charCodeAt(at);
      if (code === quote) return at + 1;
      if (code === backslash) at += 1;
    }
  }

  /** What ends too early is told by its last line. */
  #cutOff(): Uncut {
    this.#at = this.#text.trimEnd().length;
    return this.unreadable();
  }

  /** Fetches the next piece and lets go of what lies behind; false: there is none. */
  #more(): boolean {
    const { done, value: piece } = this.#pieces.next();
    if (done) return false;
    if (this.#text.length - this.#at > mostLetters)
      throw new Uncut(`holds an entry of more than ${mostLetters} letters`, this.line);
    this.#countLines();
    this.#text = this.#text.slice(this.#at) + piece;
    this.#at = 0;
    this.#lineEndAt = this.#nextLineEnd(0);
    return true;
  }

  #countLines(): void {
    for (; this.#lineEndAt < this.#at; this.#lineEndAt = this.#nextLineEnd(this.#lineEndAt + 1))
      this.#line += 1;
  }

  #nextLineEnd(from: number): number {
    const at = this.#text.indexOf('\n', from);
    return at < 0 ? Number.POSITIVE_INFINITY : at;
  }
}

/** Nothing that the program reads is nested half as deep. */
const mostLevels = 64;
/** The plan of a large day with all that stands on its papers has a hundredth. */
const mostLetters = 64 * 1024 * 1024;

const [quote, comma, backslash, lineEnd] = [0x22, 0x2c, 0x5c, 0x0a];
const [list, endOfList, object, endOfObject] = [0x5b, 0x5d, 0x7b, 0x7d];

function isSpace(code: number): boolean {
  return code === 0x20 || code === lineEnd || code === 0x0d || code === 0x09;
}
