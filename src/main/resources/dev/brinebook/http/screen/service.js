/** Asks the service, as any caller does. */

/** A problem document that the service answered with, or `away` when there was no answer. */
export class Refused extends Error {
  constructor(problem, away) {
    super(problem?.detail ?? 'no answer');
    this.errors = problem?.errors ?? [];
    this.away = away;
  }
}

export async function ask(path, request, signal, language, accept = 'application/json') {
  let response;
  try {
    response = await fetch(path, { method: 'POST', body: JSON.stringify(request), signal, credentials: 'omit',
      headers: { 'Content-Type': 'application/json', Accept: accept, 'Accept-Language': language } });
  } catch (fault) {
    if (fault.name === 'AbortError') { throw fault; }
    throw new Refused(null, true);
  }
  if (response.ok) { return accept === 'application/json' ? response.json() : response.blob(); }
  throw new Refused(await response.json().catch(() => null), response.status >= 500);
}
