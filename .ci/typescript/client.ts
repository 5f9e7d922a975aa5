// The client, and what an answer is held to.
import assert from 'node:assert/strict';
import createClient from 'openapi-fetch';
import type {paths} from './contract.js';

export const client = createClient<paths>({baseUrl: process.argv[2]!});

/** Ids of the operations that were called. */
export const seen = new Set<string>();

/** How NDJSON is sent and read, which is no JSON value. */
export const ndjson = {
  headers: {'Content-Type': 'application/x-ndjson'},
  bodySerializer: (lines: string) => lines,
  parseAs: 'text',
} as const;

type Call<T> = Promise<{data?: T, error?: unknown, response: Response}>;

export let count = 0;

/** The expected answer must have the type that the client promises. */
export async function sameAnswer<T>(what: string, call: Call<T>, expected: NoInfer<T>): Promise<void> {
  const {data, error, response} = await call;
  assert.equal(response.status, 200, `${what}: ${JSON.stringify(error)}`);
  assert.deepStrictEqual(data, expected, what);
  count++;
}

export async function sameLines(what: string, call: Call<string>, expected: unknown[]): Promise<void> {
  const {data, error} = await call;
  const lines = data?.trimEnd().split('\n').map(line => JSON.parse(line) as unknown);
  assert.deepStrictEqual(lines, expected, `${what}: ${JSON.stringify(error)}`);
  count++;
}
