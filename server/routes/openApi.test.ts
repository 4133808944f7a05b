import { expect, test } from 'vitest';
import { kindNames } from '#contract/records/allKinds.ts';
import { operationNames } from '#reckon/operations.ts';
import { testApp } from '#server/tests/testApp.ts';
import { smallClub } from '#store/tests/smallClub.ts';

test('the description names every route of the server, and no other', async () => {
  const { app, ask } = await testApp();
  const { json } = await ask('GET', '/api/openapi.json');
  expect(json.openapi).toBe('3.1.0');
  const spelled = app.routes.flatMap(({ method, path }) => {
    if (method === 'ALL' || !path.startsWith('/api/')) return [];
    const names = path.includes(':kind') ? kindNames : operationNames;
    return names.map(
      (name) =>
        `${method} ${path.replace(/:(kind|operation)/, name).replaceAll(/:(\w+)(\{.*?\})?/g, '{$1}')}`,
    );
  });
  const described = Object.entries<object>(json.paths).flatMap(([path, item]) =>
    Object.keys(item)
      .filter((method) => method !== 'parameters')
      .map((method) => `${method.toUpperCase()} ${path}`),
  );
  const itself = ['GET /api/openapi.json', 'GET /api/compute'];
  expect(new Set([...described, ...itself])).toEqual(new Set(spelled));
});

test('what it says of a new record is what the route takes', async () => {
  const { ask } = await testApp();
  const { json } = await ask('GET', '/api/openapi.json');
  const fields = json.paths['/api/records/bar'].post.requestBody.content['application/json'].schema;
  expect(fields.required).toEqual(['label', 'massKg']);
  expect(fields.additionalProperties).toBe(false);
  expect(fields.properties.massKg).toMatchObject({ type: 'number', exclusiveMinimum: 0, maximum: 100 });
});

test('what it says of a solved day is what a solved day looks like', async () => {
  const { ask } = await testApp(smallClub());
  const { json } = await ask('GET', '/api/openapi.json');
  const path = json.paths['/api/days/{id}/solve'];
  const { properties } = path.post.responses['200'].content['application/json'].schema;
  const solved = await ask('POST', '/api/days/day-1/solve');
  expect(Object.keys(solved.json).sort()).toEqual(Object.keys(properties).sort());
  expect(Object.keys(solved.json.document).sort()).toEqual(
    Object.keys(properties.document.properties).sort(),
  );
});
