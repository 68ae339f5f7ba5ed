"""Two stations that share a past and go on, each beside a model: the machine behind two tests."""

import gc
from pathlib import Path
from typing import Any

from hypothesis import strategies as st
from hypothesis.stateful import RuleBasedStateMachine, initialize, invariant, precondition, rule

from keeper.store.backups import Backup, back_up, restore
from keeper.store.checking import check
from keeper.store.database import Book, create_book, open_book
from keeper.store.exchange import batch_keys, read_in, write_out
from keeper.store.journal import EntryKey, batch, withdraw_batch
from keeper.store.reading import board
from keeper.store.standing import reckoned
from keeper.store.state import differing
from tests.store.books import quick_folder, tables_of, tails
from tests.store.model import Batches, ModelBatch, board_of, standing_keys
from tests.strategies import WRITTEN, descriptions, events

COLLECT_AFTER = 100_000
"""A thousand histories are one test, and nothing else collects within a test."""

SIDES = st.sampled_from((0, 1))
TIMES = st.sampled_from(WRITTEN)


class Station:
    """One book and what it should say."""

    def __init__(self, book: Book) -> None:
        self.book = book
        self.model: Batches = {}
        self.animals: list[int] = []
        self.rounds: list[int] = []
        self.kept: tuple[Backup, Batches, list[int], list[int]] | None = None

    def take_over(self, other: "Station") -> None:
        self.model |= other.model
        self.animals = sorted({*self.animals, *other.animals})
        self.rounds = sorted({*self.rounds, *other.rounds})

    def reopen(self) -> None:
        self.book.close()
        self.book = open_book(self.book.path, station=self.book.station, tail=self.book.tail)

    def standing_batches(self) -> list[int]:
        return sorted(key for key, seq in standing_keys(self.model) if seq is None)

    def standing_entries(self) -> list[tuple[int, int]]:
        return sorted((key, seq) for key, seq in standing_keys(self.model) if seq is not None)


class TwoStations(RuleBasedStateMachine):
    """Record, take back, put back, correct, reopen, back up, restore, join: book = model."""

    def __init__(self) -> None:
        super().__init__()
        self.folder = quick_folder()
        self.stations: list[Station] = []

    @initialize(data=st.data())
    def begin_with_a_shared_past(self, data: Any) -> None:
        place = Path(self.folder.name)
        first = Station(create_book(place / "a.book", station="a", tail=tails(0)))
        self.stations = [first]
        self.bring(data, side=0, written=WRITTEN[0])
        self.record(data, side=0, written=WRITTEN[0])
        restore(back_up(first.book, "shared past"), place / "b.book")
        second = Station(open_book(place / "b.book", station="b", tail=tails(1)))
        second.take_over(first)
        self.stations.append(second)

    @precondition(lambda self: all(len(station.animals) < 3 for station in self.stations))
    @rule(data=st.data(), side=SIDES, written=TIMES)
    def bring(self, data: Any, side: int, written: Any) -> None:
        station = self.stations[side]
        with batch(station.book, verb="bring", keeper="Ro", written=written) as writer:
            animal = writer.new_animal()
            station.rounds.append(writer.new_round())
            station.animals.append(animal)
            said = data.draw(descriptions(animal, station.animals))
            writer.add(said)
        station.model[writer.id] = ModelBatch((said,))

    @rule(data=st.data(), side=SIDES, written=TIMES)
    def record(self, data: Any, side: int, written: Any) -> None:
        station = self.stations[side]
        drawn = st.lists(events(station.animals, station.rounds), min_size=1, max_size=5)
        said = data.draw(drawn)
        with batch(station.book, verb="note", keeper="Ro", written=written) as writer:
            writer.add(*said)
        station.model[writer.id] = ModelBatch(tuple(said))

    @rule(data=st.data(), side=SIDES, written=TIMES)
    def take_back(self, data: Any, side: int, written: Any) -> None:
        """Any batch that stands; taking back a taking back is redo."""
        station = self.stations[side]
        target = data.draw(st.sampled_from(station.standing_batches()))
        key = withdraw_batch(station.book, target, verb="back", keeper="Ro", written=written)
        station.model[key] = ModelBatch(targets=((target, None),))

    @precondition(lambda self: all(station.standing_entries() for station in self.stations))
    @rule(data=st.data(), side=SIDES, written=TIMES)
    def correct(self, data: Any, side: int, written: Any) -> None:
        station = self.stations[side]
        target = data.draw(st.sampled_from(station.standing_entries()))
        said = data.draw(events(station.animals, station.rounds))
        with batch(
            station.book, verb="correct", keeper="Ro", written=written, reason="misread"
        ) as writer:
            writer.withdraw(EntryKey(*target))
            writer.add(said)
        station.model[writer.id] = ModelBatch((said,), (target,))

    @rule(side=SIDES)
    def reopen(self, side: int) -> None:
        self.stations[side].reopen()

    @rule(side=SIDES)
    def keep_a_copy(self, side: int) -> None:
        station = self.stations[side]
        copy = back_up(station.book, "copy")
        station.kept = (copy, dict(station.model), list(station.animals), list(station.rounds))

    @precondition(lambda self: all(station.kept for station in self.stations))
    @rule(side=SIDES)
    def go_back_to_the_copy(self, side: int) -> None:
        station = self.stations[side]
        assert station.kept is not None
        copy, model, animals, rounds = station.kept
        station.book.close()
        restore(copy, station.book.path)
        station.model, station.animals, station.rounds = dict(model), list(animals), list(rounds)
        station.reopen()

    @rule(into=SIDES, data=st.data())
    def join(self, into: int, data: Any) -> None:
        """The other side's batches, in any order and some of them twice."""
        here, there = self.stations[into], self.stations[1 - into]
        keys = data.draw(st.permutations(batch_keys(there.book)))
        documents = [write_out(there.book, key) for key in (*keys, *keys[:2])]

        taken = read_in(here.book, documents)

        assert set(taken.new) == there.model.keys() - here.model.keys()
        assert set(taken.known) == there.model.keys() & here.model.keys()
        here.take_over(there)

    @invariant()
    def the_board_is_what_the_model_says(self) -> None:
        for station in self.stations:
            assert {row.animal: row for row in board(station.book)} == board_of(station.model)

    @invariant()
    def state_is_rebuild(self) -> None:
        for station in self.stations:
            connection = station.book.connection
            kept = set(connection.execute("SELECT batch, seq FROM withdrawn").fetchall())
            assert differing(connection) == []
            assert kept == reckoned(connection)

    def teardown(self) -> None:
        try:
            if len(self.stations) == 2:
                self._both_end_alike()
        finally:
            for station in self.stations:
                station.book.close()
            self.folder.cleanup()
            if gc.get_count()[0] > COLLECT_AFTER:
                gc.collect()

    def _both_end_alike(self) -> None:
        one, other = (station.book for station in self.stations)
        documents = [write_out(one, key) for key in batch_keys(one)]
        read_in(one, [write_out(other, key) for key in batch_keys(other)])
        read_in(other, documents)
        assert tables_of(one) == tables_of(other)
        assert check(one) == ()
