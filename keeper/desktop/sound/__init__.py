"""Sound: what a round and an alarm are heard by, where the keeper wants it."""
