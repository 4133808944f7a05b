import { text } from 'node:stream/consumers';
import { inputStream } from './inputStream.ts';

/** The text of a file; of standard input where none is named, or `-`. */
export async function readInputText(file: string | undefined): Promise<string> {
  return text(await inputStream(file));
}
