"""The places of the window: each joins the keeper's verbs with the drawn pieces."""
