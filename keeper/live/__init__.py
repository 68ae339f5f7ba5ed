"""Probes heard as they read: the only part that reaches out, and only once it is switched on."""
