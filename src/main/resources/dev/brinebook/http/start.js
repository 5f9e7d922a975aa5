SwaggerUIBundle({
  url: '/openapi.json',
  dom_id: '#contract',
  tryItOutEnabled: true,
  validatorUrl: null,
  defaultModelsExpandDepth: 0,
  docExpansion: 'list'
});
