// Reads a calendar file of /v1/regeneration-schedule with ical.js and holds it to the JSON answer to the same request.
// Use: node read.mjs answer.ics answer.json
import assert from 'node:assert/strict';
import {readFileSync} from 'node:fs';
import ICAL from 'ical.js';

const [file, answer] = process.argv.slice(2);
const json = JSON.parse(readFileSync(answer, 'utf8'));
const policy = json.policies[0];

const calendar = new ICAL.Component(ICAL.parse(readFileSync(file, 'utf8')));
assert.equal(calendar.name, 'vcalendar');
assert.equal(calendar.getFirstPropertyValue('version'), '2.0');
assert.equal(calendar.getFirstPropertyValue('method'), null);
const events = calendar.getAllSubcomponents('vevent').map(component => new ICAL.Event(component));
const of = category => events.filter(event => event.component.getFirstPropertyValue('categories') === category);
const day = event => event.startDate.toString().slice(0, 10);

assert.equal(new Set(events.map(event => event.uid)).size, events.length, 'every UID is its own');
const regenerations = of('regeneration');
assert.equal(regenerations.length, policy.totals.regenerations);
assert.deepEqual(regenerations.slice(0, policy.events.length).map(day), policy.events.map(event => event.date));
for (const event of regenerations) {
  assert.equal(event.startDate.isDate, 'meterVolume' in policy && !('reserve' in policy));
  assert.equal(event.startDate.zone.tzid, 'floating');
  assert.ok(event.startDate.isDate || event.startDate.hour === policy.regenerationHour);
  assert.ok(event.endDate.compare(event.startDate) > 0);
}
const salt = of('salt');
assert.deepEqual(salt.slice(0, policy.salt.purchases.length).map(day), policy.salt.purchases.map(one => one.date));
assert.equal(salt.reduce((bags, event) => bags + Number(/: (\d+) bag/.exec(event.summary)[1]), 0), policy.salt.bags);
const rest = [...of('water test'), ...of('service')];
assert.equal(regenerations.length + salt.length + rest.length, events.length);
for (const event of [...salt, ...rest]) {
  assert.ok(event.startDate.isDate, event.summary);
}
console.log(`ical.js read ${events.length} events of ${file}`);
