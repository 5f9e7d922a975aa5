/** The case: one request of the operation assess. It stands in the address, and its parts in the fields. */
import { inUnits } from './quantities.js';

/** An invented household with a private well, to begin with. */
export const INVENTED = {
  water: { hardness: { value: 22, unit: 'gpg' }, iron: { value: 1.2, unit: 'mg/L' }, manganese: { value: 0.08, unit: 'mg/L' },
    temperature: { value: 52, unit: 'F' }, supply: 'privateWell' },
  household: { people: 5 },
  softener: { resinVolume: { value: 1.5, unit: 'ft3' }, tankDiameter: { value: 10, unit: 'in' }, tankHeight: { value: 54, unit: 'in' },
    saltDose: { value: 15, unit: 'lb/ft3' }, control: { kind: 'clock', everyDays: 3 } },
  retrofit: { cost: { value: 420, unit: 'USD' } },
  units: 'us',
};

const steps = pointer => pointer.split('/').slice(1);

export const at = (given, pointer) => steps(pointer).reduce((part, name) => part?.[name], given);

/** A copy with a value at a pointer; what becomes empty is left out. */
export function put(given, pointer, value) {
  const [name, ...rest] = steps(pointer);
  const copy = { ...given };
  const inner = rest.length ? put(given?.[name] ?? {}, `/${rest.join('/')}`, value) : value;
  const empty = inner === undefined || (rest.length > 0 && Object.keys(inner).length === 0);
  if (empty) { delete copy[name]; } else { copy[name] = inner; }
  return copy;
}

/** The same case with every quantity in the other system. */
export function converted(part, units, property) {
  if (Array.isArray(part)) { return part.map(each => converted(each, units, property)); }
  if (part === null || typeof part !== 'object') { return part; }
  if ('unit' in part) { return inUnits(part, units, property); }
  return Object.fromEntries(Object.entries(part).map(([name, inner]) => [name, converted(inner, units, name)]));
}

export function toAddress(given) {
  const bytes = new TextEncoder().encode(JSON.stringify(given));
  return '#' + btoa(String.fromCharCode(...bytes)).replaceAll('+', '-').replaceAll('/', '_').replaceAll('=', '');
}

/** The case of an address, or none. */
export function fromAddress(hash) {
  try {
    const text = atob(hash.slice(1).replaceAll('-', '+').replaceAll('_', '/'));
    const given = JSON.parse(new TextDecoder().decode(Uint8Array.from(text, letter => letter.charCodeAt(0))));
    return given && typeof given === 'object' ? given : null;
  } catch {
    return null;
  }
}

/** Where the sheet of a case is; a browser gets it as a page. */
export const toSheet = given => `/v1/assessment?request=${encodeURIComponent(JSON.stringify(given))}`;

export const toCurl = given => `curl -s '${location.origin}/v1/assessment' -H 'Content-Type: application/json' -d '${
  JSON.stringify(given).replaceAll("'", "'\\''")}'`;
