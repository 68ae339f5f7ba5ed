"""Tables as Qt models: they are given rows and ask nobody."""
