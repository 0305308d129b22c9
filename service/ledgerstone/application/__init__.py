"""What answers a call: functions over one context, each usable without flask."""
