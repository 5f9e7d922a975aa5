// Shows that the checks can fail: breaks a copy of the contract in one place for each rule of our own, and in some for the
// public ones, and requires that every one of them is reported. Use: node faults.mjs CONTRACT RULES-FOLDER
import assert from 'node:assert/strict';
import {spawnSync} from 'node:child_process';
import {readFileSync, rmSync, symlinkSync, writeFileSync} from 'node:fs';
import {dirname} from 'node:path';
import {parse} from 'yaml';

const [contract, rules] = process.argv.slice(2);
const broken = 'broken.json'; // beside the examples that it refers to
symlink('examples');

function symlink(folder) {
  rmSync(folder, {force: true});
  symlinkSync(`${dirname(contract)}/${folder}`, folder);
}

const operation = (document, path = '/v1/assessment') => document.paths[path].post;
const schemas = document => document.components.schemas;
const answer = (document, path) => operation(document, path).responses['200'].content['application/json'];
const first = examples => Object.keys(examples)[0];

/** What each program must report, and the break that it must report. */
const spectral = {
  'brinebook-operation-described': document => { delete operation(document).summary; },
  'brinebook-two-requests-shown': document => {
    const examples = operation(document).requestBody.content['application/json'].examples;
    Object.keys(examples).slice(1).forEach(name => delete examples[name]);
  },
  'brinebook-two-answers-shown': document => {
    Object.keys(answer(document).examples).slice(1).forEach(name => delete answer(document).examples[name]);
  },
  'brinebook-every-form-shown': document => {
    delete operation(document, '/v1/regeneration-schedule').responses['200'].content['text/csv'].examples;
  },
  'brinebook-parameter-described': document => { delete document.paths['/v1/compensated-hardness'].get.parameters[2].example; },
  'brinebook-schema-described': document => { delete schemas(document).FitAnswer.properties.capacity.description; },
  'brinebook-property-named': document => { schemas(document).FitAnswer.properties.hard_days = {description: 'Days.'}; },
  'brinebook-quantity-has-unit': document => { schemas(document).FlowQuantity.required = ['value']; },
  'brinebook-request-closed': document => { delete schemas(document).WaterRequest.additionalProperties; },
  'brinebook-request-bounded': document => { delete schemas(document).PricesRequest.properties.priceYear.maximum; },
  'brinebook-answer-explains-itself': document => {
    delete schemas(document).SizingAnswer.properties.basis;
  },
  'brinebook-errors-are-problems': document => {
    document.components.responses.Failed.content = {'text/plain': {schema: {type: 'string'}}};
  },
  'brinebook-default-in-words': document => { schemas(document).AssessmentRequest.properties.seed.default = 1; },
  'operation-tag-defined': document => { operation(document).tags = ['elsewhere']; },
  'oas3-unused-component': document => { schemas(document).Unused = {type: 'object', description: 'Unused.'}; },
};
const redocly = {
  'no-unresolved-refs': document => { operation(document).responses['418'] = {$ref: '#/components/responses/Teapot'}; },
  'no-invalid-media-type-examples': document => { answer(document).examples[first(answer(document).examples)] = {value: {}}; },
  'operation-operationId-unique': document => { operation(document).operationId = 'sizeSoftener'; },
};
const validator = {
  'not OpenAPI 3.1': document => { document.info.title = 1; },
  'unknown keyword': document => { schemas(document).FitAnswer.minimumProperties = 1; },
  'must have required property': document => {
    const {examples} = answer(document, '/v1/hardness-conversion');
    examples[first(examples)] = {value: {}};
  },
};

expect(spectral, 'spectral', 'lint', '--ruleset', `${rules}/.spectral.yaml`, broken);
expect(redocly, 'redocly', 'lint', '--config', `${rules}/.redocly.yaml`, '--max-problems=1000', broken);
expect(validator, 'node', 'validate.mjs', broken);

function expect(breaks, program, ...options) {
  const document = parse(readFileSync(contract, 'utf8'), {maxAliasCount: -1});
  Object.values(breaks).forEach(change => change(document));
  writeFileSync(broken, JSON.stringify(document, null, 1));
  const {status, stdout, stderr} = spawnSync(program, options, {encoding: 'utf8', maxBuffer: 1 << 28});
  assert.notEqual(status, 0, `${program} passed a broken contract`);
  const missed = Object.keys(breaks).filter(rule => !`${stdout}${stderr}`.includes(rule));
  assert.deepEqual(missed, [], `${program} did not report these faults`);
  console.log(`${program} reported ${Object.keys(breaks).length} faults of ${Object.keys(breaks).length}`);
}
