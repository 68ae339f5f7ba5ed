"""Pure decisions: facts, profile and day in, an answer with its reasons out."""
