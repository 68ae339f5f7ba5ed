"""What a page asks of a desk: the newest answer alone is shown, whatever comes back when."""

from datetime import date
from types import SimpleNamespace

import pytest
from PySide6.QtWidgets import QWidget

from keeper.desktop.desk_reading import DeskReading

TODAY = date(2026, 11, 25)


class Later:
    """Jobs that wait until they are let go, in any order; nothing runs in another thread."""

    def __init__(self):
        self.jobs = []

    def run(self, job, done, failed):
        self.jobs.append((job, done, failed))

    def stop(self, last=None):
        last()

    def work(self, number=0):
        """Do the job *number* of those that wait, and give back how its answer is brought."""
        job, done, failed = self.jobs.pop(number)
        try:
            found = job()
        except Exception as error:
            trouble = error
            return lambda: failed(trouble)
        return lambda: done(found)


@pytest.fixture
def read(qtbot):
    page = QWidget()
    qtbot.addWidget(page)
    page.show()
    made = SimpleNamespace(
        page=page, keeping=SimpleNamespace(today=TODAY), shown=[], refused=[], closed=[]
    )
    made.worker = Later()
    made.reading = DeskReading(
        page,
        made.keeping,
        made.worker,
        question=lambda on: f"of {on:%d}, {next(made.count)}",
        take=made.shown.append,
        refused=made.refused.append,
        close=lambda: made.closed.append(True),
    )
    made.count = iter(range(9))
    return made


def test_it_reads_once_and_again_when_the_book_or_the_day_is_another(read):
    for _ in range(2):
        read.reading.look()
    read.worker.work()()
    read.reading.hear()
    read.worker.work()()
    read.keeping.today = date(2026, 11, 26)
    read.reading.look()
    read.worker.work()()

    assert read.shown == ["of 25, 0", "of 25, 1", "of 26, 2"]
    assert read.worker.jobs == []


def test_a_page_out_of_sight_reads_when_it_is_looked_at(read):
    read.page.hide()
    read.reading.hear()
    assert read.worker.jobs == [] and read.reading.stale

    read.reading.look()

    assert len(read.worker.jobs) == 1 and not read.reading.stale


def test_an_answer_of_an_older_reading_is_dropped(read):
    read.reading.look()
    old = read.worker.work()
    read.reading.hear()
    new = read.worker.work()
    new()
    old()

    assert read.shown == ["of 25, 1"]


def test_what_is_no_longer_asked_for_is_not_even_done(read):
    done = []
    read.reading.look()
    read.worker.work()()
    read.reading.further(lambda: done.append("further"), done.append)
    read.reading.hear()
    read.worker.work(0)()

    assert done == []


def test_beside_a_reading_only_what_was_asked_last_is_shown_and_what_follows_it(read):
    shown = []
    read.reading.beside(lambda: "first", shown.append)
    first = read.worker.work()
    read.reading.beside(lambda: "second", shown.append)
    second = read.worker.work()
    first()
    second()
    read.reading.then(lambda: "more of the second", shown.append)
    more = read.worker.work()
    more()
    read.reading.then(lambda: "late", shown.append)
    late = read.worker.work()
    read.reading.beside(lambda: "third", shown.append)
    late()

    assert shown == ["second", "more of the second"]


def test_an_answer_of_nothing_is_an_answer(read):
    shown = []
    read.reading.beside(lambda: None, shown.append)
    read.worker.work()()

    assert shown == [None]


def test_a_refusal_is_told_and_any_other_fault_is_not_hidden(read):
    def fail(error):
        raise error

    read.reading.further(lambda: fail(LookupError("no book")), read.shown.append)
    read.worker.work()()
    assert read.refused == ["no book"]

    read.reading.further(lambda: fail(ZeroDivisionError()), read.shown.append)
    with pytest.raises(ZeroDivisionError):
        read.worker.work()()


def test_after_its_end_nothing_is_shown_and_the_book_is_let_go(read):
    read.reading.look()
    late = read.worker.work()
    read.reading.stop()
    late()

    assert (read.shown, read.closed) == ([], [True])
