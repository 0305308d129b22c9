"""Answers to calls: functions over one context, each usable without flask."""
