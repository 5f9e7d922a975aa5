// SPDX-License-Identifier: Apache-2.0
// A plain server on Fastify that converts and compensates a hardness as the service does for the waters of the load: it checks the
// request by a schema and the same ranges, logs a line for each request, and compresses what is worth it. It listens where PORT says.
import compress from '@fastify/compress';
import Fastify from 'fastify';

const CARBONATE = 40.078 + 12.011 + 3 * 15.999;
const GPG = 64.79891 / 3.785411784;
const FACTORS = {'mg/L': 1, gpg: GPG, 'gpg-imperial': 64.79891 / 4.54609, dH: 10 * CARBONATE / (40.078 + 15.999), fH: 10,
  'mmol/L': CARBONATE, 'meq/L': CARBONATE / 2};
const SETS = [['stoichiometric', CARBONATE / 55.845, CARBONATE / 54.938],
  ...[['light', 2], ['moderate', 3], ['standard', 4], ['conservative', 5]].map(([name, iron]) => [name, iron * GPG, 2 * GPG])];
const SPOKEN = {soft: 'soft', slightlyHard: 'slightly hard', moderatelyHard: 'moderately hard', medium: 'medium', hard: 'hard',
  veryHard: 'very hard'};
const MODEL = '2.3.0';

const object = (properties, required = Object.keys(properties)) => ({type: 'object', properties, required, additionalProperties: false});
const number = {type: 'number', minimum: 0};
const hardness = object({value: number, unit: {enum: Object.keys(FACTORS)}});
const concentration = most => object({value: {...number, maximum: most}, unit: {const: 'mg/L'}});
const conversion = object({hardness});
const compensation = object({water: object({hardness, hardnessUncertainty: hardness, iron: concentration(100),
  manganese: concentration(50), supply: {const: 'privateWell'}}), units: {const: 'us'}});

const significant = (value, digits) => Number(value.toPrecision(digits));
const inUnit = (unit, mgPerL) => ({value: significant(mgPerL / FACTORS[unit], 6), unit});
const said = (value, unit) => `${value}\u00a0${unit === 'dH' ? '°dH' : unit}`;
const tenths = value => Math.floor(value * 10 + 0.5) / 10;
const pick = (value, ends, ...names) => names[ends.filter(end => value > end).length];

const base = (given, most, pointer) => {
  const mgPerL = given.value * FACTORS[given.unit];
  if (!(mgPerL <= most)) {
    throw Object.assign(new Error(`${pointer}/value must be at most ${most} mg/L`), {statusCode: 422});
  }
  return mgPerL;
};

const convert = ({hardness: given}) => {
  const mgPerL = base(given, 10_000, '/hardness');
  const mmol = mgPerL / CARBONATE;
  const usgs = pick(mgPerL, [60, 120, 180], 'soft', 'moderatelyHard', 'hard', 'veryHard');
  const german = mmol < 1.5 ? 'soft' : mmol <= 2.5 ? 'medium' : 'hard';
  const trade = pick(mgPerL / GPG, [1, 3.5, 7, 10.5], 'soft', 'slightlyHard', 'moderatelyHard', 'hard', 'veryHard');
  return {
    summary: `${said(given.value, given.unit)} is ${said(Math.floor(mgPerL + 0.5), 'mg/L')} as CaCO3 (${
      said(tenths(mgPerL / FACTORS.dH), 'dH')}): ${SPOKEN[usgs]} water by the US Geological Survey. The trade calls it ${
      SPOKEN[trade]}, and the German detergents act calls it ${SPOKEN[german]}.`,
    inEveryUnit: Object.keys(FACTORS).map(unit => inUnit(unit, mgPerL)),
    classes: {usgs, german, trade}, cautions: [], modelVersion: MODEL};
};

