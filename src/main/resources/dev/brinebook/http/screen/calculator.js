// SPDX-License-Identifier: Apache-2.0
/** When the service is asked: after the last key, once at a time, again after a while where it could not be reached. */

export const PAUSE_MS = 250;
export const AGAIN_MS = [1000, 3000, 10000, 30000];

/** A problem document that the service answered with; `away` where it could not be reached, was too busy or has failed. */
export class Refused extends Error {
  constructor(status, problem, away) {
    super(problem?.detail ?? 'no answer');
    this.status = status;
    this.errors = problem?.errors ?? [];
    this.away = away;
  }
}

/** Asked again later: the service is too busy, or has failed. */
const isAway = status => status === 408 || status === 429 || status >= 500;

/** Asks the service once. */
export async function post(path, request, language, signal, accept = 'application/json') {
  let response;
  try {
    response = await fetch(path, { method: 'POST', body: JSON.stringify(request), signal, credentials: 'omit',
      headers: { 'Content-Type': 'application/json', Accept: accept, 'Accept-Language': language } });
  } catch (fault) {
    if (fault.name === 'AbortError') { throw fault; }
    throw new Refused(0, null, true);
  }
  if (response.ok) { return accept === 'application/json' ? response.json() : response.blob(); }
  throw new Refused(response.status, await response.json().catch(() => null), isAway(response.status));
}

const calculation = (state, more = {}) => ({ state, missing: [], errors: [], since: Date.now(), ...more });

/**
 * Watches what is to be calculated. `run(job, signal)` resolves to an answer, `answered(job, answer)` gets it, `shows(calculation)`
 * each change of state. The clock can be another one in a test.
 */
export function createCalculator({ run, answered, shows, clock = globalThis }) {
  let wanted = null;
  let air = null;
  let timer = null;
  let tries = 0;

  function quiet() {
    clock.clearTimeout(timer);
    timer = null;
    air?.abort();
    air = null;
  }

  async function begin() {
    timer = null;
    const job = wanted;
    const mine = air = new AbortController();
    try {
      const answer = await run(job, mine.signal);
      if (air !== mine) { return; } // late, for older readings
      air = null;
      tries = 0;
      answered(job, answer);
      shows(calculation('fresh'));
    } catch (fault) {
      if (air !== mine) { return; }
      air = null;
      if (!(fault instanceof Refused)) { shows(calculation('failed')); throw fault; }
      if (fault.away) {
        shows(calculation('offline'));
        timer = clock.setTimeout(again, AGAIN_MS[Math.min(tries, AGAIN_MS.length - 1)]);
        tries += 1;
      } else {
        shows(calculation('failed', { errors: fault.errors, message: fault.message }));
      }
    }
  }

  function again() {
    if (wanted && !air) {
      clock.clearTimeout(timer);
      begin();
    }
  }

  return {
    /** What is to be known now: a job with its key, or what is missing for one; `known` is the key of the answer that is there. */
    want(job, missing, known) {
      if (!job) {
        quiet();
        wanted = null;
        shows(calculation('waiting', { missing }));
        return;
      }
      if (job.key === known) {
        quiet();
        wanted = null;
        shows(calculation('fresh'));
        return;
      }
      if (wanted?.key === job.key && (air || timer)) { return; }
      quiet();
      wanted = job;
      tries = 0;
      shows(calculation('working'));
      timer = clock.setTimeout(begin, PAUSE_MS);
    },
    /** Asks again at once, as when the page comes back or a person wishes it. */
    again,
    stop() {
      quiet();
      wanted = null;
    },
  };
}
