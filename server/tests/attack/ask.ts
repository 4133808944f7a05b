/** What a server said. */
export interface Said {
  ok: boolean;
  status: number;
  text: string;
  /** Each address answers with another shape. */
  json: ReturnType<JSON['parse']>;
}

export async function ask(url: string, method: string, path: string, body?: unknown): Promise<Said> {
  const headers = { 'content-type': 'application/json' };
  const init = body === undefined ? { method } : { method, headers, body: JSON.stringify(body) };
  const answer = await fetch(`${url}/api${path}`, init);
  const text = await answer.text();
  return { ok: answer.ok, status: answer.status, text, json: text === '' ? null : JSON.parse(text) };
}
