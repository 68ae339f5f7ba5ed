"""All but, at the table: a sheet, a row or a rack typed by its exceptions and accepted once."""

from __future__ import annotations

from PySide6.QtCore import Qt
from PySide6.QtGui import QKeyEvent, QShowEvent
from PySide6.QtWidgets import QLineEdit, QVBoxLayout, QWidget

from keeper.actions import rounds
from keeper.actions.all_but import Remainder, Scope, accept, remainder, sheet_scope
from keeper.actions.keeping import Keeping
from keeper.actions.round_entries import OtherResult
from keeper.actions.rounds import Walk
from keeper.actions.sheets import VERB as SHEET
from keeper.actions.sheets import sheet_walk, typed_before
from keeper.actions.troubles import REFUSALS, said
from keeper.desktop.look import Look
from keeper.desktop.notices import Notices
from keeper.desktop.screens.all_but_typing import CODE, typed_exceptions, typed_scope
from keeper.desktop.type import Use
from keeper.desktop.widgets.words_line import HeadLine, Words
from keeper.language import tr
from keeper.reports.figures import night as night_words

WHAT_FOR = tr("the night at the table: all taken as planned, but what you type")
WHICH = tr("The code of a sheet, a row such as B3, or a rack such as B")
EXCEPTIONS = tr(
    "Line and result: 12 0 refused, 12 5 left in, 12 2 part, 12 7 1 not offered, opaque."
    "   −12 takes line 12 out.   Enter alone names the rest."
)
ACCEPT = tr("Enter accepts it, once.   Esc goes back to the exceptions.")
_LINES_APART = 10  # more of them run on, so that a whole sheet's exceptions stay in sight
DONE = tr("Nothing was added.   Esc begins with another sheet.")


class AllButScreen(QWidget):
    """One field and what was typed. Nothing is in the book until the remainder is accepted."""

    def __init__(self, look: Look, keeping: Keeping, notices: Notices) -> None:
        super().__init__()
        self._look, self._keeping, self._notices = look, keeping, notices
        self._walk: Walk | None = None
        self._scope: Scope | None = None
        self._sheet = False
        self._others: dict[int, OtherResult] = {}
        self._named: Remainder | None = None
        self._head = HeadLine(look)
        self._ask = Words(look, Use.BODY, "ink2")
        self.field = QLineEdit(self)
        self.rest = Words(look, Use.LINE_TITLE)
        self.below = Words(look, Use.BODY)
        self.field.returnPressed.connect(self._entered)
        self._lay_out()
        look.changed.connect(self._dress)
        self._dress()
        self._show()

    def scanned(self, code: str) -> None:
        """A scanned sheet code is as good as a typed one."""
        self.field.setText(code)
        self._entered()

    def showEvent(self, event: QShowEvent) -> None:
        super().showEvent(event)
        self.field.setFocus()

    def keyPressEvent(self, event: QKeyEvent) -> None:
        if event.key() != Qt.Key.Key_Escape or self._scope is None:
            super().keyPressEvent(event)  # with nothing begun, Esc is the place's
            return
        if self._named is not None and not self._named.again:
            self._named = None
        else:
            self._begin_anew()
        self._show()

    def _entered(self) -> None:
        text = self.field.text().strip()
        try:
            self._take(text)
        except REFUSALS as error:
            self._notices.refused.emit(said(error))
            self.field.selectAll()
            return
        self.field.clear()
        self._show()

    def _take(self, text: str) -> None:
        if self._scope is None:
            self._choose(text)
        elif CODE.fullmatch(text):
            self._refuse_sheet(text)
        elif self._named is not None and not text:
            self._accept()
        elif not text:
            self._named = self._remainder()
        elif text.startswith(("-", "−")):
            self._take_out(text[1:].strip())
        else:
            self._add(text)

    def _refuse_sheet(self, text: str) -> None:
        """A sheet's code while another scope is typed. Raises ValueError or LookupError."""
        if self._walk is not None:
            sheet_walk(self._keeping, text, self._walk)
        raise ValueError(tr("Lines of this night are being typed; Esc begins with another sheet."))

    def _choose(self, text: str) -> None:
        if not text:
            return
        self._sheet = CODE.fullmatch(text) is not None
        if self._sheet:
            self._walk = sheet_walk(self._keeping, text)
            self._scope = sheet_scope(self._walk)
            return
        walk = rounds.open_night(self._keeping) or rounds.last_night(self._keeping)
        if walk is None:
            raise LookupError(tr("No round was begun yet, so no line has a number."))
        self._scope, self._walk = typed_scope(walk, text), walk

    def _add(self, text: str) -> None:
        typed = typed_exceptions(text)
        before = dict(self._others)
        self._others |= {other.line: other for other in typed}
        try:
            self._remainder()
        except LookupError:
            self._others = before
            raise
        self._named = None

    def _take_out(self, text: str) -> None:
        if not text.isdecimal() or int(text) not in self._others:
            raise LookupError(tr("Line {line} is not among the exceptions.", line=text or "?"))
        del self._others[int(text)]
        self._named = None

    def _remainder(self) -> Remainder:
        if self._walk is None or self._scope is None:
            raise LookupError(tr("Name a sheet, a row or a rack first."))
        again = self._sheet and typed_before(self._keeping, self._walk)
        others = list(self._others.values())
        return remainder(self._keeping, self._walk, self._scope, others, again=again)

    def _accept(self) -> None:
        if self._named is None or self._walk is None:
            return
        verb = {"verb": SHEET} if self._sheet else {}
        written = accept(self._keeping, self._walk, self._named, **verb)
        self._begin_anew()
        self._notices.tell_written(written)

    def _begin_anew(self) -> None:
        self._walk = self._scope = self._named = None
        self._others = {}

    def _show(self) -> None:
        parts = [(WHAT_FOR, False)]
        if self._walk is not None and self._scope is not None:
            parts = [(self._scope.name, True), (night_words(self._walk.night), False)]
        count = len(self._others)
        typed = [tr("{count} typed", count=count)] if count else []
        self._head.show_words(tr("All but"), parts, typed)
        self._ask.setText(self._question())
        self.field.setAccessibleName(self._question())
        self.rest.setText(self._named.words if self._named else "")
        lines = self._lines()
        self.below.setText(("\n" if len(lines) <= _LINES_APART else "   ·   ").join(lines))

    def _question(self) -> str:
        if self._scope is None:
            return WHICH
        if self._named is None:
            return EXCEPTIONS
        return ACCEPT if self._named.writes else DONE

    def _lines(self) -> tuple[str, ...]:
        if self._scope is None:
            return ()
        return (self._named or self._remainder()).lines

    def _lay_out(self) -> None:
        page = QVBoxLayout(self)
        for part in (self._head, self._ask, self.field, self.rest, self.below):
            page.addWidget(part)
        page.addStretch(1)
        self.below.setAlignment(Qt.AlignmentFlag.AlignTop)
        self.setFocusProxy(self.field)

    def _dress(self) -> None:
        margin = round(self._look.u(7, 3.5))
        layout = self.layout()
        if layout is not None:
            layout.setContentsMargins(0, 0, 0, margin)
        self.field.setFont(self._look.font(Use.LINE_TITLE))
        for part in (self._ask, self.field, self.rest, self.below):
            part.setContentsMargins(margin, 0, margin, 0)
