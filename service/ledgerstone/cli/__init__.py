"""The command lines: an order without a server, the profile, past jobs, shades, test strips."""
