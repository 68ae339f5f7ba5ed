"""Pure renderers: what the rules found, put into words and figures that a keeper reads."""
