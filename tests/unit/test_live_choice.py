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
