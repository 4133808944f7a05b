import { closeSync, openSync, readSync } from 'node:fs';
import type { TextPieces } from '#contract/json/cutLists.ts';

/**
 * The text of a file in pieces, read anew each time they are gone through, so that no more of it is held than a piece. Whoever reads it
 * stands still meanwhile.
 */
export function filePieces(path: string): TextPieces {
  return {
    *[Symbol.iterator]() {
      const file = openSync(path, 'r');
      const bytes = Buffer.allocUnsafe(pieceBytes);
      const decoder = new TextDecoder();
      try {
        for (;;) {
          const read = readSync(file, bytes);
          const text = decoder.decode(bytes.subarray(0, read), { stream: read > 0 });
          if (text !== '') yield text;
          if (read === 0) return;
        }
      } finally {
        closeSync(file);
      }
    },
  };
}

const pieceBytes = 1024 * 1024;
