"""What the keeper is told where a broker's certificate, or what vouches for it, is refused.

Nothing is sent before a certificate is accepted: neither user nor password, nor any topic.
"""

from __future__ import annotations

from keeper.actions.live_choice import LiveChoice
from keeper.language import tr

_ENDED, _NOT_YET = 10, 9
_OTHER_NAME, _OTHER_NUMBER = 62, 64
"""Numbers of OpenSSL's for why a certificate does not hold (x509_vfy.h of OpenSSL 3)."""


def refused_words(choice: LiveChoice, error: BaseException | None) -> str | None:
    """Why *error* means that there is no TLS with this broker; None: it is another trouble.

    One sentence on what is wrong, and what would be right.
    """
    code = getattr(error, "verify_code", None)
    if code is not None:
        return _unverified(choice, int(code), str(getattr(error, "verify_message", "")))
    is_cut = isinstance(error, ConnectionResetError) or hasattr(error, "reason")
    if not choice.tls or not is_cut:
        return None
    return tr(
        "{address} agrees on no TLS at this port; its port for TLS is right, or C for a line"
        " without. Tried again.",
        address=choice.address,
    )


def unreadable_words(choice: LiveChoice, error: OSError) -> str:
    """That the file of an authority cannot be used."""
    is_of_tls = hasattr(error, "reason")
    why = tr("it holds no certificate") if is_of_tls else error.strerror or str(error)
    return tr(
        "The certificates in {path} cannot be used: {why}; C names another file.",
        path=choice.ca_file,
        why=why,
    )


def _unverified(choice: LiveChoice, code: int, message: str) -> str:
    told = {"address": choice.address}
    if code == _ENDED:
        return tr(
            "The certificate of {address} has ended; it needs a new one. Tried again.", **told
        )
    if code == _NOT_YET:
        return tr(
            "The certificate of {address} does not hold yet; is a clock wrong? Tried again.", **told
        )
    if code in (_OTHER_NAME, _OTHER_NUMBER):
        return tr(
            "The certificate of {address} is for another name; A takes the name that it is for."
            " Tried again.",
            **told,
        )
    by = choice.ca_file or tr("this system")
    return tr(
        "The certificate of {address} is not vouched for by {by} ({why}); C names the file of its"
        " authority. Tried again.",
        by=by,
        why=message,
        **told,
    )
