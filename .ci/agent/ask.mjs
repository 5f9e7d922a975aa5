// Asks the service as an agent would, with the protocol's own client: every tool, by every committed example.
// Use: node ask.mjs http://127.0.0.1:8080 openapi
import assert from 'node:assert/strict';
import {readFileSync, readdirSync} from 'node:fs';
import {join} from 'node:path';
import {Client} from '@modelcontextprotocol/sdk/client/index.js';
import {parse} from 'yaml';
import {StreamableHTTPClientTransport} from '@modelcontextprotocol/sdk/client/streamableHttp.js';

const [service, committed] = process.argv.slice(2);
const read = name => JSON.parse(readFileSync(join(committed, name), 'utf8'));
const contract = parse(readFileSync(join(committed, 'openapi.yaml'), 'utf8'), {maxAliasCount: -1});
const operations = new Map(Object.entries(contract.paths)
  .filter(([, item]) => item.post?.requestBody.content['application/json'])
  .map(([path, item]) => [item.post.operationId, {path, ...item.post}]));

const client = new Client({name: 'brinebook-agent-check', version: '1.0.0'});
await client.connect(new StreamableHTTPClientTransport(new URL('/mcp', service)));
assert.equal(client.getServerVersion().name, 'brinebook');
assert.match(client.getInstructions(), /cautions/);
await client.ping();

const {tools} = await client.listTools();
assert.deepEqual(tools.map(tool => tool.name).sort(), [...operations.keys()].sort());
for (const tool of tools) {
  const operation = operations.get(tool.name);
  assert.equal(tool.title, operation.summary);
  assert.ok(operation.description.startsWith(tool.description), tool.description);
  assert.deepEqual([tool.annotations.readOnlyHint, tool.annotations.idempotentHint, tool.annotations.destructiveHint,
    tool.annotations.openWorldHint], [true, true, false, false]);
}

const examples = readdirSync(join(committed, 'examples')).filter(file => file.endsWith('.request.json'));
const asked = new Set();
for (const file of examples) {
  const name = file.split('.')[0];
  const answer = read(join('examples', file.replace('.request.', '.response.')));
  // The client refuses an answer that does not fit the output schema of its tool.
  const result = await client.callTool({name, arguments: read(join('examples', file))});
  assert.equal(result.isError, false, file);
  assert.deepEqual(result.structuredContent, answer, file);
  assert.equal(result.content[0].text, answer.summary);
  assert.deepEqual(JSON.parse(result.content[1].text), answer);
  asked.add(name);
}
assert.equal(asked.size, operations.size, 'every tool has an example');

for (const name of operations.keys()) {
  const faulty = {units: 'imperial', nonsense: -1};
  const result = await client.callTool({name, arguments: faulty});
  assert.equal(result.isError, true);
  assert.equal(result.structuredContent, undefined);
  const problem = JSON.parse(result.content[0].text);
  const direct = await fetch(new URL(operations.get(name).path, service), {method: 'POST',
    headers: {'Content-Type': 'application/json'}, body: JSON.stringify(faulty)});
  assert.equal(direct.status, problem.status);
  assert.deepEqual(problem.errors, (await direct.json()).errors);
}
await assert.rejects(client.callTool({name: 'nothing', arguments: {}}), {code: -32602});
await client.close();
console.log(`the client called ${asked.size} tools by ${examples.length} examples`);
