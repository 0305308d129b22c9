"""Conversion of JSON to records and back, patches, signed tokens, problem bodies; no flask."""
