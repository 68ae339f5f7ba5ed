"""An invented collection, lived through day by day and written by the program's own verbs."""
