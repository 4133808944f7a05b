import { Hono } from 'hono';
import { markedJson } from '#server/guard/markedJson.ts';
import { noQuery } from '#server/guard/readQuery.ts';
import { openApiDocument } from '#server/openApi/openApiDocument.ts';

/** The description of the server for other programs. */
export const openApiRoutes = new Hono().get('/openapi.json', noQuery, (c) =>
  markedJson(c, openApiDocument()),
);
