"""Genes over a whole pedigree: odds, crosses, proving out, inbreeding.

Everything is reckoned exactly, from all animals at once, in plain Python. Nothing of the trade
is guessed here but what carries the name *common practice*.
"""
