// Holds a contract, YAML or JSON, to the official JSON Schema of OpenAPI 3.1, its schemas to JSON Schema 2020-12 with the
// words of OpenAPI, and its examples to its schemas. Use: node validate.mjs FILE
import {readFileSync} from 'node:fs';
import {dirname} from 'node:path';
import {Validator} from '@seriousme/openapi-schema-validator';
import Ajv from 'ajv/dist/2020.js';
import addFormats from 'ajv-formats';
import {parse} from 'yaml';

const [file] = process.argv.slice(2);
const contract = parse(readFileSync(file, 'utf8'));
const faults = [];
let examples = 0;

const whole = await new Validator().validate(contract);
if (!whole.valid) {
  faults.push(`not OpenAPI 3.1: ${JSON.stringify(whole.errors)}`);
}

// Strict: a word that neither JSON Schema nor OpenAPI knows is a fault, as is one that its type makes void.
const ajv = addFormats.default(new Ajv.default({strict: true, allErrors: true}));
ajv.addVocabulary(['discriminator', 'xml', 'externalDocs', 'x-default', // a default that generated clients do not send
  'x-range', 'x-unit', 'x-alternatives', 'x-precision']);
for (const word of ['openapi', 'info', 'servers', 'security', 'tags', 'paths', 'components']) {
  ajv.addKeyword(word);
}
ajv.addSchema({$id: 'contract', ...contract}, undefined, undefined, false);

visit(contract, '#');
if (faults.length > 0) {
  console.error(faults.join('\n'));
  process.exit(1);
}
console.log(`${file} is OpenAPI 3.1 and ${examples} of its examples are what their schemas say`);

/** Looks for whatever has a schema and examples of it: media types, parameters, headers, and the schemas themselves. */
function visit(node, pointer) {
  if (node === null || typeof node !== 'object') {
    return;
  }
  if (node.schema !== undefined) {
    const values = Object.values(node.examples ?? {}).map(example => example.externalValue === undefined ? example.value
      : read(example.externalValue));
    check(`${pointer}/schema`, node.example === undefined ? values : [...values, node.example]);
  } else if (Array.isArray(node.examples)) {
    check(pointer, node.examples);
  }
  for (const [name, value] of Object.entries(node)) {
    if (!['example', 'examples', 'enum', 'const', 'default'].includes(name)) {
      visit(value, `${pointer}/${encodeURIComponent(name.replaceAll('~', '~0').replaceAll('/', '~1'))}`);
    }
  }
}

/** An example by reference, relative to the contract: JSON, or the text itself. */
function read(reference) {
  const text = readFileSync(`${dirname(file)}/${reference}`, 'utf8');
  return reference.endsWith('.json') ? JSON.parse(text) : text;
}

function check(pointer, values) {
  try {
    const validate = ajv.getSchema(`contract${pointer}`) ?? (() => { throw new Error('no schema'); })();
    for (const value of values) {
      examples++;
      if (!validate(value)) {
        faults.push(`${pointer}: ${ajv.errorsText(validate.errors)}`);
      }
    }
  } catch (e) {
    faults.push(`${pointer}: ${e.message}`);
  }
}
