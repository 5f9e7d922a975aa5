// SPDX-License-Identifier: Apache-2.0
/** What the contract of an operation says of a property: its kind, units, range, default and choices. Forms are built from it. */
import { at } from './case.js';

const nameOf = reference => reference.split('/').at(-1);

/** The shape of the request of an operation's own contract. */
export function requestOf(contract) {
  const post = Object.values(Object.values(contract.paths)[0]).find(each => each.requestBody);
  return post.requestBody.content['application/json'].schema;
}

function followed(schema, contract) {
  return schema.$ref ? { ...contract.components.schemas[nameOf(schema.$ref)], ...schema } : schema;
}

/** The schema of one property of an object; of kinds, the one that `part` has chosen, or the first that holds it. */
function propertyOf(schema, name, part, contract) {
  if (schema.items) { return schema.items; }
  if (schema.properties?.[name]) { return schema.properties[name]; }
  const { propertyName, mapping } = schema.discriminator ?? {};
  const chosen = mapping?.[part?.[propertyName]];
  const kinds = chosen ? [{ $ref: chosen }] : schema.oneOf ?? [];
  return kinds.map(each => followed(each, contract).properties?.[name]).find(Boolean);
}

/** Choices of the property that distinguishes the kinds of a schema. */
function kindsOf(schema, name) {
  return schema.discriminator?.propertyName === name ? Object.keys(schema.discriminator.mapping) : null;
}

const KINDS = { integer: 'whole', number: 'number', boolean: 'flag', array: 'list' };

/**
 * The field at a pointer of the request, or null where the operation has none: `{ kind, units, range: { minimum, maximum,
 * exclusiveMinimum, unit }, usual, options, unit }`. Kinds: quantity, number, whole, choice, flag, date, text, list, part.
 */
export function fieldOf(contract, pointer, readings = {}) {
  let schema = followed(requestOf(contract), contract);
  let options = null;
  let where = '';
  for (const name of pointer.split('/').slice(1)) {
    options = kindsOf(schema, name);
    const next = propertyOf(schema, name, where === '' ? readings : at(readings, where), contract);
    if (!next) { return null; }
    schema = followed(next, contract);
    where += `/${name}`;
  }
  const units = schema.properties?.unit && schema.properties.value ? schema.properties.unit.enum ?? [] : null;
  const kind = units ? 'quantity' : options || schema.enum ? 'choice' : schema.format === 'date' ? 'date'
    : KINDS[schema.type] ?? (schema.type === 'string' ? 'text' : 'part');
  const { minimum, maximum, exclusiveMinimum } = schema;
  return { kind, units, options: options ?? schema.enum ?? null, unit: schema['x-unit'] ?? null, usual: schema['x-default'], required: schema.required,
    range: schema['x-range'] ?? (minimum === undefined && maximum === undefined && exclusiveMinimum === undefined ? null
      : { minimum, maximum, exclusiveMinimum }) };
}

/** The range of a field in a unit, by `convert(value, from, to)`. */
export function rangeIn(range, unit, convert) {
  if (!range) { return null; }
  const within = value => (value === undefined || !range.unit ? value : convert(value, range.unit, unit));
  return { minimum: within(range.minimum), maximum: within(range.maximum), exclusiveMinimum: within(range.exclusiveMinimum) };
}

/** Whether a value lies in a range. */
export const isWithin = (value, range) => !range || !((range.minimum !== undefined && value < range.minimum)
  || (range.maximum !== undefined && value > range.maximum)
  || (range.exclusiveMinimum !== undefined && value <= range.exclusiveMinimum));
