import { Hono } from 'hono';
import { openApiDocument } from '#server/openApi/openApiDocument.ts';

/** The description of the server for other programs. */
export const openApiRoutes = new Hono().get('/openapi.json', (c) => c.json(openApiDocument()));
