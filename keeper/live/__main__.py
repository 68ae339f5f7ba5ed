"""The process that listens: ``python -m keeper.live``, begun by the window."""

import sys

from keeper.live.apart import serve

if __name__ == "__main__":
    serve(sys.stdin.buffer, sys.stdout.buffer)