const setting = (mgPerL, unit) => ({value: Math.ceil(mgPerL / FACTORS[unit] * (1 - 1e-5)), unit});
// A line of the sum in grains, to a tenth, or a digit where that would be none.
const line = mgPerL => {
  const {value} = inUnit('gpg', mgPerL);
  return said(value > 0 && value < 0.05 ? significant(value, 1) : tenths(value), 'gpg');
};

const compensate = ({water}) => {
  const tested = base(water.hardness, 10_000, '/water/hardness');
  const uncertainty = base(water.hardnessUncertainty, 500, '/water/hardnessUncertainty');
  const iron = water.iron.value, manganese = water.manganese.value;
  const [ironLine, manganeseLine] = [SETS[3][1] * iron, SETS[3][2] * manganese];
  const sum = tested + ironLine + manganeseLine;
  const bySet = SETS.map(([set, ofIron, ofManganese]) =>
    ({set, total: inUnit('gpg', tested + ofIron * iron + ofManganese * manganese)}));
  const controllerSetting = setting(sum + uncertainty, 'gpg');
  const rounded = significant(controllerSetting.value, 4) > significant((sum + uncertainty) / GPG, 4);
  return {
    summary: `Set the hardness to ${said(controllerSetting.value, 'gpg')}. The test gives ${line(tested)}. Iron adds ${
      line(ironLine)} and manganese ${line(manganeseLine)}, which makes ${line(sum)}.${rounded ? ' The setting is rounded up.' : ''
    } The setting also covers the uncertainty of the test.`,
    hardness: {tested: inUnit('gpg', tested), iron: inUnit('gpg', ironLine), manganese: inUnit('gpg', manganeseLine),
      compensated: inUnit('gpg', sum), real: bySet[0].total, controllerSetting,
      otherControllerSettings: [setting(sum + uncertainty, 'dH'), setting(sum + uncertainty, 'fH')]},
    bySet, cautions: cautions(iron, manganese), modelVersion: MODEL};
};

const stains = (code, name, limit) => ({code: `${code}Stains`, severity: 'info',
  message: `${name} is above ${limit}\u00a0mg/L. It can stain laundry and fixtures.`,
  source: '40 CFR 143.3, national secondary drinking water regulations (2023)', reader: 'customer', inFront: true});
const cautions = (iron, manganese) => [
  {code: 'wellWithoutBacteriaTest', severity: 'warning',
    message: 'The private well has no bacteria test. A softener does not disinfect. Have the well tested for bacteria.',
    source: 'University of Nebraska-Lincoln Extension NebGuide G1491 (2014)', reader: 'customer', inFront: true},
  iron + manganese >= 1 && {code: 'ironBeforeResin', severity: 'warning',
    message: 'Iron and manganese together are 1\u00a0mg/L or more and foul the resin. Plan treatment or resin cleaning.',
    source: 'Illinois Administrative Code title 35 part 604.805 (2019)', reader: 'installer', inFront: true},
  iron > 0.3 && stains('iron', 'Iron', '0.3'),
  manganese > 0.05 && stains('manganese', 'Manganese', '0.05')].filter(Boolean);

const server = Fastify({logger: true, disableRequestLogging: true, ajv: {customOptions: {removeAdditional: false, coerceTypes: false}}});
server.setErrorHandler((fault, request, reply) =>
  reply.code(fault.validation ? 422 : fault.statusCode ?? 500).send({title: 'invalid', detail: fault.message}));
server.addHook('onResponse', async (request, reply) => request.log.info(
  {method: request.method, route: request.routeOptions.url, status: reply.statusCode, milliseconds: reply.elapsedTime}));
await server.register(compress, {threshold: 1_500, encodings: ['gzip', 'deflate']});
server.get('/health/ready', async () => 'ready');
server.post('/v1/hardness-conversion', {schema: {body: conversion}}, async request => convert(request.body));
server.post('/v1/compensated-hardness', {schema: {body: compensation}}, async request => compensate(request.body));
await server.listen({host: '127.0.0.1', port: Number(process.env.PORT)});
