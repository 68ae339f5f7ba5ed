"""A line with TLS to a real broker: taken where its certificate is vouched for, and only there."""

from __future__ import annotations

import subprocess
import sys
from collections.abc import Iterator
from contextlib import closing, contextmanager
from pathlib import Path

import pytest

from keeper.actions.keeping import Keeping, new_keeping
from keeper.actions.live_choice import LiveChoice
from keeper.actions.station import HOME_VARIABLE
from keeper.live.receiving import LiveState, Receiver
from tests.brokers import LoopbackBroker, Shown, needs_broker
from tests.live.test_receiving import Heard, utc_now

pytestmark = [
    needs_broker,
    # the client drops a socket whose handshake failed without closing it
    pytest.mark.filterwarnings("ignore:unclosed <ssl.SSLSocket:ResourceWarning"),
    pytest.mark.filterwarnings("ignore:Exception ignored in. <ssl.SSLSocket"),
]

ADDRESS = "127.0.0.1"


class Authority:
    """A certificate authority of the tests' own; its key never leaves the folder."""

    def __init__(self, folder: Path, name: str) -> None:
        self._folder, self.certificate = folder, folder / f"{name}.crt"
        self._key = folder / f"{name}.key"
        _openssl(
            *(
                "req",
                "-x509",
                "-newkey",
                "rsa:2048",
                "-nodes",
                "-days",
                "2",
                "-subj",
                f"/CN={name}",
            ),
            *("-addext", "basicConstraints=critical,CA:TRUE"),
            *("-keyout", str(self._key), "-out", str(self.certificate)),
        )

    def issue(self, name: str, subject: str, days: int = 2) -> Shown:
        """A broker's certificate for the alternative name *subject*; days below 0: has ended."""
        key, asked = self._folder / f"{name}.key", self._folder / f"{name}.csr"
        made, more = self._folder / f"{name}.crt", self._folder / f"{name}.ext"
        more.write_text(f"subjectAltName={subject}\n", encoding="ascii")
        _openssl(
            *("req", "-new", "-newkey", "rsa:2048", "-nodes", "-subj", f"/CN={name}"),
            *("-keyout", str(key), "-out", str(asked)),
        )
        _openssl(
            *("x509", "-req", "-in", str(asked), "-CA", str(self.certificate)),
            *("-CAkey", str(self._key), "-CAcreateserial", "-days", str(days)),
            *("-extfile", str(more), "-out", str(made)),
        )
        return Shown(made, key)


def _openssl(*words: str) -> None:
    subprocess.run(["openssl", *words], check=True, capture_output=True, timeout=60)


@pytest.fixture(scope="module")
def authority(tmp_path_factory: pytest.TempPathFactory) -> Authority:
    return Authority(tmp_path_factory.mktemp("own"), "house")


@pytest.fixture(scope="module")
def stranger(tmp_path_factory: pytest.TempPathFactory) -> Authority:
    return Authority(tmp_path_factory.mktemp("other"), "stranger")


