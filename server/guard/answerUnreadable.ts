import type { Server } from 'node:http';
import { errorBody } from './errors.ts';

/** What comes over the line and is no request that could be read gets one sentence too, before the line is closed. */
export function answerUnreadable(server: Server): void {
  server.on('clientError', (error: NodeJS.ErrnoException, socket) => {
    if (!socket.writable || error.code === 'ECONNRESET') return void socket.destroy();
    const isLong = error.code === 'HPE_HEADER_OVERFLOW';
    const sentence = isLong
      ? 'The headers of the request are longer than this server reads.'
      : 'What was sent cannot be read as a request.';
    const body = JSON.stringify(errorBody('', sentence));
    const lines = [
      isLong ? 'HTTP/1.1 431 Request Header Fields Too Large' : 'HTTP/1.1 400 Bad Request',
      'Content-Type: application/json',
      `Content-Length: ${Buffer.byteLength(body)}`,
      'Connection: close',
    ];
    socket.end(`${lines.join('\r\n')}\r\n\r\n${body}`);
  });
}
