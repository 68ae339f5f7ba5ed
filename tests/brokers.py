"""A message broker on loopback for the tests: Debian's mosquitto, from a configuration file."""

from __future__ import annotations

import getpass
import shutil
import socket
import subprocess
import sys
from pathlib import Path
from time import monotonic, sleep
from typing import NamedTuple

import pytest

PROGRAM = shutil.which("mosquitto") or shutil.which("mosquitto", path="/usr/sbin")

needs_broker = pytest.mark.skipif(
    PROGRAM is None, reason="mosquitto is not installed: apt-get install -y mosquitto"
)

PUBLISH = """
import json, sys
from paho.mqtt.client import Client
from paho.mqtt.enums import CallbackAPIVersion

port, qos = int(sys.argv[1]), int(sys.argv[2])
client = Client(CallbackAPIVersion.VERSION2)
client.max_queued_messages_set(0)
client.connect("127.0.0.1", port)
client.loop_start()
sent = [client.publish(*json.loads(line), qos=qos) for line in sys.stdin]
for each in sent:
    each.wait_for_publish(60)
client.disconnect()
client.loop_stop()
"""
"""Publishes each line of its input, a topic and a message; ends when the broker has them all."""


class Shown(NamedTuple):
    """What a broker shows of itself: files in PEM."""

    certificate: Path
    key: Path


class LoopbackBroker:
    """Started and stopped at will; what it is to keep outlasts a stop, as its sessions do."""

    def __init__(
        self, folder: Path, *, passwords: Path | None = None, shown: Shown | None = None
    ) -> None:
        folder.mkdir()
        self.port = _free_port()
        self._config = folder / "mosquitto.conf"
        lines = [
            f"listener {self.port} 127.0.0.1",
            f"allow_anonymous {'false' if passwords else 'true'}",
            f"user {getpass.getuser()}",
            "persistence true",
            f"persistence_location {folder}/",
            "max_queued_messages 0",
            *([f"password_file {passwords}"] if passwords else []),
            *([f"certfile {shown.certificate}", f"keyfile {shown.key}"] if shown else []),
        ]
        self._config.write_text("\n".join(lines) + "\n", encoding="utf-8")
        self._running: subprocess.Popen[bytes] | None = None

    def start(self) -> None:
        assert PROGRAM is not None
        self._running = subprocess.Popen(
            [PROGRAM, "-c", str(self._config)],
            stdout=subprocess.DEVNULL,
            stderr=subprocess.DEVNULL,
        )
        end = monotonic() + 10
        while monotonic() < end:
            with socket.socket() as probe:
                if probe.connect_ex(("127.0.0.1", self.port)) == 0:
                    return
            sleep(0.05)
        raise AssertionError("the broker does not answer")

    def stop(self) -> None:
        if self._running is not None:
            self._running.terminate()
            self._running.wait(10)
            self._running = None

    def publish(self, lines: list[str], *, qos: int = 1) -> None:
        """Publish *lines* from a process of its own and wait until the broker has them."""
        subprocess.run(
            [sys.executable, "-c", PUBLISH, str(self.port), str(qos)],
            input="\n".join(lines).encode(),
            check=True,
            timeout=120,
        )

    def publish_aside(self, lines: list[str], *, qos: int = 1) -> subprocess.Popen[bytes]:
        """The same without waiting."""
        started = subprocess.Popen(
            [sys.executable, "-c", PUBLISH, str(self.port), str(qos)], stdin=subprocess.PIPE
        )
        assert started.stdin is not None
        started.stdin.write("\n".join(lines).encode())
        started.stdin.close()
        return started


def _free_port() -> int:
    with socket.socket() as taken:
        taken.bind(("127.0.0.1", 0))
        return int(taken.getsockname()[1])
