"""Photos: only pixels are kept, each under its own hash, and no name leads out of the folder."""

import hashlib
from datetime import date

import pytest
from animal_window import K, desk, keeping
from life_sample import WREN, key_of
from PySide6.QtGui import QColor, QImage

from keeper.actions.animal_page import page_of
from keeper.actions.noting import note
from keeper.actions.photos import keep_photo, photo_of, photos_folder, picture_name
from keeper.actions.undoing import put_back, take_back
from keeper.desktop.picture_files import LONGEST_PX, reencoded
from keeper.husbandry.events import Remark, RemarkKind
from keeper.husbandry.when import on_day

DAY = date(2026, 11, 25)


__all__ = ["desk", "keeping"]


@pytest.fixture
def picture(tmp_path):
    """A large picture with words beside its pixels, as a camera writes them."""
    image = QImage(3000, 2000, QImage.Format.Format_RGB32)
    image.fill(QColor(90, 60, 30))
    image.setText("Location", "52.1 north, SECRET HOME")
    path = tmp_path / "from the camera, left.png"
    assert image.save(str(path))
    assert b"SECRET HOME" in path.read_bytes()
    return path


def photos_of(keeping):
    remarks = page_of(keeping, key_of(keeping, WREN), keeping.today).life.remarks
    return [remark for remark in remarks if remark.kind is RemarkKind.PHOTO]


