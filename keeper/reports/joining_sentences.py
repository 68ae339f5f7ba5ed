"""What is said of a book that is written out whole, and of another that is joined to this one."""

from collections.abc import Mapping

from keeper.language import tr_table

_ENGLISH: Mapping[str, str | tuple[str, ...]] = {
    "bundle is there": "{path} is there already; a new folder needs a name of its own.",
    "bundle refused": "{path} could not be written: {told}.",
    "no bundle": (
        "{path} is no book written out; name the folder that was written, which holds cover.csv."
    ),
    "bundle newer": (
        "{path} was written in form {version} by a newer program; bring this one up to date first."
    ),
    "bundle short": (
        "{file}: {count:n} lines were written, {found:n} are there; have the folder written anew."
    ),
    "bundle stray line": (
        "{file}: a line belongs to batch {batch}, which batches.csv does not hold; have the folder"
        " written anew."
    ),
    "bundle line": "{file}, line {line:n}: {told}",
    "bundle heading": "the columns must be {right}; have the folder written anew.",
    "bundle cells": "a line has {have:n} cells in place of {need:n}.",
    "bundle cell": "{column} cannot be {written}.",
    "step reading": "Reading: {done:n} of {count:lines}. Esc calls it off.",
    "step checking": "Checking: {done:n} of {count:entries}. Esc calls it off.",
    "step comparing": (
        "Comparing: {done:n} of {count:entries}. Esc calls it off.",
        "Comparing. Esc calls it off.",
    ),
    "step backing up": "Backing the book up first. Esc calls it off.",
    "step writing": ("Writing: {done:n} of {count:lines}. Esc calls it off.", "Writing."),
    "parents of one passed on": ("Dam {dam}, sire {sire}.", "Dam {dam}.", "Sire {sire}."),
    "bundle written": (
        "{path}: {animals:animals}, {entries:entries}, {photos:n} photos and {readings:n} readings,"
        " a table for each kind of entry."
    ),
    "pairings stayed": "{count:n} pairings stay here: the mate is not passed on.",
    "joining": (
        "New: {animals:animals}, {entries:entries} in {new:lines}, {photos:n} photos and"
        " {readings:n} readings. The same in both: {known:lines}."
    ),
    "joining nothing": "Nothing is new: all {known:lines} stand in the book already.",
    "joining conflicts": (
        "{count:lines} say other things here than there, under the same key. One of the two books"
        " was changed from outside; nothing can be joined. The first is {first}."
    ),
    "joining readings differ": (
        "{count:n} readings differ from those here, the first of probe {probe} on {on:day}; no"
        " reading comes along."
    ),
    "joining clashes": "Told differently, both tellings stay until one is put right:",
    "clash weight": "{about}, two weights at one time: {told}",
    "clash offer": "{about}, two results on one night: {told}",
    "clash code": "Code {about} is borne by more than one: {told}",
    "clash tub": "Tub {about} is given to more than one: {told}",
    "clashes more": "and {count:n} more",
    "animals without a folder": "--animal goes with --whole FOLDER, which gets all told of it.",
    "whole and files": "--whole FOLDER holds everything; give it without --animals and --diary.",
    "joining not written": "Nothing was written.",
}
SENTENCES = tr_table(_ENGLISH)
