import { createReadStream, createWriteStream } from 'node:fs';
import { stat } from 'node:fs/promises';
import { type IncomingMessage, request } from 'node:http';
import { text } from 'node:stream/consumers';
import { pipeline } from 'node:stream/promises';

/** Puts the answer of an address into a file, as a browser downloads it; how many bytes it has. */
export async function download(url: string, path: string): Promise<number> {
  const answer = await answered(url, 'GET', {}, null);
  await pipeline(answer, createWriteStream(path));
  const { size } = await stat(path);
  if (answer.statusCode !== 200) throw new Error(`${url} answers ${answer.statusCode}.`);
  return size;
}

/** Sends a file as a browser does, piece by piece; what is answered. */
export async function upload(url: string, type: string, path: string): Promise<string> {
  const answer = await answered(url, 'POST', { 'content-type': type }, path);
  return `${answer.statusCode}, ${(await text(answer)).slice(0, 80)}`;
}

/** Without the limit that fetch sets to the time of an answer. */
function answered(url: string, method: string, headers: Record<string, string>, file: string | null) {
  return new Promise<IncomingMessage>((resolve, reject) => {
    const asked = request(url, { method, headers }, resolve).once('error', reject);
    if (file === null) asked.end();
    else createReadStream(file).pipe(asked);
  });
}
