import type { RecordClash } from '#contract/changes/RecordClash.ts';

/** What the server refused, in its own sentence; `field` names the wrong field where there is one. */
export class RequestError extends Error {
  override name = 'RequestError';
  readonly status: number;
  readonly field: string | null;
  /** Of a change of what somebody else changed meanwhile. */
  readonly clash: RecordClash | null;
  constructor(status: number, message: string, field: string | null, clash: RecordClash | null = null) {
    super(message);
    this.status = status;
    this.field = field;
    this.clash = clash;
  }
}

/** Asks the club's server; answers its JSON or throws a `RequestError` with one plain sentence. */
export async function request<T>(
  method: 'GET' | 'POST' | 'PATCH' | 'DELETE',
  path: string,
  body?: unknown,
  signal?: AbortSignal,
): Promise<T> {
  return read<T>(await send(method, path, body, signal));
}

/** Reads what is asked for again and again as the club changes: the server does not send again what it sent before. */
export async function requestAgain<T>(path: string, signal?: AbortSignal): Promise<T> {
  const before = sent.get(path);
  const answer = await send('GET', path, undefined, signal, before && { 'if-none-match': before.mark });
  if (answer.status === notModified && before) return before.said as T;
  const said = await read<T>(answer);
  sent.delete(path);
  const mark = answer.headers.get('etag');
  if (mark !== null) sent.set(path, { mark, said });
  const [oldest] = sent.keys();
  if (sent.size > mostSent && oldest !== undefined) sent.delete(oldest);
  return said;
}

/** What the server sent last, by path, with its mark of it. */
const sent = new Map<string, { mark: string; said: unknown }>();
/** More than any screen asks for. */
const mostSent = 30;
/** RFC 9110, 15.4.5. */
const notModified = 304;

async function read<T>(answer: Response): Promise<T> {
  if (answer.ok) return (answer.status === 204 ? undefined : await answer.json()) as T;
  const said: unknown = await answer.json().catch(() => null);
  const { error = null, clash = null } = isErrorBody(said) ? said : {};
  throw new RequestError(
    answer.status,
    error?.message ?? `The club's server answered ${answer.status} and gave no reason.`,
    error?.field ?? null,
    clash,
  );
}

async function send(
  method: string,
  path: string,
  body: unknown,
  signal: AbortSignal | undefined,
  headers: Record<string, string> = {},
): Promise<Response> {
  const options: RequestInit = {
    method,
    headers: { accept: 'application/json', ...headers },
    signal: signal ?? null,
  };
  if (body !== undefined) {
    const text = JSON.stringify(body);
    options.body = text;
    // A small change is still sent when the page is left at that moment; browsers allow this up to 64 kB.
    options.keepalive = text.length < keptAliveTo;
    options.headers = { accept: 'application/json', 'content-type': 'application/json' };
  }
  try {
    return await fetch(path, options);
  } catch (error) {
    if (signal?.aborted) throw error;
    throw new RequestError(
      0,
      "The club's server does not answer: start it again, nothing saved is lost.",
      null,
    );
  }
}

const keptAliveTo = 60_000;

interface ErrorBody {
  error: { message: string; field?: string };
  clash?: RecordClash;
}

function isErrorBody(said: unknown): said is ErrorBody {
  if (typeof said !== 'object' || said === null || !('error' in said)) return false;
  const { error } = said;
  return (
    typeof error === 'object' && error !== null && 'message' in error && typeof error.message === 'string'
  );
}
