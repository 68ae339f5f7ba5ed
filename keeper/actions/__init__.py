"""The keeper's verbs: they join book and rules, and return rows to show or what was written."""
