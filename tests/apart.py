"""What a process of its own runs first, started in the project's folder, to import from here."""

OUR_TESTS = """
import sys, types
tests = types.ModuleType("tests")  # another package of that name may be installed
tests.__path__ = ["tests"]
sys.modules["tests"] = tests
"""
