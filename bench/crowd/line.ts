import { Agent, type IncomingMessage, request } from 'node:http';

/** What came of a request: its status, mark and body, and how long it took from the first byte sent, ms. */
export interface Answered {
  status: number;
  mark: string | undefined;
  body: Buffer;
  ms: number;
}

/** The connections of one browser to the server; those to one place are few. */
export function line(url: string, most: number) {
  const agent = new Agent({ keepAlive: true, maxSockets: most });
  const begin = (
    method: string,
    path: string,
    headers: Record<string, string>,
    text?: string,
    signal?: AbortSignal,
  ) =>
    new Promise<IncomingMessage>((resolve, reject) => {
      const asked = request(url + path, { method, agent, headers, ...(signal && { signal }) }, resolve);
      asked.on('error', reject);
      asked.end(text);
    });
  return {
    async ask(path: string, mark?: string, signal?: AbortSignal): Promise<Answered> {
      const from = performance.now();
      return whole(
        await begin('GET', path, mark === undefined ? {} : { 'if-none-match': mark }, undefined, signal),
        from,
      );
    },
    async send(path: string, body: unknown): Promise<Answered> {
      const from = performance.now();
      const text = JSON.stringify(body);
      return whole(await begin('POST', path, { 'content-type': 'application/json' }, text), from);
    },
    /** Hears the names of the events of the server's news, until the agent is closed. */
    async listen(hear: (event: string) => void): Promise<void> {
      const news = await begin('GET', '/api/events', {});
      let rest = '';
      news.on('error', () => {});
      news.on('data', (piece: Buffer) => {
        const told = (rest + piece.toString()).split('\n\n');
        rest = told.pop() ?? '';
        for (const one of told) hear(/^event: (.*)$/m.exec(one)?.[1] ?? '');
      });
    },
    close: () => agent.destroy(),
  };
}

export type Line = ReturnType<typeof line>;

async function whole(answer: IncomingMessage, from: number): Promise<Answered> {
  const pieces: Buffer[] = [];
  for await (const piece of answer) pieces.push(piece);
  const { statusCode = 0, headers } = answer;
  return {
    status: statusCode,
    mark: headers.etag,
    body: Buffer.concat(pieces),
    ms: performance.now() - from,
  };
}
