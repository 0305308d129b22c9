"""The OpenAPI document: what the service takes and answers, from the schemas that read it."""
