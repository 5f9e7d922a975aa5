// Sends every committed example through calls whose types are made from the contract. Use: node main.js URL FOLDER
import assert from 'node:assert/strict';
import {readFileSync} from 'node:fs';
import './calls.js';
import {parse} from 'yaml';
import {client, count, sameAnswer, seen} from './client.js';
import type {components, operations} from './contract.js';

const folder = process.argv[3]!;
const read = (name: string) => readFileSync(`${folder}/${name}`, 'utf8');
const json = (name: string) => JSON.parse(read(name));
const contract = parse(read('openapi.yaml'), {maxAliasCount: -1});

await sameAnswer('convertHardnessByQuery', client.GET('/v1/hardness-conversion', {
  params: {query: {value: 18.5, unit: 'gpg'}},
}), json('examples/convertHardness.us.response.json'));

const posted = await client.POST('/v1/compensated-hardness', {
  body: {
    water: {
      hardness: {value: 25, unit: 'gpg'},
      iron: {value: 2, unit: 'mg/L'},
      manganese: {value: 0.5, unit: 'mg/L'},
      compensation: {set: 'standard'},
    },
    units: 'metric',
  },
});
await sameAnswer('compensateHardnessByQuery', client.GET('/v1/compensated-hardness', {
  params: {query: {value: 25, unit: 'gpg', iron: 2, manganese: 0.5, set: 'standard', units: 'metric'}},
}), posted.data!);
const whole = {params: {query: {request: JSON.stringify(json('examples/assess.apartment.request.json'))}}};
await sameAnswer('assessByQuery', client.GET('/v1/assessment', whole), json('examples/assess.apartment.response.json'));

await sameAnswer('text/html', client.GET('/v1/assessment', {...whole, headers: {Accept: 'text/html'}, parseAs: 'text'}),
  read('examples/assess.apartment.response.html'));
for (const [example, type, ending] of [['apartment', 'calendar', 'ics'], ['holiday-cabin', 'csv', 'csv']] as const) {
  await sameAnswer(`text/${type}`, client.POST('/v1/regeneration-schedule', {
    body: json(`examples/scheduleRegeneration.${example}.request.json`),
    headers: {Accept: `text/${type}`},
    parseAs: 'text',
  }), read(`examples/scheduleRegeneration.${example}.response.${ending}`));
}

const csv = contract.paths['/v1/meter-readings'].post.requestBody.content['text/csv'].examples.invented.value;
const meter = await client.POST('/v1/meter-readings', {
  params: {query: {unit: 'gal'}},
  body: csv as string,
  headers: {'Content-Type': 'text/csv'},
  bodySerializer: text => text,
});
assert.deepEqual(meter.data?.days?.values, [311.5, 268.2], '15542 - 15230.5 and 15810.2 - 15542');

const faulty = await client.POST('/v1/compensated-hardness', {body: {} as components['schemas']['CompensatedHardnessRequest']});
assert.equal(faulty.response.status, 422);
assert.equal(faulty.error?.errors?.[0]?.pointer, '/water');

assert.equal((await client.GET('/health/live')).data?.status, 'up');
assert.equal((await client.GET('/health/ready')).data?.status, 'up');
assert.ok((await client.GET('/version')).data?.modelVersion);
await sameAnswer('readContractAsJson', client.GET('/openapi.json'), contract);
await sameAnswer('readContractAsYaml', client.GET('/openapi.yaml', {parseAs: 'text'}), read('openapi.yaml'));
await sameAnswer('readBulkTemplate', client.GET('/v1/bulk/{calculator}/template', {
  params: {path: {calculator: 'convertHardness'}}, headers: {Accept: 'text/csv'}, parseAs: 'text',
}), read('examples/readBulkTemplate.convertHardness.response.csv'));
assert.ok((await client.GET('/v1/sources')).data!.sources.length > 50);
const html = {parseAs: 'text'} as const;
const pages = await Promise.all([client.GET('/docs', html), client.GET('/docs/try', html), client.GET('/docs/changelog', html),
  client.GET('/docs/sources', html), client.GET('/problems', html),
  client.GET('/docs/operations/{operationId}', {params: {path: {operationId: 'assess'}}, ...html}),
  client.GET('/problems/{kind}', {params: {path: {kind: 'invalid-request'}}, ...html})]);
pages.forEach(page => assert.match(page.data!, /<html/));
assert.match((await client.GET('/llms.txt', html)).data!, /\/mcp/);

const byHand: (keyof operations)[] = ['convertHardnessByQuery', 'compensateHardnessByQuery', 'assessByQuery', 'checkLive', 'checkReady',
  'readVersion', 'readContractAsJson', 'readContractAsYaml', 'readBulkTemplate', 'readSources', 'readDocs', 'tryOut', 'readChangelog',
  'readSourcesPage', 'readProblems', 'readOperation', 'readProblem', 'readLlmsText'];
byHand.forEach(id => seen.add(id));
const all = Object.values(contract.paths as object).flatMap(item => Object.values(item as object))
  .map(operation => operation.operationId as string);
assert.deepEqual([...seen].sort(), all.sort(), 'every operation is called');
console.log(`the generated TypeScript client got ${count} answers as committed`);