@pytest.fixture(autouse=True)
def home(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setenv(HOME_VARIABLE, str(tmp_path / "home"))


@pytest.fixture
def keeping(tmp_path: Path) -> Iterator[Keeping]:
    with closing(new_keeping(tmp_path / "a.book", station="s", now=utc_now)) as made:
        yield made


@contextmanager
def running(tmp_path: Path, shown: Shown | None, **more: Path) -> Iterator[LoopbackBroker]:
    broker = LoopbackBroker(tmp_path / "broker", shown=shown, **more)
    broker.start()
    try:
        yield broker
    finally:
        broker.stop()


def told_first(keeping: Keeping, port: int, **chosen: object) -> LiveState:
    """The first state that is not that of an attempt to connect."""
    heard = Heard()
    choice = LiveChoice(**({"host": ADDRESS, "port": port, "on": True, "tls": True} | chosen))
    book = keeping.book
    receiver = Receiver(book.path, book.station, keeping.now, choice, heard.states.append)
    receiver.start(["room/+"])
    try:
        heard.wait(lambda state: state.standing not in ("off", "connecting"))
        return heard.last
    finally:
        receiver.stop(5)


@pytest.mark.parametrize("protocol", ["3.1.1", "5"])
def test_a_broker_whose_authority_is_named_is_listened_to(keeping, tmp_path, authority, protocol):
    shown = authority.issue("good", f"IP:{ADDRESS}")

    with running(tmp_path, shown) as broker:
        state = told_first(
            keeping, broker.port, ca_file=str(authority.certificate), protocol=protocol
        )

    assert (state.standing, state.told) == ("listening", f"Listening to {ADDRESS}:{broker.port}.")


def test_a_name_is_checked_as_well_as_a_number(keeping, tmp_path, authority):
    shown = authority.issue("named", "DNS:localhost")

    with running(tmp_path, shown) as broker:
        by_name = told_first(
            keeping, broker.port, host="localhost", ca_file=str(authority.certificate)
        )
        by_number = told_first(keeping, broker.port, ca_file=str(authority.certificate))

    assert by_name.standing == "listening"
    assert by_number.standing == "refused"
    assert "is for another name; A takes the name" in by_number.told


def test_an_authority_that_nobody_named_is_refused_in_one_sentence(
    keeping, tmp_path, authority, stranger
):
    shown = stranger.issue("strange", f"IP:{ADDRESS}")

    with running(tmp_path, shown) as broker:
        by_file = told_first(keeping, broker.port, ca_file=str(authority.certificate))
        by_system = told_first(keeping, broker.port)

    address = f"{ADDRESS}:{broker.port}"
    assert (by_file.standing, by_system.standing) == ("refused", "refused")
    assert by_file.told.startswith(
        f"The certificate of {address} is not vouched for by {authority.certificate} ("
    )
    assert by_file.told.endswith("); C names the file of its authority. Tried again.")
    assert "is not vouched for by this system" in by_system.told


def test_a_certificate_that_has_ended_is_told_as_such(keeping, tmp_path, authority):
    shown = authority.issue("ended", f"IP:{ADDRESS}", days=-1)

    with running(tmp_path, shown) as broker:
        state = told_first(keeping, broker.port, ca_file=str(authority.certificate))

    assert state.standing == "refused"
    assert "has ended; it needs a new one" in state.told


def test_a_broker_without_tls_is_told_as_such(keeping, tmp_path, authority):
    with running(tmp_path, None) as broker:
        state = told_first(keeping, broker.port, ca_file=str(authority.certificate))

    assert state.standing == "refused"
    assert "agrees on no TLS at this port" in state.told


def test_a_file_that_is_gone_or_no_certificate_is_told_before_anything_is_sent(keeping, tmp_path):
    other = tmp_path / "other.crt"
    other.write_text("-----BEGIN CERTIFICATE-----\nbm9uZQ==\n-----END CERTIFICATE-----\n")

    gone = told_first(keeping, 1, ca_file=str(tmp_path / "gone.crt"))
    none = told_first(keeping, 1, ca_file=str(other))

    assert (gone.standing, none.standing) == ("cannot", "cannot")
    assert "gone.crt cannot be used: No such file" in gone.told
    assert "other.crt cannot be used: it holds no certificate" in none.told


def test_user_and_password_go_over_the_line_with_tls(keeping, tmp_path, authority):
    passwords = tmp_path / "passwords"
    subprocess.run(
        ["mosquitto_passwd", "-b", "-c", str(passwords), "ro", "secret"],
        check=True,
        capture_output=True,
    )
    shown = authority.issue("asking", f"IP:{ADDRESS}")

    with running(tmp_path, shown, passwords=passwords) as broker:
        right = {"ca_file": str(authority.certificate), "user": "ro"}
        known = told_first(keeping, broker.port, password="secret", **right)
        wrong = told_first(keeping, broker.port, password="guess", **right)

    assert known.standing == "listening"
    assert wrong.standing == "refused"


def test_no_password_leaves_before_the_certificate_is_accepted(keeping, authority, stranger):
    """A false broker in a process of its own says what it could read: nothing."""
    shown = stranger.issue("false", f"IP:{ADDRESS}")
    with closing(FalseBroker(shown)) as false:
        told_first(
            keeping, false.port, ca_file=str(authority.certificate), user="ro", password="secret"
        )
        heard = false.heard()

    assert heard == b""


FALSE_BROKER = """
import socket, ssl, sys
context = ssl.SSLContext(ssl.PROTOCOL_TLS_SERVER)
context.load_cert_chain(sys.argv[1], sys.argv[2])
with socket.create_server(("127.0.0.1", 0)) as server:
    print(server.getsockname()[1], flush=True)
    peer, _ = server.accept()
    peer.settimeout(5)
    try:
        heard = context.wrap_socket(peer, server_side=True).recv(4096)
    except OSError:
        heard = b""
    print(heard.hex(), flush=True)
"""


class FalseBroker:
    """Shows a certificate and says in hexadecimal what was told to it after the handshake."""

    def __init__(self, shown: Shown) -> None:
        self._process = subprocess.Popen(
            [sys.executable, "-c", FALSE_BROKER, str(shown.certificate), str(shown.key)],
            stdout=subprocess.PIPE,
            text=True,
        )
        assert self._process.stdout is not None
        self.port = int(self._process.stdout.readline())

    def heard(self) -> bytes:
        assert self._process.stdout is not None
        return bytes.fromhex(self._process.stdout.readline().strip())

    def close(self) -> None:
        self._process.terminate()
        self._process.wait(10)
        if self._process.stdout is not None:
            self._process.stdout.close()
