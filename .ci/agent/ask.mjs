// Asks the service as agents would, with the protocol's own clients in each of their ways, from nothing but the address: the five jobs in
// a context of 32,000 tokens, then every operation by every committed example.
// Use: node ask.mjs http://127.0.0.1:8080 openapi
import assert from 'node:assert/strict';
import {readFileSync, readdirSync} from 'node:fs';
import {join} from 'node:path';
import {Client} from '@modelcontextprotocol/sdk/client/index.js';
import {StreamableHTTPClientTransport} from '@modelcontextprotocol/sdk/client/streamableHttp.js';
import {Client as NewClient, StreamableHTTPClientTransport as NewTransport} from '@modelcontextprotocol/client';
import {encode} from 'gpt-tokenizer/encoding/o200k_base';
import {jobs} from './jobs.mjs';

const CONTEXT = 32_000;
const BEFORE_THE_FIRST_CALL = 8_000;
const FRAME_OF_A_CALL = 15;

const [service, committed] = process.argv.slice(2);
const address = new URL('/mcp', service);
const count = text => encode(text).length;
const name = {name: 'brinebook-agent-check', version: '1.0.0'};

const clients = {
  'SDK 1.x': async () => {
    const client = new Client(name);
    await client.connect(new StreamableHTTPClientTransport(address));
    return [client, '2025-11-25'];
  },
  'client 2.x, automatic': async () => {
    const client = new NewClient(name, {versionNegotiation: {mode: 'auto'}});
    await client.connect(new NewTransport(address));
    return [client, '2026-07-28'];
  },
  'client 2.x, legacy': async () => {
    const client = new NewClient(name, {versionNegotiation: {mode: 'legacy'}});
    await client.connect(new NewTransport(address));
    return [client, '2025-11-25'];
  },
};

const post = async (path, request) => {
  const answer = await fetch(new URL(path, service),
    {method: 'POST', headers: {'Content-Type': 'application/json'}, body: JSON.stringify(request)});
  assert.equal(answer.status, 200, path);
  return answer.json();
};

const table = [];
let definitions;
for (const [way, connect] of Object.entries(clients)) {
  const [client, revision] = await connect();
  const {tools} = await client.listTools();
  definitions ??= JSON.stringify(tools);
  assert.deepEqual(tools, JSON.parse(definitions), 'the same list for every client');
  assert.match(client.getInstructions(), /STOP and WARNING/);
  if (client.getNegotiatedProtocolVersion) {
    assert.equal(client.getNegotiatedProtocolVersion(), revision, way);
  }
  const upFront = count(definitions) + count(client.getInstructions());
  assert.ok(upFront < BEFORE_THE_FIRST_CALL, `${upFront} tokens before the first call`);

  let conversation = upFront;
  for (const job of jobs) {
    let tokens = 0;
    await job.run({
      asks: question => { tokens += count(question); },
      post,
      calls: async (tool, given, faulty = false) => {
        const result = await client.callTool({name: tool, arguments: given});
        assert.equal(result.isError, faulty, `${way}, ${job.title}: ${result.content[0].text}`);
        assert.equal(result.content.length, 1);
        assert.equal(result.structuredContent, undefined);
        tokens += count(JSON.stringify(given)) + count(result.content[0].text) + FRAME_OF_A_CALL;
        return result.content[0].text;
      },
    });
    assert.ok(upFront + tokens < job.budget, `${job.title}: ${upFront + tokens} tokens of ${job.budget}`);
    conversation += tokens;
    table.push({client: way, job: job.title, tokens: upFront + tokens, budget: job.budget});
  }
  assert.ok(conversation < CONTEXT);
  table.push({client: way, job: 'all in one conversation', tokens: conversation, budget: CONTEXT});

  assert.ok((await client.listResources()).resources.length > 4);
  assert.match((await client.readResource({uri: 'brinebook://caution/runsHard'})).contents[0].text, /^runsHard \(warning\)/);
  await assert.rejects(client.readResource({uri: 'brinebook://nothing'}), error => [-32002, -32602].includes(error.code));
  assert.equal((await client.listPrompts()).prompts.length, 5);
  const prompt = await client.getPrompt({name: 'what-to-set', arguments: {case: 'a "case"'}});
  assert.match(prompt.messages[0].content.text, /"a ""case"""/);
  const completed = await client.complete({ref: {type: 'ref/resource', uri: 'brinebook://part/{part}'}, argument: {name: 'part', value: 'wat'}});
  assert.ok(completed.completion.values.includes('water'));
  await assert.rejects(client.callTool({name: 'nothing', arguments: {}}), error => error.code === -32602);
  await client.close();
}

// A person who is asked by a form: revision 2026-07-28 alone.
const forms = new NewClient(name, {versionNegotiation: {mode: 'auto'}, capabilities: {elicitation: {form: {}}}});
let form;
forms.setRequestHandler('elicitation/create', request => {
  form = request.params;
  return {action: 'accept', content: {everyDays: 3}};
});
await forms.connect(new NewTransport(address));
const filled = await forms.callTool({name: 'quick_assess', arguments: {hardness: 18.5, hardnessUnit: 'gpg', people: 4, size: 1.5, sizeUnit: 'ft3',
  control: 'clock'}});
assert.deepEqual(form?.requestedSchema.required, ['everyDays']);
assert.match(filled.content[0].text, /A year metered/);
await forms.close();

// Every operation by every example, as a program asks.
const [client] = await clients['client 2.x, automatic']();
const examples = readdirSync(join(committed, 'examples')).filter(file => file.endsWith('.request.json'));
const asked = new Set();
for (const file of examples) {
  const operation = file.split('.')[0];
  const request = JSON.parse(readFileSync(join(committed, 'examples', file), 'utf8'));
  const answer = JSON.parse(readFileSync(join(committed, 'examples', file.replace('.request.', '.response.')), 'utf8'));
  const whole = await client.callTool({name: 'calculate', arguments: {operation, arguments: request, detail: 'full', format: 'json'}});
  assert.equal(whole.isError, false, file);
  assert.deepEqual(JSON.parse(whole.content[0].text), whole.structuredContent);
  const given = whole.structuredContent;
  for (const [part, value] of Object.entries(answer)) {
    if (part in given || !given.leftOut?.includes(`/${part}`)) {
      assert.deepEqual(given[part], value, `${file} ${part}`);
    }
  }
  assert.deepEqual(given.cautions, answer.cautions, file);
  const text = (await client.callTool({name: 'calculate', arguments: {operation, arguments: request}})).content[0].text;
  answer.cautions.filter(one => one.severity !== 'info').forEach(one => assert.ok(text.includes(one.message), `${file} ${one.code}`));
  asked.add(operation);
}
const calculate = JSON.parse(definitions).find(tool => tool.name === 'calculate');
assert.deepEqual([...asked].sort(), [...calculate.inputSchema.properties.operation.enum].sort(), 'every operation has an example');
await client.close();

console.table(table);
console.log(`three ways of two clients did ${jobs.length} jobs; ${asked.size} operations by ${examples.length} examples`);
