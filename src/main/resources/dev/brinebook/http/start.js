const dark = window.matchMedia('(prefers-color-scheme: dark)');
const follow = () => document.documentElement.classList.toggle('dark-mode', dark.matches);
dark.addEventListener('change', follow);
follow();

// The contract names its examples by reference, which the viewer does not follow: it gets the requests, and shows the real answers.
const fillIn = async media => {
  for (const example of Object.values(media.examples ?? {})) {
    const file = await fetch('/' + example.externalValue);
    example.value = await (file.headers.get('Content-Type').startsWith('application/json') ? file.json() : file.text());
    delete example.externalValue;
  }
};

const start = async () => {
  const contract = await (await fetch('/openapi.json')).json();
  const requests = [];
  for (const path of Object.values(contract.paths)) {
    for (const operation of Object.values(path)) {
      Object.values(operation.responses['200']?.content ?? {}).forEach(media => delete media.examples);
      requests.push(...Object.values(operation.requestBody?.content ?? {}).filter(media => Object.values(media.examples ?? {})
        .some(example => example.externalValue)));
    }
  }
  await Promise.all(requests.map(fillIn));
  SwaggerUIBundle({
    spec: contract,
    dom_id: '#contract',
    deepLinking: true,
    tryItOutEnabled: true,
    validatorUrl: null,
    defaultModelsExpandDepth: -1,
    docExpansion: 'list'
  });
};

start();
