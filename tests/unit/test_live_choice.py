"""Whether this machine listens for a book is this machine's to say, and no book's."""

import stat
from dataclasses import replace
from pathlib import Path

import pytest

from keeper.actions.live_choice import (
    LiveChoice,
    choice_for,
    choose,
    heard_probes,
    keep_heard,
    with_address,
    with_certificates,
)
from keeper.actions.station import HOME_VARIABLE


@pytest.fixture(autouse=True)
def home(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Path:
    monkeypatch.setenv(HOME_VARIABLE, str(tmp_path / "home"))
    return tmp_path / "home"


CHOSEN = LiveChoice(host="broker.local", user="ro", password="secret", on=True)


def test_nothing_is_switched_on_until_the_keeper_does(tmp_path):
    assert not choice_for(tmp_path / "a.book").on


def test_a_choice_is_of_one_book_and_lies_where_only_its_owner_reads(tmp_path, home):
    choose(tmp_path / "a.book", CHOSEN)
    choose(tmp_path / "b.book", replace(CHOSEN, port=1884))

    assert choice_for(tmp_path / "a.book") == CHOSEN
    assert choice_for(tmp_path / "c.book") == LiveChoice()
    assert stat.S_IMODE((home / "live.json").stat().st_mode) == 0o600


def test_a_file_that_is_none_of_ours_switches_nothing_on(tmp_path, home):
    home.mkdir()
    (home / "live.json").write_text('{"on": tru', encoding="utf-8")

    assert choice_for(tmp_path / "a.book") == LiveChoice()


@pytest.mark.parametrize(
    ("typed", "address"),
    [
        ("192.168.1.20", "192.168.1.20:1883"),
        ("broker.local:8883", "broker.local:8883"),
        ("ro@broker.local", "ro@broker.local:1883"),
        ("[fd00::1]:1884", "[fd00::1]:1884"),
    ],
)
def test_an_address_is_typed_as_user_host_and_port(typed, address):
    assert with_address(LiveChoice(), typed).address == address


@pytest.mark.parametrize("typed", ["", "a b", "host:0", "host:70000", "mqtt://host", "a@b@c"])
def test_what_is_no_address_is_refused_with_what_is_right(typed):
    with pytest.raises(ValueError, match="is right"):
        with_address(LiveChoice(), typed)


def test_a_password_is_not_sent_to_another_address():
    assert with_address(CHOSEN, "ro@elsewhere").password == ""
    assert with_address(CHOSEN, "ro@broker.local:1883").password == "secret"


def test_probes_heard_are_remembered_for_a_book_and_told_only_while_it_is_on(tmp_path):
    keep_heard(tmp_path / "a.book", ["K2", "K1"])
    keep_heard(tmp_path / "a.book", ["K3"])
    assert heard_probes(tmp_path / "a.book") == frozenset()

    choose(tmp_path / "a.book", CHOSEN)

    assert heard_probes(tmp_path / "a.book") == {"K1", "K2", "K3"}
    assert heard_probes(tmp_path / "b.book") == frozenset()


PEM = "-----BEGIN CERTIFICATE-----\nbm9uZQ==\n-----END CERTIFICATE-----\n"


def a_certificate(folder: Path) -> Path:
    path = folder / "ca.crt"
    path.write_text(f"house authority\n{PEM}", encoding="ascii")
    return path


def test_certificates_are_typed_as_none_the_system_s_or_a_file(tmp_path):
    path = a_certificate(tmp_path)
    by_file = with_certificates(CHOSEN, str(path))
    by_system = with_certificates(CHOSEN, "System")

    assert (by_file.tls, by_file.ca_file, by_file.port) == (True, str(path), 8883)
    assert (by_system.tls, by_system.ca_file) == (True, "")
    assert not with_certificates(by_file, "none").tls


def test_a_port_of_the_keeper_s_own_stays_where_it_is():
    own = with_certificates(replace(CHOSEN, port=2000), "system")

    assert (own.port, with_certificates(own, "none").port) == (2000, 2000)


def test_a_password_meant_for_tls_is_not_sent_without():
    by_system = with_certificates(CHOSEN, "system")

    assert by_system.password == "secret"
    assert with_certificates(by_system, "none").password == ""
    assert with_certificates(CHOSEN, "none").password == "secret"


def test_what_is_no_file_of_certificates_is_refused_with_what_is_right(tmp_path):
    other = tmp_path / "notes.txt"
    other.write_text("no certificate", encoding="ascii")

    for text, why in [
        (str(other), "holds no certificate in PEM"),
        (str(tmp_path / "gone.crt"), "No such file"),
        (str(tmp_path), "directory"),
    ]:
        with pytest.raises(ValueError, match=why):
            with_certificates(CHOSEN, text)


def test_a_choice_with_certificates_is_kept_for_its_owner_only(tmp_path, home):
    chosen = with_certificates(CHOSEN, str(a_certificate(tmp_path)))

    choose(tmp_path / "a.book", chosen)

    assert choice_for(tmp_path / "a.book") == chosen
    assert stat.S_IMODE((home / "live.json").stat().st_mode) == 0o600


def test_a_choice_kept_by_an_earlier_program_is_one_without_tls(tmp_path, home):
    home.mkdir()
    kept = f'{{"{tmp_path / "a.book"}": {{"host": "broker.local", "on": true}}}}'
    (home / "live.json").write_text(kept, encoding="utf-8")

    choice = choice_for(tmp_path / "a.book")

    assert (choice.on, choice.tls, choice.ca_file) == (True, False, "")
