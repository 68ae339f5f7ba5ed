"""The round by real keys: from the key to the next tub painted, the entry durable before."""

from PySide6.QtCore import QEvent, QObject, Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QWidget

from benches.books import NIGHT, Size, book_of, written_in
from benches.measuring import Row, collector_spared, time_row, timed, worst_row
from keeper import app as program
from keeper.actions.keeping import Keeping
from keeper.desktop.house import House
from keeper.desktop.look import Look

SIZE = (1440, 900)
KEY_MS, KEY_P99_MS, BEGIN_MS = 16.0, 50.0, 1000.0


class Painted(QObject):
    """Counts what is painted on a page."""

    def __init__(self, page: QWidget) -> None:
        super().__init__()
        self._page = page
        self.times = 0

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        if event.type() == QEvent.Type.Paint and isinstance(watched, QWidget):
            self.times += self._page.isAncestorOf(watched)
        return False


def rows(size: Size, keys: int) -> list[Row]:
    """Begin tonight's round and press Enter *keys* times.

    Raises:
        RuntimeError: a key painted nothing, or wrote no entry.
    """
    with written_in(book_of(size)) as keeping, collector_spared():
        house = _house(keeping)
        page = house.window.page("Round")
        painted = Painted(page)
        QApplication.instance().installEventFilter(painted)  # type: ignore[union-attr]
        begun = timed(lambda: _press(page))
        seconds = []
        for _ in range(keys):
            before = painted.times
            seconds.append(timed(lambda: _press(page)))
            if painted.times == before:
                raise RuntimeError("a key of the round painted nothing")
        _check(keeping, keys)
        QApplication.instance().removeEventFilter(painted)  # type: ignore[union-attr]
        _shut(house)
    subject = "key to next tub painted, entry durable"
    return [
        time_row("round begun and its first tub painted", str(size), [begun], most_ms=BEGIN_MS),
        time_row(subject, str(size), seconds, most_ms=KEY_MS),
        worst_row(subject, str(size), seconds, most_ms=KEY_P99_MS),
    ]


def _house(keeping: Keeping) -> House:
    program.application()
    house = House(keeping, Look(), {"Round": program.PLACES["Round"]})
    house.window.resize(*SIZE)
    house.window.show()
    QTest.qWaitForWindowExposed(house.window)
    QApplication.processEvents()
    return house


def _press(page: QWidget) -> None:
    QTest.keyClick(page, Qt.Key.Key_Enter, Qt.KeyboardModifier.KeypadModifier)
    QApplication.processEvents()


def _check(keeping: Keeping, keys: int) -> None:
    """Every key but the first wrote one offer of tonight's round."""
    (written,) = keeping.book.connection.execute(
        "SELECT count(*) FROM offer WHERE round = (SELECT max(id) FROM round)"
    ).fetchone()
    if written != keys:
        raise RuntimeError(f"{keys} keys of the round of {NIGHT} wrote {written} entries")


def _shut(house: House) -> None:
    house.window.close()  # its clock stands still with it
    house.window.deleteLater()
    QApplication.processEvents()
