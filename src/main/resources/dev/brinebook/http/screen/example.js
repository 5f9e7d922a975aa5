// SPDX-License-Identifier: Apache-2.0
/** An invented household of the contract's examples, for a question that is tried first. */
const HOUSES = { us: 'well-family', metric: 'apartment' };
const FOR = { worth: 'assess', hard: 'reviewSettings', fits: 'sizeSoftener', need: 'sizeSoftener', setup: 'assess', readings: 'backtestSettings', report: 'readWaterReport', visit: 'reduceFieldMeasurements', complaint: 'diagnoseComplaint', start: 'planCommissioning', savings: 'verifySavings' };

/** Days of a request as lines that can be pasted. */
function lines({ firstDate, values, missing = [], unit }) {
  const rows = [];
  let at = Date.parse(firstDate);
  for (const value of values) {
    while (missing.includes(new Date(at).toISOString().slice(0, 10))) { at += 86400000; }
    rows.push(`${new Date(at).toISOString().slice(0, 10)} ${value}`);
    at += 86400000;
  }
  return { text: rows.join('\n'), unit, kind: 'volume', monthFirst: false };
}

/** A period with the readings of its meter at both ends, as somebody writes them down. */
function periodOf({ meter, ...of }) {
  const [first, last] = meter ? [meter.readings[0], meter.readings.at(-1)].map(({ value }) => ({ value, unit: meter.meter.unit })) : [];
  return meter ? { ...of, meterStart: first, meterEnd: last } : of;
}

const request = async (operation, units) => (await fetch(`/examples/${operation}.${HOUSES[units]}.request.json`)).json();

export async function exampleOf(question, units) {
  const { units: own, seed, days, ...readings } = await request(FOR[question], units);
  if (question === 'report' || question === 'visit') {
    const { units: same, resinAgeYears, backwash, peakFlow, ...seen } = question === 'visit' ? await request('checkInstallation', units) : {};
    const { country, ...all } = { ...seen, ...readings };
    return all;
  }
  if (question === 'savings') {
    const { country, people, ...all } = readings;
    return { ...all, before: periodOf(all.before), after: periodOf(all.after), household: { people } };
  }
  if (question === 'start') { // which is read step by step
    const { readings: read = [], settings, ...all } = readings;
    return { ...all, checks: Object.fromEntries(read.map(({ check, ...each }) => [check, each])) };
  }
  if (question === 'setup') { // which has not been set yet
    const { control, saltDose, ...softener } = readings.softener;
    return { ...readings, softener };
  }
  return days ? { ...readings, days: lines(days) } : readings;
}
