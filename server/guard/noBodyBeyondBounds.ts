import { createMiddleware } from 'hono/factory';
import { HTTPException } from 'hono/http-exception';

/** Refuses a body that would fill the memory, or the disk. Where a whole file may come the limit is that of files, elsewhere that of what is typed. */
export const noBodyBeyondBounds = createMiddleware((c, next) =>
  c.req.method === 'GET' ? next() : limitAt(c.req.path)(c, next),
);

function limitAt(path: string) {
  if (path === '/api/archive') return ofArchives;
  return takesTable.test(path) ? ofTables : ofForms;
}

const takesTable = /^\/api\/(sets\/import|records\/[^/]*\/csv)$/;

/** An archive of a million sets has half a gigabyte and is never held as a whole; a table is. A season of sets, typed or calculated with, fits into 16 MB. */
const [ofArchives, ofTables, ofForms] = [4096, 256, 16].map(limitOf) as [Limit, Limit, Limit];

type Limit = ReturnType<typeof limitOf>;

function limitOf(mostMb: number) {
  const mostBytes = mostMb * 1024 * 1024;
  const message = `The body is larger than ${mostMb} MB, more than this address takes.`;
  return createMiddleware(async (c, next) => {
    const announced = c.req.header('content-length');
    if (announced !== undefined && c.req.header('transfer-encoding') === undefined) {
      if (Number(announced) > mostBytes) throw new HTTPException(413, { message });
      // To look at the stream would only slow the answer.
      return next();
    }
    const { raw } = c.req;
    if (raw.body !== null) {
      // Fetch, 5.4: a body that is a stream is sent while it comes. The types of the browser do not know that yet.
      const counted = {
        body: raw.body.pipeThrough(upTo(mostBytes, message)),
        duplex: 'half',
        // A body that is still coming cannot outlive its page.
        keepalive: false,
      };
      c.req.raw = new Request(raw, counted);
    }
    return next();
  });
}

/** Counts what comes piece by piece as it goes by, and holds none of it. */
function upTo(mostBytes: number, message: string): TransformStream<Uint8Array, Uint8Array> {
  let bytes = 0;
  return new TransformStream({
    transform(piece, goesOn) {
      bytes += piece.length;
      if (bytes > mostBytes) throw new HTTPException(413, { message });
      goesOn.enqueue(piece);
    },
  });
}
