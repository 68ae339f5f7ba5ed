"""Growth: what is expected at an age, how a weight stands to it, and when a weight is reached.

Importing this package imports nothing: ``lms``, ``expectation`` and ``own_stock`` are plain
Python for the start of the program; only ``curves``, ``mixed``, ``population`` and
``forecast`` compute with arrays.
"""
