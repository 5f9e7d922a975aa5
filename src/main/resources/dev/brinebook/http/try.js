// SPDX-License-Identifier: Apache-2.0
// The console: loads the contract of the operation that the address names, and nothing while it names none.
const wanted = new URLSearchParams(location.search).get('operation');
const chosen = [...document.querySelectorAll('.choose a')].find(link => link.textContent === wanted);
const contractPlace = document.getElementById('contract');
// It brings its own style, so it is no part of what the docs style.
document.querySelector('main').after(contractPlace);

const dark = window.matchMedia('(prefers-color-scheme: dark)');
const follow = () => document.documentElement.classList.toggle('dark-mode', dark.matches);

function loaded(element) {
  return new Promise((resolve, reject) => {
    element.addEventListener('load', resolve);
    element.addEventListener('error', () => reject(new Error('not loaded')));
    document.head.append(element);
  });
}

// The contract names its examples by reference, which the viewer does not follow: it gets those of requests, and shows real answers.
async function withRequests(contract) {
  const examples = [];
  // Filled in, they would ask for a part of the answer.
  const operations = Object.values(contract.paths).flatMap(path => Object.values(path));
  [...Object.values(contract.components?.parameters ?? {}), ...operations.flatMap(operation => operation.parameters ?? [])]
    .filter(parameter => parameter.in === 'query' && !parameter.required).forEach(parameter => delete parameter.example);
  for (const operation of operations) {
    Object.values(operation.responses?.['200']?.content ?? {}).forEach(media => delete media.examples);
    examples.push(...Object.values(operation.requestBody?.content ?? {}).flatMap(media => Object.values(media.examples ?? {})));
  }
  await Promise.all(examples.filter(example => example.externalValue).map(async example => {
    const file = await fetch(`/${example.externalValue}`);
    example.value = await (file.headers.get('Content-Type').includes('json') ? file.json() : file.text());
    delete example.externalValue;
  }));
  return contract;
}

/** The part of a document at a path, with what each reference in it names in the place of the reference; none refers to itself. */
function resolved(contract, path) {
  const at = names => names.reduce((part, name) => part?.[name], contract);
  const known = new Map();
  const follow = part => {
    if (Array.isArray(part)) {
      return part.map(follow);
    }
    if (part === null || typeof part !== 'object') {
      return part;
    }
    if (typeof part.$ref !== 'string') {
      return Object.fromEntries(Object.entries(part).map(([name, value]) => [name, follow(value)]));
    }
    if (!known.has(part.$ref)) {
      known.set(part.$ref, follow(at(part.$ref.slice(2).split('/'))));
    }
    const { $ref, ...beside } = part;
    return { ...known.get($ref), ...beside, $$ref: $ref }; // where the viewer looks for the name
  };
  return follow(at(path));
}

// The viewer's own way to follow references takes seconds of the processor: it builds a tree of the whole contract for each part.
const FollowReferences = () => ({ fn: { resolveSubtree: async (contract, path) => ({ spec: resolved(contract, path), errors: [] }) } });

async function show(id) {
  const style = Object.assign(document.createElement('link'), { rel: 'stylesheet', href: '/docs/assets/swagger-ui.css' });
  const script = Object.assign(document.createElement('script'), { src: '/docs/assets/swagger-ui-bundle.js' });
  const [answer] = await Promise.all([fetch(`/openapi/${id}.json`), loaded(style), loaded(script)]);
  if (!answer.ok) {
    throw new Error(`the contract of ${id} is ${answer.status}`);
  }
  SwaggerUIBundle({
    spec: await withRequests(await answer.json()),
    dom_id: '#contract',
    tryItOutEnabled: true,
    validatorUrl: null,
    plugins: [FollowReferences],
    defaultModelsExpandDepth: -1,
    docExpansion: 'full',
  });
}

if (chosen) {
  dark.addEventListener('change', follow);
  follow();
  chosen.setAttribute('aria-current', 'page');
  contractPlace.textContent = 'Loading …';
  show(wanted).catch(fault => { contractPlace.textContent = `The console did not load: ${fault.message}.`; });
}
