"""The command lines: orders, enquiries, profiles, past jobs, shades, test strips, the mailbox."""
