"""A label scanner is heard anywhere and never types into a field; a person still can."""

from PySide6.QtCore import Qt
from PySide6.QtGui import QAction, QKeySequence
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QLineEdit

from keeper.desktop.look import Look
from keeper.desktop.main_window import MainWindow


def test_a_scanned_label_reaches_no_field_and_no_shortcut(shell, qtbot):
    field = QLineEdit(shell.page("Round"))
    field.show()
    field.setFocus()
    shortcut = QAction("mark", shell, shortcut=QKeySequence("B"))
    triggered = []
    shortcut.triggered.connect(lambda: triggered.append(1))
    shell.addAction(shortcut)

    with qtbot.waitSignal(shell.scanned, timeout=1000) as heard:
        for letter in ";TUB-B3.6":
            QTest.keyClick(shell.windowHandle(), letter)
        QTest.keyClick(shell.windowHandle(), Qt.Key.Key_Return)

    assert heard.args == ["TUB-B3.6"]
    assert field.text() == ""
    assert triggered == []


def test_a_semicolon_typed_by_hand_comes_back(shell, qtbot):
    field = QLineEdit(shell.page("Round"))
    field.show()
    field.setFocus()

    QTest.keyClick(shell.windowHandle(), ";")
    QTest.keyClick(shell.windowHandle(), "x")

    qtbot.waitUntil(lambda: field.text() == ";x", timeout=2000)


def test_enter_by_itself_is_not_swallowed(shell, qtbot):
    field = QLineEdit(shell.page("Round"))
    field.show()
    field.setFocus()

    with qtbot.waitSignal(field.returnPressed, timeout=1000):
        QTest.keyClick(shell.windowHandle(), Qt.Key.Key_Return)


def test_what_one_window_gives_back_is_not_held_by_another(qtbot, shell):
    behind = MainWindow(Look(), [])
    qtbot.addWidget(behind)
    field = QLineEdit(shell.page("Round"))
    field.show()
    field.setFocus()

    QTest.keyClick(shell.windowHandle(), ";")
    QTest.keyClick(shell.windowHandle(), "x")

    qtbot.waitUntil(lambda: field.text() == ";x", timeout=2000)
