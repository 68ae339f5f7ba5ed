"""What the program costs, subject by subject; put together by demo/bench.py."""
