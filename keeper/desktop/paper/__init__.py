"""Paper: what is printed, black on white, for a wet bench."""
