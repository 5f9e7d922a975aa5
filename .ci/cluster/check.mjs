// Holds every object of the files given, as kubectl kustomize wrote them, to the schema of its kind, and shows that faults are seen.
import {readFileSync} from 'node:fs';
import {parseAllDocuments} from 'yaml';

const kind = async object => {
  const {apiVersion} = object;
  const home = apiVersion.startsWith('monitoring.coreos.com/') ? '@kubernetes-models/prometheus-operator' : 'kubernetes-models';
  const module = await import(`${home}/${apiVersion}`);
  if (!module[object.kind]) {
    throw new Error(`no kind ${object.kind} in ${apiVersion}`);
  }
  return module[object.kind];
};

const check = async object => new (await kind(object))(object).validate();

const refused = async (object, pointer, value) => {
  const faulty = structuredClone(object);
  const names = pointer.split('.');
  const last = names.pop();
  const holder = names.reduce((within, name) => within[name], faulty);
  if (value === undefined) {
    delete holder[last];
  } else {
    holder[last] = value;
  }
  try {
    await check(faulty);
  } catch {
    return;
  }
  throw new Error(`${object.kind} passes with ${pointer} = ${value}`);
};

const FAULTS = {
  Deployment: [
    ['spec.selector'],
    ['spec.template.spec.containers.0.name'],
    ['spec.template.spec.containers.0.resources.limits.memory', '256 MB'],
    ['spec.template.spec.containers.0.ports.0.containerPort', 'http'],
  ],
  HorizontalPodAutoscaler: [['spec.maxReplicas'], ['spec.metrics.0.type']],
  NetworkPolicy: [['spec.policyTypes', 'Egress'], ['spec.egress', 'none']],
  Job: [['spec.template.spec.containers.0.resources.requests.cpu', 'half'], ['spec.template']],
  ServiceMonitor: [['spec.selector'], ['spec.endpoints.0.interval', 15]],
  PrometheusRule: [['spec.groups.0.rules.0.expr'], ['spec.groups.0.name']],
};

let objects = 0;
const seen = new Set();
for (const file of process.argv.slice(2)) {
  for (const document of parseAllDocuments(readFileSync(file, 'utf8'), {strict: true})) {
    const object = document.toJS();
    try {
      await check(object);
    } catch (fault) {
      throw new Error(`${file}: ${object.kind} ${object.metadata.name}: ${fault.message}`);
    }
    for (const [pointer, value] of FAULTS[object.kind] ?? []) {
      await refused(object, pointer, value);
      seen.add(`${object.kind} ${pointer}`);
    }
    objects++;
  }
}
const planted = Object.values(FAULTS).flat().length;
if (seen.size !== planted) {
  throw new Error(`${seen.size} of ${planted} planted faults were tried`);
}
console.log(`${objects} objects pass, ${seen.size} planted faults were seen`);
