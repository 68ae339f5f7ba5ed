"""The record book: the only SQL in the program."""