def test_a_picture_is_kept_small_upright_and_without_what_the_camera_wrote(qapp, picture):
    made = QImage.fromData(reencoded(picture))

    assert (made.width(), made.height()) == (LONGEST_PX, LONGEST_PX * 2 // 3)
    assert b"SECRET" not in reencoded(picture)
    assert made.textKeys() == []


def test_a_jpeg_with_exif_loses_it_and_is_turned_as_it_says(qapp, tmp_path):
    """The EXIF block is written by hand after the TIFF 6.0 and EXIF 2.3 layouts: orientation 6."""
    image = QImage(40, 20, QImage.Format.Format_RGB32)
    image.fill(QColor(200, 10, 10))
    plain = tmp_path / "plain.jpg"
    image.save(str(plain))
    tag = b"\x01\x12\x00\x03\x00\x00\x00\x01\x00\x06\x00\x00"
    tiff = b"MM\x00\x2a\x00\x00\x00\x08\x00\x01" + tag + b"\x00\x00\x00\x00" + b"SECRET HOME"
    block = b"Exif\x00\x00" + tiff
    data = plain.read_bytes()
    turned = tmp_path / "turned.jpg"
    turned.write_bytes(
        data[:2] + b"\xff\xe1" + (len(block) + 2).to_bytes(2, "big") + block + data[2:]
    )

    made = reencoded(turned)

    assert (QImage.fromData(made).width(), QImage.fromData(made).height()) == (20, 40)
    assert b"SECRET" not in made and b"Exif" not in made


def test_a_photo_by_key_lies_under_its_hash_and_is_shown_on_its_day(desk, keeping, picture):
    desk.press(K.Key_O)
    desk.type(f"'{picture}', left eye after the shed", enter=False)
    assert (
        "it lies in animal.book.photos, to be copied with the book" in desk.page.line._hint.text()
    )
    desk.type("")

    (photo,) = photos_of(keeping)
    path = photo_of(keeping, photo)
    assert path.parent == photos_folder(keeping)
    assert hashlib.sha256(path.read_bytes()).hexdigest() == path.stem == photo.note
    assert "photo: left eye after the shed" in desk.foot
    assert desk.page.photos.isVisible()
    assert desk.page.photos.text() == "photo: left eye after the shed"
    assert photo.note not in desk.told

    desk.press(K.Key_Left)
    assert not desk.page.photos.isVisible()


def test_the_photo_is_painted_on_the_page(desk, picture):
    desk.press(K.Key_O)
    desk.type(f"'{picture}'")

    sheet = desk.page.photos
    seen = sheet.grab().toImage()
    assert seen.pixelColor(seen.width() // 2, seen.height() // 3).red() == pytest.approx(90, abs=6)


def test_an_entry_taken_back_and_written_again_finds_its_picture(qapp, keeping, picture):
    row = page_of(keeping, key_of(keeping, WREN), DAY).animal
    keep_photo(keeping, row, on_day(DAY), reencoded(picture), "left side")
    take_back(keeping)
    assert photos_of(keeping) == []

    put_back(keeping)

    (photo,) = photos_of(keeping)
    assert photo_of(keeping, photo) is not None


@pytest.mark.parametrize(
    "name", ["../../../etc/passwd", "/etc/passwd", "A" * 64, "", "0" * 63 + "/"]
)
def test_an_entry_with_a_hostile_name_leads_nowhere(keeping, name):
    remark = Remark(
        animal=key_of(keeping, WREN),
        happened=on_day(DAY),
        kind=RemarkKind.PHOTO,
        text="x",
        note=name or None,
    )

    assert picture_name(remark) is None
    assert photo_of(keeping, remark) is None


def test_a_picture_that_was_changed_or_is_a_link_is_not_shown(qapp, keeping, picture, tmp_path):
    row = page_of(keeping, key_of(keeping, WREN), DAY).animal
    keep_photo(keeping, row, on_day(DAY), reencoded(picture), "left side")
    (photo,) = photos_of(keeping)
    path = photo_of(keeping, photo)
    whole = path.read_bytes()

    path.write_bytes(whole + b" ")
    assert photo_of(keeping, photo) is None

    other = tmp_path / "elsewhere.jpg"
    other.write_bytes(whole)
    path.unlink()
    path.symlink_to(other)
    assert photo_of(keeping, photo) is None


def test_a_photo_whose_picture_is_gone_says_so(desk, keeping):
    gone = Remark(
        animal=key_of(keeping, WREN),
        happened=on_day(DAY),
        kind=RemarkKind.PHOTO,
        text="tail",
        note="0" * 64,
    )
    note(keeping, "photo", gone)
    desk.show(WREN)

    assert desk.page.photos.text() == "photo: tail (the picture is not in the folder)"


@pytest.mark.parametrize(
    ("name", "data", "said"),
    [
        ("a.jpg", b"<svg xmlns='http://www.w3.org/2000/svg'/>", "is not a JPEG, PNG or WebP"),
        ("b.png", b"\x89PNG\r\n\x1a\n broken", "cannot be read as a picture"),
        ("../up.png", None, "There is no file"),
    ],
)
def test_what_is_no_picture_is_one_sentence_and_nothing_is_kept(
    desk, keeping, tmp_path, name, data, said
):
    path = tmp_path / name
    if data is not None:
        path.write_bytes(data)

    desk.press(K.Key_O)
    desk.type(str(path))

    assert said in desk.foot
    assert photos_of(keeping) == []
    assert not photos_folder(keeping).exists()
    assert desk.page.line.field.text() == str(path)


def test_a_picture_with_a_hostile_name_writes_only_its_hash(desk, keeping, picture, tmp_path):
    hostile = tmp_path / "..%2f..%2fevil&$(touch x)'.png"
    hostile.write_bytes(picture.read_bytes())
    before = set(tmp_path.rglob("*"))

    desk.press(K.Key_O)
    desk.type(str(hostile))

    new = set(tmp_path.rglob("*")) - before
    folder = photos_folder(keeping)
    assert {path for path in new if path.suffix == ".jpg"} == set(folder.iterdir())
    assert all(
        path == folder or path.parent == folder or path.name.startswith("animal.book")
        for path in new
    )


def test_a_folder_that_cannot_be_written_leaves_the_book_as_it_was(desk, keeping, picture):
    photos_folder(keeping).write_text("in the way")

    desk.press(K.Key_O)
    desk.type(str(picture))

    assert "The photo was not kept" in desk.foot
    assert photos_of(keeping) == []
