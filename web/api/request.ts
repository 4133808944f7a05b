/** What the server refused, in its own sentence; `field` names the wrong field where there is one. */
export class RequestError extends Error {
  override name = 'RequestError';
  readonly status: number;
  readonly field: string | null;
  constructor(status: number, message: string, field: string | null) {
    super(message);
    this.status = status;
    this.field = field;
  }
}

/** Asks the club's server; answers its JSON or throws a `RequestError` with one plain sentence. */
export async function request<T>(
  method: 'GET' | 'POST' | 'PUT' | 'DELETE',
  path: string,
  body?: unknown,
  signal?: AbortSignal,
): Promise<T> {
  const answer = await send(method, path, body, signal);
  if (answer.ok) return (answer.status === 204 ? undefined : await answer.json()) as T;
  const said: unknown = await answer.json().catch(() => null);
  const error = isErrorBody(said) ? said.error : null;
  throw new RequestError(
    answer.status,
    error?.message ?? `The club's server answered ${answer.status} and gave no reason.`,
    error?.field ?? null,
  );
}

async function send(
  method: string,
  path: string,
  body: unknown,
  signal: AbortSignal | undefined,
): Promise<Response> {
  const options: RequestInit = { method, headers: { accept: 'application/json' }, signal: signal ?? null };
  if (body !== undefined) {
    const text = JSON.stringify(body);
    options.body = text;
    // A small change is still sent when the page is left at that moment; browsers allow this up to 64 kB.
    options.keepalive = text.length < keptAliveTo;
    options.headers = { accept: 'application/json', 'content-type': 'application/json' };
  }
  try {
    return await fetch(path, options);
  } catch {
    throw new RequestError(
      0,
      "The club's server does not answer: start it again, nothing saved is lost.",
      null,
    );
  }
}

const keptAliveTo = 60_000;

function isErrorBody(said: unknown): said is { error: { message: string; field?: string } } {
  if (typeof said !== 'object' || said === null || !('error' in said)) return false;
  const { error } = said;
  return (
    typeof error === 'object' && error !== null && 'message' in error && typeof error.message === 'string'
  );
}
