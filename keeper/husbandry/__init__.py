"""The vocabulary of the house: frozen dataclasses and enums, standard library only."""
