"""Reads a window back through AT-SPI as assistive technology would, as JSON.

Run by the system's Python, which has the bindings (Debian: python3-gi, gir1.2-atspi-2.0), inside
a D-Bus session and a screen of its own: ``at_spi_reader.py OUT PLACE...`` waits for the program's
window, presses the tab of each place in turn, and writes what is under it to OUT.
"""

import json
import sys
import time
from pathlib import Path

import gi

gi.require_version("Atspi", "2.0")
from gi.repository import Atspi  # noqa: E402

APPLICATION = "keeper"
WAIT_SECONDS = 60.0


def main(out: str, places: "list[str]") -> int:
    frame = wait_for(lambda: next(named_frames(), None), "the window")
    read = {place: read_place(frame, place) for place in places}
    Path(out).write_text(json.dumps(read), encoding="utf-8")
    return 0


def read_place(frame, place):
    press(wait_for(lambda: find(frame, "page tab", place), f"the tab of {place}"))
    wait_for(lambda: place in (frame.get_name() or ""), f"the place {place}")
    time.sleep(1.0)
    return [told(each) for each in tree(frame)]


def named_frames():
    desktop = Atspi.get_desktop(0)
    for number in range(desktop.get_child_count()):
        program = desktop.get_child_at_index(number)
        if program is not None and program.get_name() == APPLICATION:
            for child in range(program.get_child_count()):
                yield program.get_child_at_index(child)


def wait_for(look, what):
    ends = time.monotonic() + WAIT_SECONDS
    while time.monotonic() < ends:
        found = look()
        if found:
            return found
        time.sleep(0.2)
    raise SystemExit(f"{what} did not come within {WAIT_SECONDS:.0f} s")


def tree(top):
    yield top
    for number in range(top.get_child_count()):
        child = top.get_child_at_index(number)
        if child is not None:
            yield from tree(child)


def find(top, role, name):
    for each in tree(top):
        if each.get_role_name() == role and (each.get_name() or "").startswith(name):
            return each
    return None


def press(tab):
    Atspi.Component.grab_focus(tab)
    for number in range(Atspi.Action.get_n_actions(tab)):
        if Atspi.Action.get_action_name(tab, number) == "Press":
            Atspi.Action.do_action(tab, number)


def told(each):
    states = each.get_state_set()
    return {
        "role": each.get_role_name(),
        "name": each.get_name() or "",
        "says": each.get_description() or "",
        "focusable": states.contains(Atspi.StateType.FOCUSABLE),
        "showing": states.contains(Atspi.StateType.SHOWING),
    }


if __name__ == "__main__":
    sys.exit(main(sys.argv[1], sys.argv[2:]))
